/** The inverse of the lie: a place on the body gives the length that reaches it. */
import { CHEST_SLOPE_RAD } from './assumptions.ts';
import type { Figure } from './figure.ts';
import { dropMm } from './lie.ts';
import type { Load } from './lie.ts';
import { root } from '../geometry/root.ts';

/** What is to lie at the place: the lowest point of the strand's middle line, or the pendant's middle. */
export type Aim = 'strand' | 'pendant';

/** Longer than any rope wound twice; bounds the search. */
const MOST_LENGTH_MM = 5000;

/**
 * Finished length that lies `wantedMm` below the pit of the neck, upright. A
 * longer strand never hangs higher, so the length is unique.
 * @returns null where no length up to five metres reaches it, or what closes round the neck hangs lower.
 */
export function lengthForDrop(
  load: Omit<Load, 'lengthMm'>,
  figure: Figure,
  wantedMm: number,
  aim: Aim = 'strand',
): number | null {
  const belowWire = aim === 'pendant' ? load.pendantMiddleMm * Math.cos(CHEST_SLOPE_RAD) : 0;
  const target = wantedMm - belowWire;
  const beyond = (lengthMm: number) =>
    (dropMm({ ...load, lengthMm }, figure, figure.neckBase.mm) ?? -MOST_LENGTH_MM) - target;
  const least = figure.neckGirth.mm + Math.PI * load.acrossMm;
  if (!(beyond(least) <= 0) || !(beyond(MOST_LENGTH_MM) >= 0)) return null;
  return root(beyond, least, MOST_LENGTH_MM);
}
