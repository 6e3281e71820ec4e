/** Polished stone: solid colour, clouds and veins that differ from one to the next. */
import { mix, tone } from '../../colour/tone.ts';
import { element, pair } from '../../svg/text.ts';
import type { Material } from './material.ts';

/** Few enough to share, enough that the eye finds no pattern on a strand. */
const STONE_VARIANTS = 6;

export const stone: Material = {
  shade: ({ colour }, bright) => {
    if (bright < 0.15) return mix(tone(colour, -0.16, 0.9), tone(colour, -0.24, 0.9), bright / 0.15);
    if (bright < 0.6) return mix(tone(colour, -0.24, 0.9), colour, (bright - 0.15) / 0.45);
    return mix(colour, tone(colour, 0.1, 0.95), (bright - 0.6) / 0.4);
  },
  lit: 1,
  gloss: { strength: 0.6, size: 0.34 },
  edge: ({ colour }) => tone(colour, -0.28, 0.8),
  variants: STONE_VARIANTS,
  figure: ({ colour, accent }, { halfAlongMm, halfAcrossMm }, random) => {
    const vein = accent ?? tone(colour, 0.16, 0.6);
    const between = (low: number, high: number): number => low + (high - low) * random();
    let drawn = '';
    for (let cloud = 0; cloud < 2; cloud += 1) {
      drawn += element('ellipse', {
        cx: between(-0.7, 0.7) * halfAlongMm,
        cy: between(-0.7, 0.7) * halfAcrossMm,
        rx: between(0.25, 0.6) * halfAlongMm,
        ry: between(0.2, 0.5) * halfAcrossMm,
        fill: cloud === 0 ? vein : tone(colour, -0.1),
        opacity: between(0.18, 0.4).toFixed(2),
      });
    }
    const slant = between(-0.8, 0.8);
    for (let at = 0; at < 2; at += 1) {
      const y = between(-0.8, 0.8) * halfAcrossMm;
      const rise = slant * halfAcrossMm;
      const wobble = (): number => between(-0.35, 0.35) * halfAcrossMm;
      drawn += element('path', {
        d:
          `M${pair(-halfAlongMm, y - rise)}C${pair(-halfAlongMm / 3, y - rise / 3 + wobble())} ` +
          `${pair(halfAlongMm / 3, y + rise / 3 + wobble())} ${pair(halfAlongMm, y + rise)}`,
        fill: 'none',
        stroke: vein,
        'stroke-width': between(0.04, 0.13) * halfAcrossMm,
        opacity: between(0.35, 0.7).toFixed(2),
      });
    }
    return drawn;
  },
  clear: false,
};
