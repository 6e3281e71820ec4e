/** All strands of a closed piece, so that each is seen: one behind the other, or one within the other. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { closingOnce } from './closing.ts';
import { placeLoop, type PlacedLoop } from './loop.ts';

export type ClosedPiece = {
  /** First strand first; the others lie behind it. */
  readonly loops: readonly PlacedLoop[];
  /** Radius of the largest cylinder that passes through all, mm; 0 where a strand can't close. */
  readonly insideMm: number;
};

/** The middle on top, or below where a pendant hangs from it. */
const UP_RAD = -Math.PI / 2;
const DOWN_RAD = Math.PI / 2;

/** Clear space between two strands along the arm, as a share of the fatter one. */
const GAP_SHARE = 0.25;

/**
 * How a distance along the arm is seen, as in a cabinet projection: away to the upper right, at less than
 * its full measure.
 */
const DEPTH_X = 0.42;
const DEPTH_Y = -0.42;

/** Lays every strand. Figures in each `loop` are those of the strand itself, wherever it is drawn. */
export function placeLoops(design: Design, sequences: readonly (readonly Placed[])[]): ClosedPiece {
  const topRad = design.hanging === null ? UP_RAD : DOWN_RAD;
  const laid = sequences.map((sequence) => placeLoop(design, sequence, topRad));
  const radii = laid.map(({ loop }) => loop.radiusMm);
  const insideMm = Math.min(...radii);
  const shifts = laid.map((_, at) => {
    // Nested strands lie within each other and meet at the clasp, opposite the middle.
    if (design.lie === 'nested') {
      return { xMm: 0, yMm: Math.sin(topRad) * ((radii[at] ?? 0) - (radii[0] ?? 0)) };
    }
    const depthMm = depthOf(laid, at);
    return { xMm: DEPTH_X * depthMm, yMm: DEPTH_Y * depthMm };
  });
  // What closes strands side by side is as wide as they are: it stands half-way back.
  const closed = design.lie === 'nested' ? shifts[0] : halfWay(shifts[0], shifts.at(-1));
  const loops = laid.map((placed, at) => shifted(placed, at, shifts[at] ?? STILL, closed ?? STILL));
  return { loops, insideMm: Number.isFinite(insideMm) ? insideMm : 0 };
}

/** How far behind the first strand one stands, mm. */
function depthOf(laid: readonly PlacedLoop[], strand: number): number {
  const pairs = laid.slice(1, strand + 1).map((placed, at) => [laid[at] ?? placed, placed] as const);
  return pairs.reduce((sum, pair) => sum + (1 + GAP_SHARE) * Math.max(...pair.map(fatness)), 0);
}

function fatness({ spots }: PlacedLoop): number {
  return Math.max(0, ...spots.map(({ component }) => component.acrossMm));
}

type Shift = { readonly xMm: number; readonly yMm: number };
const STILL: Shift = { xMm: 0, yMm: 0 };

function halfWay(near: Shift = STILL, far: Shift = STILL): Shift {
  return { xMm: (near.xMm + far.xMm) / 2, yMm: (near.yMm + far.yMm) / 2 };
}

/** @param closed where what closes all strands goes; wire loops stay with their strand */
function shifted(placed: PlacedLoop, strand: number, shift: Shift, closed: Shift): PlacedLoop {
  return {
    ...placed,
    spots: placed.spots.map((spot) => moved(spot, shift)),
    closing: closingOnce(placed.closing, strand).map((spot) =>
      moved(spot, spot.kind === 'wire-loop' ? shift : closed),
    ),
  };
}

function moved<T extends Shift>(spot: T, by: Shift): T {
  return { ...spot, xMm: spot.xMm + by.xMm, yMm: spot.yMm + by.yMm };
}
