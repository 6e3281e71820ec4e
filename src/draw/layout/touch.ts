/** How far apart the centres of two neighbours on a bent strand are. */
import type { Component } from '#core/design/component.ts';

/**
 * Least distance (mm) between the centres of two components whose holes turn by `turnRad`, touching and
 * not overlapping: rectangles with rounded corners, hole axes in line where they meet.
 */
export function touchMm(first: Component, second: Component, turnRad: number): number {
  const halfRad = Math.abs(turnRad) / 2;
  const flatMm = first.alongMm / 2 - first.roundingMm + (second.alongMm / 2 - second.roundingMm);
  const rimMm = Math.min(first.acrossMm / 2 - first.roundingMm, second.acrossMm / 2 - second.roundingMm);
  return (
    flatMm * Math.cos(halfRad) +
    2 * Math.max(0, rimMm) * Math.sin(halfRad) +
    first.roundingMm +
    second.roundingMm
  );
}
