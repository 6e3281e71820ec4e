/** Polished metal: it shows a bright sky, a dark horizon and a lighter ground. */
import { mix, tone } from '../../colour/tone.ts';
import type { Material } from './material.ts';

export const metal: Material = {
  shade: ({ colour }, bright) => {
    const horizon = tone(colour, -0.3, 0.95);
    const ground = tone(colour, -0.06, 1);
    const sky = tone(colour, 0.2, 0.7);
    if (bright < 0.3) return mix(ground, horizon, bright / 0.3);
    if (bright < 0.62) return mix(horizon, colour, (bright - 0.3) / 0.32);
    return mix(colour, sky, (bright - 0.62) / 0.38);
  },
  lit: 1,
  gloss: { strength: 0.85, size: 0.3 },
  edge: ({ colour }) => tone(colour, -0.36, 0.8),
  variants: 1,
  figure: null,
  clear: false,
};
