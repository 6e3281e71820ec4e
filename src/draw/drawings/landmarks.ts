/** The body chart's marks: pit of the neck, bust level as a band, navel, and a scale of drops. */
import { NINETY_PERCENT } from '#core/body/assumptions.ts';
import type { Figure } from '#core/body/figure.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { Box } from '../svg/document.ts';
import { element, escapeXml, num, pair } from '../svg/text.ts';
import { rulerMarks } from './ruler.ts';

export type LandmarkLabels = { readonly pit: string; readonly bust: string; readonly navel: string };

/** Height of the words as a share of the drawing's width: legible at 360 px. */
export const TEXT_SHARE = 1 / 27;

export function paintLandmarks(figure: Figure, box: Box, labels: LandmarkLabels): string {
  const textMm = box.width * TEXT_SHARE;
  const rightMm = box.x + box.width;
  const bottomMm = box.y + box.height;
  const words = (label: string, yMm: number): string =>
    element('text', { x: box.x + textMm * 0.5, y: yMm - textMm * 0.4 }, escapeXml(label));
  let drawn = element('path', {
    d: `M${pair(box.x, 0)}H${num(rightMm)}`,
    stroke: 'currentColor',
    'stroke-width': 0.5,
    'stroke-dasharray': '1.5 2',
    opacity: '.45',
  });
  // Below its line: above it runs the shoulder.
  let texts = words(labels.pit, textMm * 1.5);
  if (figure.bust !== null && figure.bust.mm < bottomMm) {
    const reachMm = NINETY_PERCENT * figure.bust.sdMm;
    drawn += element('rect', {
      x: box.x,
      y: figure.bust.mm - reachMm,
      width: box.width,
      height: Math.min(2 * reachMm, bottomMm - figure.bust.mm + reachMm),
      fill: 'currentColor',
      opacity: '.06',
    });
    texts += words(labels.bust, figure.bust.mm);
  }
  if (figure.navel !== null && figure.navel.mm < bottomMm) {
    drawn += element('circle', { cy: figure.navel.mm, r: 2.4, fill: 'currentColor', opacity: '.4' });
    texts += words(labels.navel, figure.navel.mm);
  }
  return drawn + element('g', { ...textLook(textMm, 'start'), opacity: '.8' }, texts);
}

/** Drops below the pit along the right edge, in the buyer's unit. */
export function paintDropScale(box: Box, unit: ShownUnit): string {
  const textMm = box.width * TEXT_SHARE;
  const xMm = box.x + box.width - textMm * 0.3;
  let d = '';
  let texts = '';
  for (const mark of rulerMarks(box.y + box.height - textMm, unit)) {
    const tall = mark.size === 'long' ? textMm * 0.6 : mark.size === 'middle' ? textMm * 0.4 : textMm * 0.25;
    d += `M${pair(xMm, mark.atMm)}h${num(-tall)}`;
    if (mark.label === '') continue;
    texts += element('text', { x: xMm - textMm * 0.9, y: mark.atMm + textMm * 0.35 }, mark.label);
  }
  return (
    element('path', { d, stroke: 'currentColor', 'stroke-width': 0.4, opacity: '.7' }) +
    element('g', textLook(textMm, 'end'), texts)
  );
}

export function textLook(textMm: number, anchor: 'start' | 'end'): Readonly<Record<string, string | number>> {
  return { fill: 'currentColor', 'font-size': textMm, 'text-anchor': anchor, 'font-family': 'inherit' };
}
