/** Pieces with the same beads. */
import type { Piece } from '../model/catalogue.ts';
import { sharesOf } from './facets.ts';

type Holder = { readonly piece: Piece; readonly share: number };

/** Pieces by the components strung or hung in them, with how much of each piece they are. */
export type BeadIndex = ReadonlyMap<string, readonly Holder[]>;

export function beadIndex(pieces: readonly Piece[]): BeadIndex {
  const index = new Map<string, Holder[]>();
  for (const piece of pieces) {
    for (const { component, share } of sharesOf(piece.design)) {
      const list = index.get(component.id);
      if (list === undefined) index.set(component.id, [{ piece, share }]);
      else list.push({ piece, share });
    }
  }
  return index;
}

// The newest that share a bead are enough to choose from, and keep ten thousand pieces cheap.
const mostPerBead = 60;

/** One row of pictures. */
const MOST_KIN = 3;

/** @returns the kin of any of `pieces`, whose beads are gone through once for all. */
export function kinOf(pieces: readonly Piece[]): (piece: Piece) => readonly Piece[] {
  const index = beadIndex(pieces);
  return (piece) => relatedPieces(piece, index, MOST_KIN);
}

/**
 * Up to `most` other pieces with beads in common, nearest first: what both
 * show much of counts for more, and so does a bead that few pieces have.
 */
export function relatedPieces(piece: Piece, index: BeadIndex, most: number): readonly Piece[] {
  const scores = new Map<Piece, number>();
  for (const { component, share } of sharesOf(piece.design)) {
    const others = index.get(component.id) ?? [];
    for (const { piece: other, share: theirs } of others.slice(0, mostPerBead)) {
      if (other.id === piece.id) continue;
      scores.set(other, (scores.get(other) ?? 0) + Math.min(share, theirs) / others.length);
    }
  }
  return [...scores]
    .sort(([one, a], [other, b]) => b - a || (one.id < other.id ? -1 : 1))
    .slice(0, most)
    .map(([other]) => other);
}
