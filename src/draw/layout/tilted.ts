/** A closed strand lying on a table, seen from above at a slant: the loop pressed flat, what is nearer drawn later. */
import type { PlacedLoop } from './loop.ts';
import type { ClosingSpot } from './closing.ts';
import type { Spot } from './spot.ts';

export type Tilted = { readonly spots: readonly Spot[]; readonly closing: readonly ClosingSpot[] };

/** How much of the depth is seen: 1 from straight above, 0 from the table's edge. */
const DEPTH_SHARE = 0.74;

/** The loop with its depth pressed, sorted from far to near. */
export function tilt({ spots, closing }: Pick<PlacedLoop, 'spots' | 'closing'>): Tilted {
  return {
    spots: spots.map(press).toSorted((one, other) => one.yMm - other.yMm),
    closing: closing.map(press),
  };
}

function press<T extends { readonly yMm: number; readonly turnRad: number }>(
  spot: T,
): T & { readonly seenShare: number } {
  const x = Math.cos(spot.turnRad);
  const y = Math.sin(spot.turnRad) * DEPTH_SHARE;
  return { ...spot, yMm: spot.yMm * DEPTH_SHARE, turnRad: Math.atan2(y, x), seenShare: Math.hypot(x, y) };
}
