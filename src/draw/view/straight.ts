/** A piece laid straight, with a ruler under it. */
import type { Design } from '#core/strand/design.ts';
import type { Placed } from '#core/strand/expand.ts';
import { paintClosing } from '../paint/finding/all.ts';
import { mixInk, type Ink } from '../paint/ink.ts';
import { paintSpots } from '../paint/strand.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { layRows, type Rows } from './rows.ts';
import { paintRuler, rulerMarks, type RulerUnit } from './ruler.ts';

export type StraightOptions = Caption & {
  readonly unit: RulerUnit;
  /** Where the clasp end lies; left where left out. */
  readonly claspSide?: 'left' | 'right';
  /** Asks to be shown at true size. */
  readonly lifeSize?: boolean;
};

/** Height of the ruler's numbers as a share of the drawing's width: legible on a phone, where that is 360 px. */
const TEXT_SHARE = 1 / 34;

/** Space round the drawing, mm. */
const MARGIN_MM = 3;

/** The strands (from `expand`, or a candidate's sequences) laid straight, clasp and ring at their ends. Millimetres. */
export function drawStraight(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  options: StraightOptions,
): string {
  const ink = mixInk(options.idPrefix);
  const rows = layRows(design, sequences, options.claspSide ?? 'left', 'start');
  const lengthMm = Math.max(0, ...rows.rows.map((row) => row.toMm));
  const textMm = Math.max(2, lengthMm * TEXT_SHARE);
  const rulerMm = rows.bottomMm + textMm * 0.4;
  const painted = paintRows(ink, design, rows);
  const ruler = paintRuler(rulerMarks(lengthMm, options.unit), 0, rulerMm, textMm);
  const side = MARGIN_MM + textMm * 0.5;
  const box = {
    x: -side,
    y: rows.topMm - MARGIN_MM,
    width: lengthMm + 2 * side,
    height: rulerMm + textMm * 2.4 - rows.topMm + MARGIN_MM,
  };
  return svgDocument(options, box, ink.definitions(), painted + ruler, options.lifeSize ?? false);
}

export function paintRows(ink: Ink, design: Design, { rows }: Rows): string {
  return rows
    .map(
      (row) =>
        row.closing.map((spot) => paintClosing(ink, design, spot)).join('') + paintSpots(ink, row.spots),
    )
    .join('');
}
