/** One component on the wire, painted: its surfaces, figure, hole, lines, gloss and edge. */
import type { Component } from '#core/design/component.ts';
import { lightnessOf, tone } from '../ink/tone.ts';
import { hash, stream } from '../ink/seed.ts';
import { element, num } from '../../svg/text.ts';
import type { Gradient } from '../ink/gradient.ts';
import { paintGloss } from './gloss.ts';
import { glow } from '../ink/glow.ts';
import { layLight } from './lay.ts';
import type { Light } from '../ink/light.ts';
import { materials } from '../material/all.ts';
import type { Material, Tint } from '../material/material.ts';
import { formOf, isIrregular } from '../shape/all.ts';
import type { Form, Mark } from '../shape/form.ts';
import type { Ink } from '../ink/ink.ts';
import type { Drawn } from '../ink/stampAll.ts';

/** The edge's width as a share of the diameter, its least (mm), and how far it lets the bead through. */
const EDGE_SHARE = 0.016;
const EDGE_LEAST_MM = 0.06;
const EDGE_OPACITY = '.75';

/** Below this lightness a bead's own shade is lost on a dark page: light from behind draws its edge instead. */
const DARK = 0.42;
const RIM_LIGHT = 0.15;

/** One coat of a component, the under one first. */
export type Coat = Drawn;

/**
 * Up to this diameter, mm, a bead is shown as its surface and one glint: a seed bead's hole and sheen are
 * less than a pixel, and there are hundreds of them.
 */
const FINE_MM = 2.5;

/**
 * The component round the origin, its hole along x. A figure and the light on it are coats of their own:
 * six stones in six lights are then twelve drawings and not thirty-six.
 * @param variant which of those that differ, from 0
 */
export function coatsOf(component: Component, light: Light, variant: number): Coat[] {
  const material = materials[component.look.family];
  const form = formOf(component, streamOf(component, 'form', variant));
  const shown = material.figure === null || isIrregular(component) ? variant : 0;
  const lit: Coat = {
    key: `light ${component.id} ${shown} ${num(light.x)} ${num(light.y)}`,
    paint: (ink) => paintLit(ink, component, material, form, light),
  };
  if (material.figure === null) return [lit];
  const figure: Coat = {
    key: `figure ${component.id} ${variant}`,
    paint: (ink) => paintFigure(ink, component, material, form, streamOf(component, 'figure', variant)),
  };
  return [figure, lit];
}

/** Markup of the component round the origin. */
export function paintBead(ink: Ink, component: Component, light: Light, variant: number): string {
  return coatsOf(component, light, variant)
    .map((coat) => coat.paint(ink))
    .join('');
}

/** A stream of its own for each purpose, so that one doesn't move the other. */
function streamOf({ id }: Component, purpose: string, variant: number): () => number {
  return stream(hash(`${id} ${purpose} ${variant}`));
}

/** All but the figure. */
function paintLit(ink: Ink, component: Component, material: Material, form: Form, light: Light): string {
  const edge = {
    stroke: edgeOf(component, material),
    'stroke-width': Math.max(EDGE_LEAST_MM, component.acrossMm * EDGE_SHARE),
    'stroke-opacity': EDGE_OPACITY,
  };
  // One surface carries the edge itself: every element less is one less a bead for the browser to lay out.
  const [only] = form.surfaces.length === 1 ? form.surfaces : [];
  const isFine = component.acrossMm <= FINE_MM;
  const surfaces = form.surfaces.map(({ mark, lie }) => {
    const fill = fillOf(ink, layLight(component.look, material, lie, light));
    return write(mark, only === undefined ? fill : { ...fill, ...edge });
  });
  return (
    surfaces.join('') +
    (isFine ? '' : hole(ink, component, material)) +
    lines(component, material, form) +
    paintGloss(ink, component, isFine ? { ...material.gloss, sheen: 0 } : material.gloss, form, light) +
    (only === undefined ? write(form.outline, { fill: 'none', ...edge }) : '')
  );
}

function edgeOf({ look }: Component, material: Material): string {
  return lightnessOf(look.colour) < DARK ? tone(look.colour, RIM_LIGHT, 0.7) : material.edge(look);
}

function fillOf(ink: Ink, paint: Gradient | Tint): Readonly<Record<string, string | number>> {
  if ('form' in paint) return { fill: ink.paint(paint) };
  return paint.opacity === 1 ? { fill: paint.colour } : { fill: paint.colour, 'fill-opacity': paint.opacity };
}

function write(mark: Mark, more: Readonly<Record<string, string | number>>): string {
  return element(mark.name, { ...mark.attributes, ...more });
}

/** The plain colour with its markings; light is laid over it. */
function paintFigure(
  ink: Ink,
  component: Component,
  material: Material,
  form: Form,
  random: () => number,
): string {
  if (material.figure === null) return '';
  const box = { halfAlongMm: component.alongMm / 2, halfAcrossMm: component.acrossMm / 2 };
  const marks = material.figure(component.look, box, random, ink);
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
  // A round cap reaches half its width past the line's end: it must not show outside the bead.
  const widthMm = Math.min(holeMm * 0.7, acrossMm * 0.3);
  const half = Math.max(0.01, alongMm * 0.46 - widthMm / 2);
  return element('path', {
    d: `M${num(-half)} 0H${num(half)}`,
    stroke: material.shade(look, 0.1).colour,
    'stroke-width': widthMm,
    'stroke-linecap': 'round',
    'stroke-opacity': '.22',
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
        'stroke-opacity': '.6',
      }),
    )
    .join('');
}
