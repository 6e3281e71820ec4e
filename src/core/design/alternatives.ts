/** Parts that a maker lets a buyer choose instead of those a design is listed with. */
import type { Component } from './component.ts';
import type { ChosenParts } from './choice.ts';
import type { Design } from './design.ts';
import { withParts } from './swap.ts';

export type OtherClasp = {
  readonly clasp: Component;
  /** What stands opposite it; null: the listed ring, or none where the clasp closes on itself. */
  readonly ring: Component | null;
};

export type Alternatives = {
  readonly clasps: readonly OtherClasp[];
  readonly pendants: readonly Component[];
};

/** Every component that only the alternatives name. */
export function componentsOf({ clasps, pendants }: Alternatives): readonly Component[] {
  return [...clasps.flatMap(({ clasp, ring }) => (ring === null ? [clasp] : [clasp, ring])), ...pendants];
}

/**
 * The design with the parts chosen; the design itself where none is.
 * @returns null where the maker doesn't offer one of them
 */
export function designWith(
  design: Design,
  { clasps, pendants }: Alternatives,
  chosen: ChosenParts,
): Design | null {
  if (chosen.clasp === '' && chosen.pendant === '') return design;
  const closing = clasps.find(({ clasp }) => clasp.id === chosen.clasp);
  const pendant = pendants.find(({ id }) => id === chosen.pendant);
  if (closing === undefined && chosen.clasp !== '') return null;
  if (pendant === undefined && chosen.pendant !== '') return null;
  const { clasp = null, ring = null } = closing ?? {};
  const swapped = withParts(design, { clasp, ring, pendant: pendant ?? null });
  return swapped === null ? null : withoutUnused(swapped);
}

/** What was taken off warns of nothing and is cared for no more. */
function withoutUnused(design: Design): Design {
  const { strands, ends, hanging, components } = design;
  const { clasp, ring, crimp, cover, guard } = ends;
  const strung = strands.flatMap(({ sections }) =>
    sections.flatMap(({ motif }) => motif.map(({ component }) => component)),
  );
  const hung = hanging === null ? [] : [hanging.pendant, ...hanging.rings];
  const used = new Set([...strung, ...hung, clasp, ring, crimp, cover, guard]);
  return {
    ...design,
    components: Object.fromEntries(Object.entries(components).filter(([id]) => used.has(id))),
  };
}
