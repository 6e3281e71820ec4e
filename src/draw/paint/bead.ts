/** One component on the wire, painted: its surfaces, figure, hole, lines, gloss and edge. */
import type { Component } from '#core/components/component.ts';
import { element, num } from '../svg/text.ts';
import type { Gradient } from './gradient.ts';
import { paintGloss } from './gloss.ts';
import { glow, layLight } from './lay.ts';
import type { Light } from './light.ts';
import { materials } from './material/all.ts';
import type { Material, Tint } from './material/material.ts';
import { formOf } from './shape/all.ts';
import type { Form, Mark } from './shape/form.ts';
import type { Ink } from './ink.ts';

/** The edge's width as a share of the diameter, its least (mm), and how far it lets the bead through. */
const EDGE_SHARE = 0.016;
const EDGE_LEAST_MM = 0.06;
const EDGE_OPACITY = '.75';

/** Markup of the component round the origin, its hole along x. `random` is its own stream. */
export function paintBead(ink: Ink, component: Component, light: Light, random: () => number): string {
  const material = materials[component.look.family];
  const form = formOf(component, random);
  const edge = {
    fill: 'none',
    stroke: material.edge(component.look),
    'stroke-width': Math.max(EDGE_LEAST_MM, component.acrossMm * EDGE_SHARE),
    'stroke-opacity': EDGE_OPACITY,
  };
  return (
    figure(ink, component, material, form, random) +
    form.surfaces
      .map(({ mark, lie }) => write(mark, fillOf(ink, layLight(component.look, material, lie, light))))
      .join('') +
    hole(ink, component, material) +
    lines(component, material, form) +
    paintGloss(ink, component, material.gloss, form, light) +
    write(form.outline, edge)
  );
}

function fillOf(ink: Ink, paint: Gradient | Tint): Readonly<Record<string, string | number>> {
  if ('form' in paint) return { fill: ink.paint(paint) };
  return paint.opacity === 1 ? { fill: paint.colour } : { fill: paint.colour, 'fill-opacity': paint.opacity };
}

function write(mark: Mark, more: Readonly<Record<string, string | number>>): string {
  return element(mark.name, { ...mark.attributes, ...more });
}

/** The plain colour with its markings; light is laid over it. */
function figure(
  ink: Ink,
  component: Component,
  material: Material,
  form: Form,
  random: () => number,
): string {
  if (material.figure === null) return '';
  const box = { halfAlongMm: component.alongMm / 2, halfAcrossMm: component.acrossMm / 2 };
  const marks = material.figure(component.look, box, random);
  const plain = write(form.outline, { fill: component.look.colour });
  return plain + element('g', { 'clip-path': ink.clip(write(form.outline, {})) }, marks);
}

/** The drilled hole, seen through a clear bead; a lined one glows with its lining. */
function hole(ink: Ink, component: Component, material: Material): string {
  const { alongMm, acrossMm, holeMm, look, kind } = component;
  if (!material.clear || holeMm <= 0 || kind === 'pendant') return '';
  if (look.accent !== null) {
    const ry = Math.min(acrossMm * 0.32, holeMm * 1.4);
    return element('ellipse', { rx: alongMm * 0.47, ry, fill: ink.paint(glow(look.accent)) });
  }
  const half = alongMm * 0.44;
  return element('path', {
    d: `M${num(-half)} 0H${num(half)}`,
    stroke: material.shade(look, 0.1).colour,
    'stroke-width': holeMm * 0.7,
    'stroke-linecap': 'round',
    opacity: '.22',
  });
}

function lines({ look }: Component, material: Material, form: Form): string {
  return form.lines
    .map((line) =>
      element('path', {
        d: line.d,
        fill: 'none',
        stroke: line.tone === 'dark' ? material.edge(look) : '#fff',
        'stroke-width': line.widthMm,
        opacity: '.6',
      }),
    )
    .join('');
}
