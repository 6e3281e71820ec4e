/** Every bead's shape; what closes a strand is drawn in `finding/`. */
import type { Component, Shape } from '#core/design/component.ts';
import { ball } from './ball.ts';
import { bicone } from './bicone.ts';
import { cap } from './cap.ts';
import { chip } from './chip.ts';
import { coin } from './coin.ts';
import { cover, crimp } from './crimp.ts';
import { cube } from './cube.ts';
import { drop } from './drop.ts';
import type { Form, Shaper } from './form.ts';
import { rondelle } from './rondelle.ts';
import { tube } from './tube.ts';

/** Shapes of what goes on the wire. A clasp's shape that strays onto it is drawn as the tube it takes up. */
const shapers: Readonly<Record<Shape, Shaper>> = {
  ball,
  rondelle,
  bicone,
  tube,
  cube,
  chip,
  coin,
  drop,
  cap,
  ring: rondelle,
  lobster: tube,
  'spring-ring': rondelle,
  toggle: tube,
  hook: tube,
  box: tube,
  magnetic: tube,
};

/** The form of a component on the wire. */
export function formOf(component: Component, random: () => number): Form {
  if (component.kind === 'crimp') return crimp(component, random);
  const form = shapers[component.shape](component, random);
  return component.kind === 'cover' ? cover(form, component.acrossMm) : form;
}

/** Alike from all sides, so that it needn't be turned with the wire. */
export function isRound(component: Component): boolean {
  return component.shape === 'ball' && component.kind !== 'cover' && component.alongMm === component.acrossMm;
}

/** Alike at both ends, or as good as, so that half a turn makes no difference. */
export function isTwoEnded(component: Component): boolean {
  return component.shape !== 'cap' && component.shape !== 'drop';
}

/** No two alike, whatever they are made of. */
export function isIrregular(component: Component): boolean {
  return component.shape === 'chip';
}
