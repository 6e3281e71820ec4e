/** The strands of a piece as rows one below the other, closed by one clasp. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import {
  claspEnd,
  closingOnce,
  hangingChain,
  lengthOfEnd,
  placeEnd,
  ringEnd,
  type ClosingSpot,
} from '../layout/closing.ts';
import { toParts, turnedRound, type Spot } from '../layout/spot.ts';
import { lengthOf, placeStraight } from '../layout/straight.ts';

export type Row = {
  readonly spots: readonly Spot[];
  readonly closing: readonly ClosingSpot[];
  readonly yMm: number;
  /** Left end of the strand's finished length, and right end. */
  readonly fromMm: number;
  readonly toMm: number;
};

export type Rows = {
  readonly rows: readonly Row[];
  readonly topMm: number;
  readonly bottomMm: number;
};

/** Clear space between two rows, as a share of the fattest component. */
const ROW_GAP_SHARE = 0.25;

/**
 * @param claspSide where the clasp end lies
 */
export function layRows(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  claspSide: 'left' | 'right',
): Rows {
  const strands = sequences.map((sequence) => {
    const parts = toParts(sequence);
    return claspSide === 'left' ? parts : turnedRound(parts);
  });
  const fattest = strands.map((parts) => Math.max(1, ...parts.map((part) => part.component.acrossMm)));
  const rows: Row[] = [];
  let yMm = 0;
  for (const [at, parts] of strands.entries()) {
    const fat = fattest[at] ?? 1;
    if (at > 0) yMm += (fat + (fattest[at - 1] ?? 1)) / 2 + fat * ROW_GAP_SHARE;
    rows.push(layRow(design, parts, claspSide, yMm, at));
  }
  const clasp = design.components[design.ends.clasp]?.acrossMm ?? 0;
  const middleMm = yMm / 2;
  const shared = rows.map((row) => ({ ...row, closing: row.closing.map((spot) => between(spot, middleMm)) }));
  return {
    rows: shared,
    topMm: Math.min(-(fattest[0] ?? 1) / 2, middleMm - clasp / 2),
    bottomMm: Math.max(yMm + (fattest.at(-1) ?? 1) / 2, middleMm + clasp / 2),
  };
}

/** Clasp and ring serve all rows, so they lie half-way between the first and the last. */
function between(spot: ClosingSpot, yMm: number): ClosingSpot {
  return spot.kind !== 'wire-loop' ? { ...spot, yMm } : spot;
}

function layRow(
  design: Design,
  parts: readonly ReturnType<typeof toParts>[number][],
  claspSide: 'left' | 'right',
  yMm: number,
  strand: number,
): Row {
  const left = claspSide === 'left' ? claspEnd(design) : ringEnd(design);
  const right = claspSide === 'left' ? ringEnd(design) : claspEnd(design);
  const wholeMm = lengthOfEnd(left) + lengthOf(parts) + lengthOfEnd(right);
  const fromMm = 0;
  const toMm = wholeMm;
  const chain = hangingChain(design);
  const chainMm = lengthOfEnd(chain);
  const chainSpots =
    claspSide === 'left'
      ? placeEnd(chain, toMm + chainMm, yMm, -1)
      : placeEnd(chain, fromMm - chainMm, yMm, 1);
  const closing = [...chainSpots, ...placeEnd(left, fromMm, yMm, 1), ...placeEnd(right, toMm, yMm, -1)];
  return {
    spots: placeStraight(parts, fromMm + lengthOfEnd(left), yMm),
    closing: closingOnce(closing, strand),
    yMm,
    fromMm,
    toMm,
  };
}
