/** Glass: dark where the light goes in, aglow where it comes out, with a hard small mirror of the lamp. */
import { lightnessOf, tone } from '../ink/tone.ts';
import { solidTint, type Material } from './material.ts';
import { rampColour } from './ramp.ts';

export const glass: Material = {
  shade: ({ colour }, bright) => {
    // Pale glass has little room above it, so its shade must do the work.
    const depth = 0.16 + 0.14 * lightnessOf(colour);
    const ramp = [
      [0, tone(colour, -depth, 0.95)],
      [0.22, tone(colour, -depth * 0.75, 1.05)],
      [0.55, tone(colour, -0.02, 1.15)],
      [0.85, tone(colour, 0.14, 1.15)],
      [1, tone(colour, 0.24, 0.85)],
    ] as const;
    return solidTint(rampColour(ramp, bright));
  },
  lit: -1,
  bounce: 0.06,
  gloss: { sheen: 0.5, point: 0.95 },
  edge: ({ colour }) => tone(colour, -0.24, 0.9),
  variants: 1,
  figure: null,
  clear: true,
};
