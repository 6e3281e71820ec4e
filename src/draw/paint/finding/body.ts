/** The solid part of a clasp: a silhouette filled with its material's light. */
import type { Look } from '#core/design/component.ts';
import { element } from '../../svg/text.ts';
import type { Ink } from '../ink/ink.ts';
import { layLight } from '../bead/lay.ts';
import type { Light } from '../ink/light.ts';
import { materials } from '../material/all.ts';

/** Silhouette `d` (even-odd, so that it may have holes), lit across as a turned body, with its edge. */
export function solid(ink: Ink, d: string, look: Look, light: Light, edgeMm: number): string {
  const material = materials[look.family];
  const paint = layLight(look, material, 'turned', light);
  return element('path', {
    d,
    'fill-rule': 'evenodd',
    fill: 'form' in paint ? ink.paint(paint) : paint.colour,
    stroke: material.edge(look),
    'stroke-width': edgeMm,
  });
}
