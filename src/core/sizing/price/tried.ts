/** The same piece where something costs another sum than it does: for trying out, never for the shop. */
import type { Counts, Design } from '../../design/design.ts';
import { tally, tallyFindings, tallyStrand } from '../../design/tally.ts';

/** What of a piece's material costs something else. */
export type Costed =
  | { readonly code: 'all' | 'beads' | 'findings' | 'wire' }
  | { readonly code: 'material'; readonly material: string }
  | { readonly code: 'component'; readonly id: string };

/** Ids of the components that are meant; a bead that serves as a finding too is both. */
function meant(design: Design, counts: Counts, which: Costed): ReadonlySet<string> {
  const all = Object.values(design.components);
  switch (which.code) {
    case 'wire':
      return new Set();
    case 'all':
      return new Set(all.map(({ id }) => id));
    case 'findings':
      return new Set(tallyFindings(design).keys());
    case 'beads':
      return new Set(
        design.strands.flatMap((strand, index) => [...tallyStrand(strand, counts[index] ?? []).keys()]),
      );
    case 'material':
      return new Set(all.filter(({ material }) => material === which.material).map(({ id }) => id));
    case 'component':
      return new Set([which.id]);
  }
}

/**
 * The design where some of its material costs more, or less. Costs may come to
 * parts of a minor unit.
 * @param counts those of the piece that is looked at
 * @param percent more than now; below 0: less
 */
export function withCosts(design: Design, counts: Counts, which: Costed, percent: number): Design {
  const ids = meant(design, counts, which);
  const changed = (cost: number): number => (cost * (100 + percent)) / 100;
  const components = Object.entries(design.components).map(
    ([id, one]) => [id, ids.has(id) ? { ...one, costMinor: changed(one.costMinor) } : one] as const,
  );
  const hasWire = which.code === 'wire' || which.code === 'all';
  const { wire } = design;
  return {
    ...design,
    components: Object.fromEntries(components),
    wire: hasWire ? { ...wire, costMinorPerM: changed(wire.costMinorPerM) } : wire,
  };
}

/** What each material of a piece costs, minor units, the dearest first; wire not among them. */
export function costsByMaterial(
  design: Design,
  counts: Counts,
): readonly { readonly material: string; readonly costMinor: number }[] {
  const sums = new Map<string, number>();
  for (const [id, count] of tally(design, counts)) {
    const component = design.components[id];
    if (component === undefined) continue;
    sums.set(component.material, (sums.get(component.material) ?? 0) + count * component.costMinor);
  }
  return [...sums]
    .map(([material, costMinor]) => ({ material, costMinor }))
    .toSorted((one, other) => other.costMinor - one.costMinor || (one.material < other.material ? -1 : 1));
}
