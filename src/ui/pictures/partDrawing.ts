/** The drawing of one bead, pendant or clasp by itself, a few KB of SVG. */
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { drawPart } from '#draw/drawings/part.ts';
import { keyOf } from './cache.ts';

export type PartDrawing = { readonly name: string; readonly svg: string };

const known = new WeakMap<Component, PartDrawing>();

/** What the names of a part's drawings begin with. */
export const partStem = ({ id }: Component): string => `part-${id}`;

/** @param design a piece that has it */
export function partDrawing(design: Design, component: Component): PartDrawing {
  const found = known.get(component);
  if (found !== undefined) return found;
  const svg = drawPart(design, component, { title: component.name, description: '', idPrefix: 'part' });
  const drawing = { name: `${partStem(component)}-${keyOf(svg)}.svg`, svg };
  known.set(component, drawing);
  return drawing;
}
