/** Polished metal: it shows a bright sky, a dark horizon and a lighter ground. */
import { tone } from '../ink/tone.ts';
import { solidTint, type Material } from './material.ts';
import { rampColour } from './ramp.ts';

export const metal: Material = {
  shade: ({ colour }, bright) => {
    const ramp = [
      [0, tone(colour, -0.02, 1.1)],
      [0.12, tone(colour, -0.14, 1.1)],
      [0.3, tone(colour, -0.38, 1)],
      [0.42, tone(colour, -0.28, 1.1)],
      [0.62, tone(colour, -0.04, 1.1)],
      [0.8, tone(colour, 0.1, 0.8)],
      [1, tone(colour, 0.24, 0.4)],
    ] as const;
    return solidTint(rampColour(ramp, bright));
  },
  lit: 1,
  bounce: 0.04,
  gloss: { sheen: 0.35, point: 0.9 },
  edge: ({ colour }) => tone(colour, -0.36, 0.8),
  variants: 1,
  figure: null,
  clear: false,
};
