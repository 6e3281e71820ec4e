/** A piece on the bead board: a groove a strand, zero at the very middle of what is strung. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { finishedLengthMm } from '#core/design/loopParts.ts';
import { placeAlong } from './along.ts';
import { claspEnd, closingOnce, hangingChain, placeEndAlong, ringEnd, type ClosingSpot } from './closing.ts';
import { groove, type Groove } from './groove.ts';
import { toParts, turnedRound, type Spot } from './spot.ts';

export type BoardStrand = {
  readonly groove: Groove;
  /** Width of the groove. */
  readonly wideMm: number;
  readonly spots: readonly Spot[];
  readonly closing: readonly ClosingSpot[];
};

export type Board = {
  /** Innermost groove first. */
  readonly strands: readonly BoardStrand[];
  /** How far marks go either side of zero. */
  readonly reachMm: number;
};

/** Room in a groove beside its fattest bead, and between two grooves, mm. */
const ROOM_MM = 2.4;
const WALL_MM = 2;

/** Longest piece that is laid straight, mm: any bracelet. */
export const STRAIGHT_MOST_MM = 230;

/** A groove runs on a little past the piece, either side, mm. */
const SPARE_MM = 14;

/**
 * @param claspSide the side of the board, as the maker sees it, where the clasp's end lies
 * @param leastMm length that the grooves are made for though the piece is shorter
 */
export function layBoard(
  design: Design,
  sequences: readonly (readonly Placed[])[],
  claspSide: 'left' | 'right',
  leastMm = 1,
): Board {
  const longestMm = Math.max(leastMm, ...sequences.map((sequence) => finishedLengthMm(design, sequence)));
  const spareMm = SPARE_MM + design.ends.extenderMm;
  const strands: BoardStrand[] = [];
  let outMm = 0;
  for (const sequence of sequences) {
    const wideMm = Math.max(2, ...sequence.map(({ component }) => component.acrossMm)) + ROOM_MM;
    const before = strands.at(-1)?.wideMm;
    if (before !== undefined) outMm += (before + wideMm) / 2 + WALL_MM;
    strands.push(
      layStrand(
        design,
        sequence,
        claspSide,
        groove(longestMm + 2 * spareMm, outMm, longestMm > STRAIGHT_MOST_MM),
        wideMm,
      ),
    );
  }
  return { strands: strands.map((_, at) => shareClosing(strands, at)), reachMm: longestMm / 2 + spareMm };
}

/** A strand with its own wire loops; with the first goes what closes them all, half-way between their ends. */
function shareClosing(strands: readonly BoardStrand[], at: number): BoardStrand {
  const strand = strands[at] as BoardStrand;
  const shared = strand.closing.map((spot, piece): ClosingSpot => {
    if (spot.kind === 'wire-loop') return spot;
    const all = strands.flatMap(({ closing }) => closing[piece] ?? []);
    return { ...spot, xMm: mean(all.map(({ xMm }) => xMm)), yMm: mean(all.map(({ yMm }) => yMm)) };
  });
  return { ...strand, closing: closingOnce(shared, at) };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function layStrand(
  design: Design,
  sequence: readonly Placed[],
  claspSide: 'left' | 'right',
  laidIn: Groove,
  wideMm: number,
): BoardStrand {
  const { curve, zeroMm } = laidIn;
  const parts = toParts(sequence);
  const { spots, fromMm, toMm } = placeAlong(
    claspSide === 'left' ? parts : turnedRound(parts),
    curve,
    zeroMm,
  );
  const ring = [...hangingChain(design), ...ringEnd(design)];
  const [left, right] = claspSide === 'left' ? [claspEnd(design), ring] : [ring, claspEnd(design)];
  const closing = [...placeEndAlong(left, curve, fromMm, 1), ...placeEndAlong(right, curve, toMm, -1)];
  return { groove: laidIn, wideMm, spots, closing };
}
