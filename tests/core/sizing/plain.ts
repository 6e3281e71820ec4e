/** Necklaces whose length is added up in the head: 28 mm of ends (clasp 10, ring 4, two loops of 4, two covers of 3), then beads. */
import type { Component } from '#core/design/component.ts';
import type { Choice } from '#core/design/choice.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Design, Section } from '#core/design/design.ts';
import { ball, component, design, rules, section, strand } from '../designs.ts';

/** What every such necklace has besides its beads, mm. */
export const ENDS_MM = 28;

const BEADS: readonly Component[] = [
  ...[2, 3, 4, 6, 8, 20].map((mm) => ball(`b${mm}`, mm)),
  component('cap', { kind: 'cap', alongMm: 5 }),
  component('spacer', { kind: 'spacer', alongMm: 1.5, acrossMm: 4, roundingMm: 0 }),
];

/** A section of one bead a repeat. */
export const run = (
  id: string,
  bead: string,
  counts: readonly [number, number, number],
  role: Section['role'] = 'body',
): Section => section(id, [{ component: bead, count: 1 }], counts, role);

export type Line = { readonly sections: readonly Section[]; readonly mirrored?: boolean };

/** One necklace of as many strands as lines, side by side. `stock` counts the named beads; the others aren't counted. */
export function plain(
  lines: readonly Line[],
  stock: Record<string, number> = {},
  over?: Partial<Design>,
): Design {
  const strands = lines.map(({ sections, mirrored = false }, at) => strand(`s${at}`, sections, mirrored));
  const made = design('necklace', strands, BEADS, over);
  const components = Object.fromEntries(
    Object.values(made.components).map((one) => [one.id, { ...one, stock: stock[one.id] ?? null }]),
  );
  return { ...made, components };
}

/** A length asked for, in millimetres. */
export function asking(mm: number, over: Partial<Choice> = {}): Choice {
  return { measure: { of: 'length', mm }, sit: 'easy', hand: 'left', pick: 'best', quantity: 1, ...over };
}

/** The shop's rules with so much tolerance for a necklace. */
export const within = (mm: number): Rules => ({
  ...rules,
  toleranceMm: { ...rules.toleranceMm, necklace: mm },
});
