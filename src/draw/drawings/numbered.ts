/** The bench card's picture of a long strand: in stringing order, numbered as its list is, in rows that fit the paper. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { pendantGap } from '#core/design/pendantGap.ts';
import { paintClosing } from '../paint/finding/all.ts';
import { mixInk, type Ink } from '../paint/ink/ink.ts';
import { hangLengthMm, paintHanging } from '../paint/pendant.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import { claspEnd, placeEnd, ringEnd, lengthOfEnd, type ClosingSpot, type Piece } from '../layout/closing.ts';
import { toParts, type Part } from '../layout/spot.ts';
import { lengthOf, placeStraight } from '../layout/straight.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { paintApart, type Lit } from './lit.ts';
import { laySpans, numbersOf, paintSpans, type Span } from './spans.ts';

export type NumberedOptions = Caption & {
  /** What to bracket and number, as the list groups it. */
  readonly spans: readonly Span[];
  /** Width of a row on paper; A4 and US Letter both hold the usual one with a margin. */
  readonly rowMm?: number;
  /** Has every part stand by itself, so that some can be shown lit; what is lit at first. */
  readonly lit?: Lit;
};

const ROW_MM = 180;

/** Easily read at arm's length. */
const TEXT_MM = 3;

type NumberedRow = {
  readonly parts: readonly Part[];
  readonly left: readonly Piece[];
  readonly right: readonly Piece[];
};

/** One strand, clasp first, life size; what hangs hangs between its two neighbours. */
export function drawNumbered(design: Design, sequence: readonly Placed[], options: NumberedOptions): string {
  const ink = mixInk(options.idPrefix);
  const rowMm = options.rowMm ?? ROW_MM;
  const parts = toParts(sequence);
  const numbers = numbersOf(parts);
  const hungAfter = design.hanging === null ? null : pendantGap(sequence).after;
  let painted = '';
  let yMm = 0;
  for (const row of cutRows(parts, claspEnd(design), ringEnd(design), rowMm)) {
    const closers = [...row.left, ...row.right].map((piece) => piece.component?.acrossMm ?? 0);
    const halfMm = Math.max(2, ...row.parts.map((part) => part.component.acrossMm), ...closers) / 2;
    const startMm = lengthOfEnd(row.left);
    const laid = laySpans(options.spans, numbers, placeStraight(row.parts, startMm, 0), TEXT_MM);
    yMm += halfMm + laid.heightMm + TEXT_MM;
    const spots = placeStraight(row.parts, startMm, yMm);
    const endMm = startMm + lengthOf(row.parts) + lengthOfEnd(row.right);
    const closing = {
      clasp: paintEnd(ink, design, placeEnd(row.left, 0, yMm, 1)),
      ring: paintEnd(ink, design, placeEnd(row.right, endMm, yMm, -1)),
    };
    const hung = spots.find(({ index }) => numbers.get(index) === hungAfter);
    const hanging =
      hung === undefined ? '' : paintHanging(ink, design, hung.xMm + hung.component.alongMm / 2, yMm);
    painted +=
      options.lit === undefined
        ? closing.clasp + closing.ring + paintSpots(ink, spots) + hanging
        : paintApart({ ink, spots, numbers, closing, hanging }, options.lit);
    painted += paintSpans(laid, yMm - halfMm - TEXT_MM * 0.4);
    yMm += Math.max(halfMm, hung === undefined ? 0 : hangLengthMm(design)) + TEXT_MM * 0.5;
  }
  const box = { x: -3, y: 0, width: rowMm + 6, height: yMm };
  return svgDocument(options, box, ink.definitions(), painted, true);
}

const paintEnd = (ink: Ink, design: Design, closing: readonly ClosingSpot[]): string =>
  closing.map((spot) => paintClosing(ink, design, spot)).join('');

/** As many components a row as fit; the clasp's end goes with the first, the ring's with the last. */
function cutRows(
  parts: readonly Part[],
  left: readonly Piece[],
  right: readonly Piece[],
  rowMm: number,
): NumberedRow[] {
  const rows: Part[][] = [[]];
  let usedMm = lengthOfEnd(left);
  for (const [at, part] of parts.entries()) {
    const endMm = at === parts.length - 1 ? lengthOfEnd(right) : 0;
    const row = rows.at(-1);
    if (row !== undefined && (usedMm + part.component.alongMm + endMm <= rowMm || row.length === 0)) {
      row.push(part);
      usedMm += part.component.alongMm;
    } else {
      rows.push([part]);
      usedMm = part.component.alongMm;
    }
  }
  return rows.map((row, at) => ({
    parts: row,
    left: at === 0 ? left : [],
    right: at === rows.length - 1 ? right : [],
  }));
}
