/** Oiled wood: grain along the hole, a dull sheen. */
import { tone } from '../ink/tone.ts';
import { element, pair } from '../../svg/text.ts';
import { veil, type Material } from './material.ts';

const WOOD_VARIANTS = 4;
const GRAIN_LINES = 5;

export const wood: Material = {
  shade: ({ colour }, bright) => veil(tone(colour, -0.4, 0.9), 0.75, 0.2, bright),
  lit: 1,
  bounce: 0.08,
  gloss: { sheen: 0.3, point: 0.1 },
  edge: ({ colour }) => tone(colour, -0.26, 0.9),
  variants: WOOD_VARIANTS,
  figure: ({ colour, accent }, { halfAlongMm, halfAcrossMm }, random) => {
    let d = '';
    for (let grain = 0; grain < GRAIN_LINES; grain += 1) {
      const share = ((grain + 0.2 + 0.6 * random()) / GRAIN_LINES) * 2 - 1;
      const y = share * halfAcrossMm;
      // Grain follows the turned outline: lines far from the middle bend with it.
      const bow = share * halfAcrossMm * (0.15 + 0.25 * random());
      d += `M${pair(-halfAlongMm, y - bow)}Q${pair(0, y + bow)} ${pair(halfAlongMm, y - bow)}`;
    }
    return element('path', {
      d,
      fill: 'none',
      stroke: accent ?? tone(colour, -0.16),
      'stroke-width': 0.07 * halfAcrossMm,
      'stroke-opacity': '.5',
    });
  },
  clear: false,
};
