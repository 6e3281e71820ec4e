/** A strand laid straight. */
import type { Part, Spot } from './spot.ts';

/** Length of a run of components on the wire, mm. */
export function lengthOf(parts: readonly Part[]): number {
  return parts.reduce((sum, part) => sum + part.component.alongMm, 0);
}

/** Components side by side from `startMm` on, at height `yMm`. */
export function placeStraight(parts: readonly Part[], startMm: number, yMm: number): Spot[] {
  let edgeMm = startMm;
  return parts.map((part) => {
    const xMm = edgeMm + part.component.alongMm / 2;
    edgeMm += part.component.alongMm;
    return { ...part, xMm, yMm, turnRad: 0 };
  });
}
