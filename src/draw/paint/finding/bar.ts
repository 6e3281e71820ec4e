/** Round wire and rod, drawn as strokes: an edge, the metal, and the light along it. */
import type { Look } from '#core/design/component.ts';
import { tone } from '../ink/tone.ts';
import { element, pair } from '../../svg/text.ts';
import { materials } from '../material/all.ts';

/** A line of path data drawn as a round bar of that thickness. */
export function bar(d: string, thickMm: number, look: Look): string {
  const stroke = (colour: string, share: number, transform?: string): string =>
    element('path', { d, stroke: colour, 'stroke-width': thickMm * share, transform });
  const strokes =
    stroke(materials[look.family].edge(look), 1) +
    stroke(tone(look.colour, -0.1), 0.84) +
    stroke(tone(look.colour, 0.16, 0.6), 0.3, `translate(${pair(-thickMm * 0.1, -thickMm * 0.13)})`);
  return element('g', { fill: 'none', 'stroke-linecap': 'round', 'stroke-linejoin': 'round' }, strokes);
}

/** Path data of a circle. */
export function circlePath(xMm: number, yMm: number, radiusMm: number): string {
  return ovalPath(xMm, yMm, radiusMm, radiusMm);
}

/** Path data of an upright ellipse. */
export function ovalPath(xMm: number, yMm: number, radiusXMm: number, radiusYMm: number): string {
  return `M${pair(xMm - radiusXMm, yMm)}a${pair(radiusXMm, radiusYMm)} 0 1 1 0 .01Z`;
}
