/** Glass: dark where the light goes in, aglow where it comes out, with a hard small mirror of the lamp. */
import { mix, tone } from '../../colour/tone.ts';
import type { Material } from './material.ts';

export const glass: Material = {
  shade: ({ colour }, bright) => {
    if (bright > 0.62) return mix(tone(colour, 0.04, 1.15), tone(colour, 0.2, 0.95), (bright - 0.62) / 0.38);
    return mix(tone(colour, -0.2, 1), tone(colour, 0.04, 1.15), bright / 0.62);
  },
  lit: -1,
  gloss: { strength: 0.95, size: 0.3 },
  edge: ({ colour }) => tone(colour, -0.25, 0.9),
  variants: 1,
  figure: null,
  clear: true,
};
