/** Pieces with the same beads, for the pages of a whole catalogue. */
import type { Piece } from '#catalogue/model/catalogue.ts';
import { beadIndex, relatedPieces } from '#catalogue/facts/related.ts';

/** One row of pictures. */
const MOST = 3;

/** @returns the kin of any of `pieces`, whose beads are gone through once for all. */
export function kinOf(pieces: readonly Piece[]): (piece: Piece) => readonly Piece[] {
  const index = beadIndex(pieces);
  return (piece) => relatedPieces(piece, index, MOST);
}
