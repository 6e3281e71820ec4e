/** What a piece is made of at its usual size, in the order a reader looks for it. */
import type { Component, ComponentKind } from '#core/design/component.ts';
import { massOf } from '#core/design/mass/mass.ts';
import { tally } from '#core/design/tally.ts';
import type { Counts, Design } from '#core/design/design.ts';

export type PartRow = { readonly component: Component; readonly count: number; readonly massG: number };

/** Seen first, named first. */
const ORDER: readonly ComponentKind[] = [
  'pendant',
  'bead',
  'cap',
  'spacer',
  'clasp',
  'ring',
  'cover',
  'crimp',
];

const place = (row: PartRow): number => ORDER.indexOf(row.component.kind);
/** Area seen from the front, mm², all of a kind together. */
const shownMm2 = ({ component, count }: PartRow): number => component.alongMm * component.acrossMm * count;

/** Every component with its count and the mass of one, showiest first. */
export function partsList(design: Design, counts: Counts): PartRow[] {
  const rows = [...tally(design, counts)].flatMap(([id, count]) => {
    const component = design.components[id];
    return component === undefined ? [] : [{ component, count, massG: massOf(component).massG }];
  });
  return rows.sort((a, b) => place(a) - place(b) || shownMm2(b) - shownMm2(a));
}

/** The few that make the piece what it is: its pendant and the beads that show most. */
export function mainParts(design: Design, counts: Counts, most = 3): Component[] {
  return partsList(design, counts)
    .map(({ component }) => component)
    .filter(({ kind }) => kind === 'pendant' || kind === 'bead')
    .slice(0, most);
}
