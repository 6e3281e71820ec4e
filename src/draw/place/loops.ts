/** All strands of a closed piece, so that each is seen: one behind the other, or one within the other. */
import type { Design } from '#core/strand/design.ts';
import type { Placed } from '#core/strand/expand.ts';
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
  let depthMm = 0;
  const loops = laid.map((placed, at) => {
    const before = laid[at - 1];
    if (before !== undefined) depthMm += (1 + GAP_SHARE) * Math.max(fatness(before), fatness(placed));
    const aside = { xMm: DEPTH_X * depthMm, yMm: DEPTH_Y * depthMm };
    // Nested strands lie within each other and meet at the clasp, opposite the middle.
    const within = { xMm: 0, yMm: Math.sin(topRad) * ((radii[at] ?? 0) - (radii[0] ?? 0)) };
    return shifted(placed, at, design.lie === 'nested' ? within : aside);
  });
  return { loops, insideMm: Number.isFinite(insideMm) ? insideMm : 0 };
}

function fatness({ spots }: PlacedLoop): number {
  return Math.max(0, ...spots.map(({ component }) => component.acrossMm));
}

type Shift = { readonly xMm: number; readonly yMm: number };

function shifted(placed: PlacedLoop, strand: number, shift: Shift): PlacedLoop {
  const move = <T extends Shift>(spot: T): T => ({
    ...spot,
    xMm: spot.xMm + shift.xMm,
    yMm: spot.yMm + shift.yMm,
  });
  return {
    ...placed,
    spots: placed.spots.map(move),
    closing: closingOnce(placed.closing, strand).map(move),
  };
}
