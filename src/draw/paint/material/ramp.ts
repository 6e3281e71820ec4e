/** A run of colours by brightness. */
import { mix } from '../ink/tone.ts';

/** Brightness and the colour there; rising, the first at 0, the last at 1. */
export type Ramp = readonly (readonly [number, string])[];

/** The colour between the two nearest steps of the ramp. */
export function rampColour(ramp: Ramp, bright: number): string {
  let below = ramp[0] ?? [0, '#000'];
  for (const step of ramp) {
    if (step[0] >= bright) {
      const spread = step[0] - below[0];
      return spread <= 0 ? step[1] : mix(below[1], step[1], (bright - below[0]) / spread);
    }
    below = step;
  }
  return below[1];
}
