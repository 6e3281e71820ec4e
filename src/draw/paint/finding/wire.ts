/** The stringing wire: the loop at each end, and the line that carries the beads. */
import type { Component, Look } from '#core/design/component.ts';
import { num, pair } from '../../svg/text.ts';
import { bar } from './bar.ts';

/** Coated steel, as most wire is (common practice, no source). */
export const STEEL: Look = { family: 'metal', colour: '#9a9ca3', accent: null };

/** How wide a wire loop is held open, as a share of its length. */
const LOOP_SHARE = 0.42;

/** One loop from the bearing point on the left to the crimp on the right; `guard` is the coil over it, if any. */
export function wireLoop(alongMm: number, wireMm: number, guard: Component | null): string {
  const half = alongMm / 2;
  const open = Math.max(wireMm, alongMm * LOOP_SHARE) / 2;
  const d =
    `M${pair(half, 0)}C${pair(half * 0.3, -open * 0.4)} ${pair(0, -open)} ${pair(-half + open, -open)}` +
    `A${num(open)} ${num(open)} 0 0 0 ${pair(-half + open, open)}C${pair(0, open)} ${pair(half * 0.3, open * 0.4)} ${pair(half, 0)}`;
  if (guard === null) return bar(d, wireMm, STEEL);
  return bar(d, Math.max(wireMm * 1.5, guard.acrossMm), guard.look);
}

/** A straight run of bare wire. */
export function wireLine(d: string, wireMm: number): string {
  return bar(d, wireMm, STEEL);
}
