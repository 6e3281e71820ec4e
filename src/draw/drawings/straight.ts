/** A piece laid straight, with a ruler under it. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { pendantGap } from '#core/design/pendantGap.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { paintClosing } from '../paint/finding/all.ts';
import { mixInk, type Ink } from '../paint/ink/ink.ts';
import { hangLengthMm, paintHanging } from '../paint/pendant.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { layRows, type Rows } from './rows.ts';
import { paintRuler, rulerMarks } from './ruler.ts';

export type StraightOptions = Caption & {
  readonly unit: ShownUnit;
  /** Where the clasp end lies; left where left out. */
  readonly claspSide?: 'left' | 'right';
  /** Asks to be shown at true size. */
  readonly lifeSize?: boolean;
};

/** Height of the ruler's numbers as a share of the drawing's width: legible on a phone, where that is 360 px. */
const TEXT_SHARE = 1 / 34;

/** Height of a ruler with its numbers, in letters. */
const RULER_SHARE = 2.3;

/** Space round the drawing, mm. */
const MARGIN_MM = 2;

/** The strands (from `expand`, or a candidate's sequences) laid straight, clasp and ring at their ends. Millimetres. */
export function drawStraight(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  options: StraightOptions,
): string {
  const ink = mixInk(options.idPrefix);
  const rows = layRows(design, sequences, options.claspSide ?? 'left');
  const lengthMm = Math.max(0, ...rows.rows.map((row) => row.toMm));
  const textMm = Math.max(2, lengthMm * TEXT_SHARE);
  const hangMm = hangLengthMm(design);
  // What hangs leaves no room below the strand for a ruler.
  const way = hangMm > 0 ? -1 : 1;
  const edgeMm = way === 1 ? rows.bottomMm + textMm * 0.4 : rows.topMm - textMm * 0.4;
  // A chain hangs beyond the ring, and is measured too.
  const { extenderMm } = design.ends;
  const fromMm = options.claspSide === 'right' ? -extenderMm : 0;
  const marks = rulerMarks(lengthMm + extenderMm, options.unit);
  const painted =
    paintRuler(marks, fromMm, edgeMm, textMm, way) +
    paintRows(ink, design, rows) +
    paintHanging(ink, design, hangsAt(sequences, rows, options.claspSide ?? 'left'), 0);
  const topMm = way === 1 ? rows.topMm : edgeMm - textMm * RULER_SHARE;
  const bottomMm = way === 1 ? edgeMm + textMm * RULER_SHARE : Math.max(rows.bottomMm, hangMm);
  const side = MARGIN_MM + textMm * 0.5;
  const box = {
    x: fromMm - side,
    y: topMm - MARGIN_MM,
    width: lengthMm + 2 * side + extenderMm,
    height: bottomMm - topMm + 2 * MARGIN_MM,
  };
  return svgDocument(options, box, ink.definitions(), painted, options.lifeSize ?? false);
}

/** From where a pendant hangs: the gap nearest the middle of what is strung. */
function hangsAt(
  [sequence = []]: readonly (readonly Placed[])[],
  { rows }: Rows,
  claspSide: 'left' | 'right',
): number {
  const spots = rows[0]?.spots ?? [];
  const first = spots[0];
  const last = spots.at(-1);
  if (first === undefined || last === undefined) return 0;
  const fromMm = first.xMm - first.component.alongMm / 2;
  const toMm = last.xMm + last.component.alongMm / 2;
  const offMm = pendantGap(sequence).offMiddleMm;
  return (fromMm + toMm) / 2 + (claspSide === 'left' ? offMm : -offMm);
}

export function paintRows(ink: Ink, design: Design, { rows }: Rows): string {
  return rows
    .map(
      (row) =>
        row.closing.map((spot) => paintClosing(ink, design, spot)).join('') + paintSpots(ink, row.spots),
    )
    .join('');
}
