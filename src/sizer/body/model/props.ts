/** What the island hands to the chart of a body. */
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Format } from '#words/format.ts';
import type { SizingWords } from '#words/words.ts';
import type { BuyerUnit } from '../../model/sizerState.ts';
import type { PieceForSizer } from '../../model/input.ts';

export type BodyChartProps = {
  readonly sizingWords: SizingWords;
  readonly format: Format;
  readonly id: string;
  readonly piece: PieceForSizer;
  readonly candidate: Candidate;
  readonly unit: BuyerUnit;
  /** The neck that the buyer sizes by, mm; null where she goes by length. */
  readonly girthMm: number | null;
  /** The length asked for; the candidate's own where none was. */
  readonly wantedMm: number;
  readonly onLength: (mm: number) => void;
};
