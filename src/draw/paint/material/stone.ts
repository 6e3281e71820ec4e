/** Polished stone: solid colour, clouds and veins that differ from one to the next. */
import { mix, tone } from '../../colour/tone.ts';
import { element, num, pair } from '../../svg/text.ts';
import { veil, type FigureBox, type Material } from './material.ts';

/** Few enough to share, enough that the eye finds no pattern on a strand. */
const STONE_VARIANTS = 6;

const CLOUDS = 3;
const VEINS = 3;

export const stone: Material = {
  shade: ({ colour }, bright) => veil(tone(colour, -0.42, 0.8), 0.82, 0.3, bright),
  lit: 1,
  bounce: 0.14,
  gloss: { sheen: 0.4, point: 0.6 },
  edge: ({ colour }) => tone(colour, -0.28, 0.8),
  variants: STONE_VARIANTS,
  figure: ({ colour, accent }, box, random) => {
    const vein = accent ?? tone(colour, 0.16, 0.6);
    return clouds(colour, vein, box, random) + veins(vein, box, random);
  },
  clear: false,
};

function between(low: number, high: number, random: () => number): number {
  return low + (high - low) * random();
}

/** Patches of a lighter and a darker shade, each of three that fade outwards. */
function clouds(colour: string, vein: string, box: FigureBox, random: () => number): string {
  let drawn = '';
  for (let cloud = 0; cloud < CLOUDS; cloud += 1) {
    const cx = between(-0.8, 0.8, random) * box.halfAlongMm;
    const cy = between(-0.8, 0.8, random) * box.halfAcrossMm;
    const rx = between(0.35, 0.75, random) * box.halfAlongMm;
    const ry = between(0.25, 0.55, random) * box.halfAcrossMm;
    const fill = cloud % 2 === 0 ? mix(colour, vein, 0.5) : tone(colour, -0.12);
    for (const share of [1, 0.66]) {
      drawn += element('ellipse', { cx, cy, rx: rx * share, ry: ry * share, fill, opacity: '.3' });
    }
  }
  return drawn;
}

/** Lines that run roughly one way, as a seam does, some fine and some broad. */
function veins(vein: string, { halfAlongMm, halfAcrossMm }: FigureBox, random: () => number): string {
  let drawn = '';
  const slant = between(-0.9, 0.9, random);
  for (let at = 0; at < VEINS; at += 1) {
    const y = between(-0.85, 0.85, random) * halfAcrossMm;
    const rise = (slant + between(-0.3, 0.3, random)) * halfAcrossMm;
    const bend = (): number => between(-0.4, 0.4, random) * halfAcrossMm;
    drawn += element('path', {
      d:
        `M${pair(-halfAlongMm, y - rise)}C${pair(-halfAlongMm / 3, y - rise / 3 + bend())} ` +
        `${pair(halfAlongMm / 3, y + rise / 3 + bend())} ${pair(halfAlongMm, y + rise)}`,
      fill: 'none',
      stroke: vein,
      'stroke-width': (at === 0 ? 0.13 : 0.045) * halfAcrossMm,
      opacity: num(between(0.45, 0.8, random)),
    });
  }
  return drawn;
}
