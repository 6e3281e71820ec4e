/** The piece with the clasp and pendant that the buyer has chosen. */
import type { ChosenParts } from '#core/design/choice.ts';
import { designWith } from '#core/design/alternatives.ts';
import type { PieceForSizer } from './input.ts';

/** The piece itself where nothing else is chosen, or what is chosen isn't offered. */
export function chosenPiece(piece: PieceForSizer, parts: ChosenParts): PieceForSizer {
  if (piece.alternatives === undefined) return piece;
  const design = designWith(piece.design, piece.alternatives, parts);
  if (design === null || design === piece.design) return piece;
  return { ...piece, design, listed: piece.design };
}
