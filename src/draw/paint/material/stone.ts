/** Polished stone: solid colour, clouds and veins that differ from one to the next. */
import { mix, tone } from '../ink/tone.ts';
import { element, num, pair } from '../../svg/text.ts';
import { glow } from '../ink/glow.ts';
import type { Ink } from '../ink/ink.ts';
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
  figure: ({ colour, accent }, box, random, ink) => {
    const vein = accent ?? tone(colour, 0.16, 0.6);
    return clouds(ink, colour, vein, box, random) + veins(vein, box, random);
  },
  clear: false,
};

function between(low: number, high: number, random: () => number): number {
  return low + (high - low) * random();
}

/** Patches of a lighter and a darker shade that fade outwards. */
function clouds(ink: Ink, colour: string, vein: string, box: FigureBox, random: () => number): string {
  let drawn = '';
  for (let cloud = 0; cloud < CLOUDS; cloud += 1) {
    drawn += element('ellipse', {
      cx: between(-0.8, 0.8, random) * box.halfAlongMm,
      cy: between(-0.8, 0.8, random) * box.halfAcrossMm,
      rx: between(0.45, 0.95, random) * box.halfAlongMm,
      ry: between(0.35, 0.7, random) * box.halfAcrossMm,
      fill: ink.paint(glow(cloud % 2 === 0 ? mix(colour, vein, 0.6) : tone(colour, -0.14))),
      'fill-opacity': '.75',
    });
  }
  return drawn;
}

/** Lines that run roughly one way, as a seam does: one broad, the others fine. */
function veins(vein: string, box: FigureBox, random: () => number): string {
  const slant = between(-0.9, 0.9, random);
  let fine = '';
  for (let at = 1; at < VEINS; at += 1) fine += veinLine(slant, box, random);
  const stroke = (d: string, share: number): string =>
    element('path', {
      d,
      fill: 'none',
      stroke: vein,
      'stroke-width': share * box.halfAcrossMm,
      'stroke-opacity': num(between(0.45, 0.8, random)),
    });
  return stroke(veinLine(slant, box, random), 0.13) + stroke(fine, 0.045);
}

function veinLine(slant: number, { halfAlongMm, halfAcrossMm }: FigureBox, random: () => number): string {
  const y = between(-0.85, 0.85, random) * halfAcrossMm;
  const rise = (slant + between(-0.3, 0.3, random)) * halfAcrossMm;
  const bend = (): number => between(-0.4, 0.4, random) * halfAcrossMm;
  return (
    `M${pair(-halfAlongMm, y - rise)}C${pair(-halfAlongMm / 3, y - rise / 3 + bend())} ` +
    `${pair(halfAlongMm / 3, y + rise / 3 + bend())} ${pair(halfAlongMm, y + rise)}`
  );
}
