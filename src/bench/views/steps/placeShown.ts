/** Which place a page of steps opens at. */
import type { WalkSheet } from '../../models/steps/sheet.ts';

/**
 * Where she left off; at a stop that the address names, its first tick, or where she is in it.
 * @param step number of the stop as the address has it, from 1; null for none
 */
export function placeShown({ kept, walk }: WalkSheet, step: string | null): number {
  const left = kept?.digest === walk.digest ? Math.min(kept.place, walk.total) : 0;
  const stop = /^\d{1,5}$/.test(step ?? '') ? walk.stops[Number(step) - 1] : undefined;
  if (stop === undefined) return left;
  const { from, ticks } = stop;
  return left > from && left < from + ticks.length ? left : from;
}
