/** What a shape hands to the painter: outlines and how they lie to the light, no colours. */
import type { Component } from '#core/design/component.ts';
import type { Attributes } from '../../svg/text.ts';

/** One SVG shape, in millimetres round the component's centre, the hole along x. */
export type Mark = { readonly name: 'circle' | 'ellipse' | 'rect' | 'path'; readonly attributes: Attributes };

/**
 * How a surface takes light: as a ball, as turned on a lathe round x, as a flat face towards the eye,
 * or as one facet by its outward normal.
 */
export type Lie = 'ball' | 'turned' | 'plate' | readonly [number, number, number];

export type Surface = { readonly mark: Mark; readonly lie: Lie };

export type Line = {
  readonly d: string;
  readonly tone: 'dark' | 'light';
  readonly widthMm: number;
};

export type Form = {
  /** All of it: clips the figure and carries the edge. */
  readonly outline: Mark;
  readonly surfaces: readonly Surface[];
  readonly lines: readonly Line[];
  /** Where it mirrors the lamp; `ball` moves with the light over both measures, `turned` across only. */
  readonly gloss: 'ball' | 'turned' | 'plate' | 'none';
};

/** `random` is the component's own stream: only shapes that are never alike draw on it. */
export type Shaper = (component: Component, random: () => number) => Form;

/** A rectangle with its corners rounded, centred on the origin. */
export function roundedBox(alongMm: number, acrossMm: number, roundingMm: number): Mark {
  return {
    name: 'rect',
    attributes: {
      x: -alongMm / 2,
      y: -acrossMm / 2,
      width: alongMm,
      height: acrossMm,
      rx: roundingMm === 0 ? undefined : roundingMm,
    },
  };
}

/** An ellipse round the origin, or a circle where it is one. */
export function oval(alongMm: number, acrossMm: number): Mark {
  if (alongMm === acrossMm) return { name: 'circle', attributes: { r: alongMm / 2 } };
  return { name: 'ellipse', attributes: { rx: alongMm / 2, ry: acrossMm / 2 } };
}

export function pathMark(d: string): Mark {
  return { name: 'path', attributes: { d } };
}
