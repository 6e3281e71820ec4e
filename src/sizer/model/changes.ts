/** What sizing adds to the piece and leaves out of it, summed over its sections. */
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';

export type PartChange = { readonly name: string; readonly count: number };

export type NetChange = {
  readonly added: readonly PartChange[];
  readonly leftOut: readonly PartChange[];
  /** A focal section stands in the middle and was kept. */
  readonly centreKept: boolean;
  /** Every change is the same on both sides. */
  readonly bothSides: boolean;
};

/** Sums a candidate's changes by component, in the order in which they first appear. Counts are above 0. */
export function netChange(design: Design, candidate: Candidate): NetChange {
  const sums = new Map<string, number>();
  for (const { component, count } of candidate.changes.flatMap((change) => change.parts)) {
    sums.set(component, (sums.get(component) ?? 0) + count);
  }
  const parts = [...sums].map(([id, count]) => ({ name: design.components[id]?.name ?? id, count }));
  const changed = new Set(candidate.changes.map((change) => change.strand));
  return {
    added: parts.filter(({ count }) => count > 0),
    leftOut: parts.filter(({ count }) => count < 0).map(({ name, count }) => ({ name, count: -count })),
    centreKept: design.strands.some(({ mirrored, sections }) => mirrored && sections.some(isFocal)),
    bothSides: [...changed].every((strand) => design.strands[strand]?.mirrored === true),
  };
}

const isFocal = (section: { readonly role: string }): boolean => section.role === 'focal';
