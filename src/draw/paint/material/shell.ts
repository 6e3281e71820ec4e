/** Shell: bands of growth and a play of pale colours. */
import { tone } from '../ink/tone.ts';
import { element, pair } from '../../svg/text.ts';
import { veil, type Material } from './material.ts';

const SHELL_VARIANTS = 4;
const BANDS = 3;

/** The play of colour of mother-of-pearl, pale and cool to warm. */
const PLAY = ['#b9dccf', '#e9c3d2', '#c5cdea'] as const;

export const shell: Material = {
  shade: ({ colour }, bright) => veil(tone(colour, -0.45, 0.8), 0.5, 0.6, bright),
  lit: 1,
  bounce: 0.16,
  gloss: { sheen: 0.7, point: 0.35 },
  edge: ({ colour }) => tone(colour, -0.3, 0.8),
  variants: SHELL_VARIANTS,
  figure: ({ accent }, { halfAlongMm, halfAcrossMm }, random) => {
    let drawn = '';
    const slant = (random() - 0.5) * 1.2;
    for (let band = 0; band < BANDS; band += 1) {
      const x = (((band + random()) / BANDS) * 2 - 1) * halfAlongMm;
      const lean = slant * halfAcrossMm;
      const bulge = (0.3 + 0.3 * random()) * halfAlongMm;
      drawn += element('path', {
        d: `M${pair(x - lean, -halfAcrossMm)}Q${pair(x + bulge, 0)} ${pair(x + lean, halfAcrossMm)}`,
        fill: 'none',
        stroke: band === 1 && accent !== null ? accent : (PLAY[band % PLAY.length] ?? PLAY[0]),
        'stroke-width': (0.3 + 0.25 * random()) * halfAlongMm,
        'stroke-opacity': '.45',
      });
    }
    return drawn;
  },
  clear: false,
};
