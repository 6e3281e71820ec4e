/** One component on the wire, painted: its surfaces, figure, hole, lines, gloss and edge. */
import type { Component } from '#core/components/component.ts';
import { element, num } from '../svg/text.ts';
import { GLOSS, layLight } from './lay.ts';
import type { Light } from './light.ts';
import { materials } from './material/all.ts';
import type { Material } from './material/material.ts';
import { formOf } from './shape/all.ts';
import type { Form, Mark } from './shape/form.ts';
import type { Ink } from './ink.ts';

/** The edge's width as a share of the diameter, and its least, mm. */
const EDGE_SHARE = 0.022;
const EDGE_LEAST_MM = 0.05;

/** Markup of the component round the origin, its hole along x. `random` is its own stream. */
export function paintBead(ink: Ink, component: Component, light: Light, random: () => number): string {
  const material = materials[component.look.family];
  const form = formOf(component, random);
  const edge = {
    stroke: material.edge(component.look),
    'stroke-width': Math.max(EDGE_LEAST_MM, component.acrossMm * EDGE_SHARE),
  };
  const surfaces = form.surfaces.map(({ mark, lie }) => {
    const paint = layLight(component.look, material, lie, light);
    return write(mark, { fill: typeof paint === 'string' ? paint : ink.paint(paint) });
  });
  return (
    surfaces.join('') +
    figure(ink, component, material, form, random) +
    hole(component, material) +
    lines(component, material, form) +
    gloss(ink, component, material, form, light) +
    write(form.outline, { fill: 'none', ...edge })
  );
}

function write(mark: Mark, more: Readonly<Record<string, string | number>>): string {
  return element(mark.name, { ...mark.attributes, ...more });
}

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
  return element('g', { 'clip-path': ink.clip(write(form.outline, {})) }, marks);
}

/** The drilled hole, seen through a clear bead; a lined one shows its lining. */
function hole({ alongMm, holeMm, look, kind }: Component, material: Material): string {
  if (!material.clear || holeMm <= 0 || kind === 'pendant') return '';
  const half = alongMm * 0.46;
  return element('path', {
    d: `M${num(-half)} 0H${num(half)}`,
    stroke: look.accent ?? material.shade(look, 0.05),
    'stroke-width': holeMm * 0.8,
    opacity: look.accent === null ? '.28' : '.7',
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

function gloss(ink: Ink, component: Component, material: Material, form: Form, light: Light): string {
  if (form.gloss === 'none') return '';
  const halfAlong = component.alongMm / 2;
  const halfAcross = component.acrossMm / 2;
  const { strength, size } = material.gloss;
  const isTurned = form.gloss === 'turned';
  return element('ellipse', {
    cx: isTurned ? undefined : light.x * halfAlong * 0.46,
    cy: light.y * halfAcross * (isTurned ? 0.42 : 0.46),
    rx: isTurned ? halfAlong * 0.78 : halfAlong * size,
    ry: halfAcross * size * (isTurned ? 0.6 : 0.85),
    fill: ink.paint(GLOSS),
    opacity: form.gloss === 'plate' ? num(strength * 0.45) : num(strength),
  });
}
