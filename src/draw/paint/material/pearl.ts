/** Pearl: light from within its layers, so no deep shade, a soft sheen and a tinge of its overtone on the shadow side. */
import { mix, tone } from '../../colour/tone.ts';
import type { Material } from './material.ts';

export const pearl: Material = {
  shade: ({ colour, accent }, bright) => {
    const overtone = mix(colour, accent ?? '#d9b8b4', 0.55);
    const deep = tone(overtone, -0.2, 0.9);
    // Layers throw light back at the rim: the very edge is lighter than the shade inside it.
    if (bright < 0.16) return mix(tone(overtone, -0.06), deep, bright / 0.16);
    if (bright < 0.5) return mix(deep, overtone, (bright - 0.16) / 0.34);
    if (bright < 0.8) return mix(overtone, colour, (bright - 0.5) / 0.3);
    return mix(colour, tone(colour, 0.12, 0.4), (bright - 0.8) / 0.2);
  },
  lit: 1,
  gloss: { strength: 0.8, size: 0.42 },
  edge: ({ colour, accent }) => tone(mix(colour, accent ?? colour, 0.4), -0.3, 0.8),
  variants: 1,
  figure: null,
  clear: false,
};
