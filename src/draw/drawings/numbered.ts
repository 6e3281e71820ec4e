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
  /** The longest a row may be before there is one more of them, mm. */
  readonly mostRowMm: number;
  /** Has every part stand by itself, so that some can be shown lit; what is lit at first. */
  readonly lit?: Lit;
};

/** So much longer than an equal share, since a bead isn't cut in two at a row's end, mm. */
const SPARE_MM = 12;

/** Height of letters as a share of a row: on paper and on a tablet easily read at arm's length. */
const TEXT_SHARE = 1 / 62;

type NumberedRow = {
  readonly parts: readonly Part[];
  readonly left: readonly Piece[];
  readonly right: readonly Piece[];
};

/** One strand, clasp first, in rows about as long as each other; what hangs hangs between its two neighbours. */
export function drawNumbered(design: Design, sequence: readonly Placed[], options: NumberedOptions): string {
  const ink = mixInk(options.idPrefix);
  const parts = toParts(sequence);
  const ends = { left: claspEnd(design), right: ringEnd(design) };
  const wholeMm = lengthOfEnd(ends.left) + lengthOf(parts) + lengthOfEnd(ends.right);
  const hung = { wideMm: hangWidthMm(design), longMm: hangLengthMm(design) };
  const rowMm = rowFor(wholeMm, options.mostRowMm, hung.wideMm);
  const textMm = rowMm * TEXT_SHARE;
  const numbers = numbersOf(parts);
  const hungAfter = design.hanging === null ? null : pendantGap(sequence).after;
  let painted = '';
  let rowsMm = 0;
  let rightMm = rowMm;
  let pendant: Below = { fromMm: Infinity, toYMm: 0 };
  for (const row of cutRows(parts, ends.left, ends.right, rowMm)) {
    const closers = [...row.left, ...row.right].map((piece) => piece.component?.acrossMm ?? 0);
    const halfMm = Math.max(2, ...row.parts.map((part) => part.component.acrossMm), ...closers) / 2;
    const startMm = lengthOfEnd(row.left);
    const laid = laySpans(options.spans, numbers, placeStraight(row.parts, startMm, 0), textMm);
    const endMm = startMm + lengthOf(row.parts) + lengthOfEnd(row.right);
    const topMm = endMm < pendant.fromMm ? rowsMm : Math.max(rowsMm, pendant.toYMm);
    const yMm = topMm + halfMm + laid.heightMm + textMm;
    const spots = placeStraight(row.parts, startMm, yMm);
    const closing = {
      clasp: paintEnd(ink, design, placeEnd(row.left, 0, yMm, 1)),
      ring: paintEnd(ink, design, placeEnd(row.right, endMm, yMm, -1)),
    };
    const from = spots.find(({ index }) => numbers.get(index) === hungAfter);
    const hungMm = from === undefined ? null : from.xMm + from.component.alongMm / 2;
    const hanging = hungMm === null ? '' : paintHanging(ink, design, hungMm, yMm);
    painted +=
      options.lit === undefined
        ? closing.clasp + closing.ring + paintSpots(ink, spots) + hanging
        : paintApart({ ink, spots, numbers, closing, hanging }, options.lit);
    painted += paintSpans(laid, yMm - halfMm - textMm * 0.4);
    rowsMm = yMm + halfMm + textMm * 0.5;
    if (hungMm !== null) {
      pendant = { fromMm: hungMm - hung.wideMm / 2, toYMm: yMm + hung.longMm + textMm * 0.5 };
      rightMm = Math.max(rightMm, hungMm + hung.wideMm / 2);
    }
  }
  const box = { x: -3, y: 0, width: rightMm + 6, height: Math.max(rowsMm, pendant.toYMm) };
  return svgDocument(options, box, ink.definitions(), painted, true);
}

/** Where a pendant hangs down: from where rightwards, and how far. A row that ends left of it lies beside it, one that would run into it below it. */
type Below = { readonly fromMm: number; readonly toYMm: number };

/** Where something hangs in one of several rows, they run on for its width: then what follows its middle can lie beside it. */
function rowFor(lengthMm: number, mostMm: number, hungWideMm: number): number {
  const rows = Math.max(1, Math.ceil(lengthMm / mostMm));
  return lengthMm / rows + SPARE_MM + (rows > 1 ? hungWideMm : 0);
}

const hangWidthMm = ({ components, hanging }: Design): number =>
  components[hanging?.pendant ?? '']?.acrossMm ?? 0;

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
