/** Pearl: light from within its layers, so no deep shade, a soft sheen and a tinge of its overtone on the shadow side. */
import { mix, tone } from '../ink/tone.ts';
import { solidTint, type Material } from './material.ts';
import { rampColour } from './ramp.ts';

/** The pink of many white pearls, where the maker names no overtone (common practice, no source). */
const ROSE = '#d9b8b4';

export const pearl: Material = {
  shade: ({ colour, accent }, bright) => {
    const overtone = mix(colour, accent ?? ROSE, 0.55);
    const ramp = [
      // Layers throw light back at the rim: the very edge is lighter than the shade inside it.
      [0, tone(overtone, -0.07)],
      [0.1, tone(overtone, -0.15, 0.9)],
      [0.2, tone(overtone, -0.28, 0.9)],
      [0.45, tone(overtone, -0.07)],
      [0.66, mix(overtone, colour, 0.5)],
      [0.84, colour],
      [1, tone(colour, 0.12, 0.4)],
    ] as const;
    return solidTint(rampColour(ramp, bright));
  },
  lit: 1,
  bounce: 0.03,
  gloss: { sheen: 0.95, point: 0.6 },
  edge: ({ colour, accent }) => tone(mix(colour, accent ?? colour, 0.4), -0.3, 0.7),
  variants: 1,
  figure: null,
  clear: false,
};
