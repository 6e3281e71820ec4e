/** A piece at a size as SVG text; the same in the build and, fetched after the island is alive, in the browser. */
import type { Candidate } from '#core/sizing/sizing.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { drawCard } from '#draw/drawings/card.ts';
import { drawLoop } from '#draw/drawings/loop.ts';
import { drawStraight } from '#draw/drawings/straight.ts';
import { airMm, drawWrist } from '#draw/drawings/wrist.ts';
import type { Format } from '#words/format.ts';
import type { SizingWords } from '#words/words.ts';
import type { PieceForSizer } from '../model/input.ts';
import type { DrawnView } from './views.ts';

export type DrawnPiece = {
  readonly view: DrawnView;
  readonly words: SizingWords;
  readonly format: Format;
  /** Starts every id in the drawing. */
  readonly id: string;
  readonly piece: Pick<PieceForSizer, 'name' | 'design'>;
  readonly candidate: Candidate;
  readonly unit: ShownUnit;
  /** Girth of the wrist, ankle or neck that it is sized for, mm; null where none is known. */
  readonly girthMm: number | null;
  /** As the hand advice says; left where either will do. */
  readonly claspSide: 'left' | 'right';
};

/** Draws it. Every text in it is escaped by `draw`. */
export function drawPiece(drawn: DrawnPiece): string {
  const { view, words, format, id, piece, candidate, unit, claspSide, girthMm } = drawn;
  const { sequences, finishedLengthMm, insideGirthMm } = candidate;
  const parts = sequences.reduce((sum, sequence) => sum + sequence.length, 0);
  const inOrder = words.pictureDescription(format, finishedLengthMm, parts);
  const hidden = view === 'closed' && sequences.length > 1 ? ` ${words.firstInFront}` : '';
  const caption = {
    title: words.pictureTitle(piece.name),
    description: inOrder + hidden,
    idPrefix: `${id}-${view}`,
  };
  if (view === 'whole') return drawCard(piece.design, sequences, caption);
  if (view === 'straight') return drawStraight(piece.design, sequences, { ...caption, unit, claspSide });
  if (girthMm === null || girthMm >= insideGirthMm) return drawLoop(piece.design, sequences, caption);
  const labels = words.wristLabels(
    format,
    piece.design.kind,
    girthMm,
    insideGirthMm - girthMm,
    airMm(insideGirthMm, girthMm),
  );
  return drawWrist(piece.design, sequences, { ...caption, girthMm, labels });
}
