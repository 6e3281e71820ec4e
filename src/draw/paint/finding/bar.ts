/** Round wire and rod, drawn as strokes: an edge, the metal, and the light along it. */
import type { Look } from '#core/components/component.ts';
import { tone } from '../../colour/tone.ts';
import { element } from '../../svg/text.ts';
import { materials } from '../material/all.ts';

/** A line of path data drawn as a round bar of that thickness. */
export function bar(d: string, thickMm: number, look: Look): string {
  const material = materials[look.family];
  const stroke = (colour: string, share: number, more: Readonly<Record<string, string>> = {}): string =>
    element('path', {
      d,
      fill: 'none',
      stroke: colour,
      'stroke-width': thickMm * share,
      'stroke-linecap': 'round',
      'stroke-linejoin': 'round',
      ...more,
    });
  return (
    stroke(material.edge(look), 1) +
    stroke(tone(look.colour, -0.1), 0.8) +
    stroke(tone(look.colour, 0.16, 0.6), 0.3, {
      transform: `translate(-${(thickMm * 0.1).toFixed(2)} -${(thickMm * 0.13).toFixed(2)})`,
    })
  );
}

/** Path data of a circle. */
export function circlePath(xMm: number, yMm: number, radiusMm: number): string {
  const r = radiusMm.toFixed(2);
  return `M${(xMm - radiusMm).toFixed(2)} ${yMm.toFixed(2)}a${r} ${r} 0 1 1 0 .01Z`;
}
