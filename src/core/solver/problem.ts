/** One strand's sizing problem: what may change, what it costs, what there is. */
import type { Section, Strand } from '../design/design.ts';

/** One section of the strand, in the design's own order, or the links of its chain. */
export type FitSection = {
  /** null for the links of an extender chain, which aren't of the design's sections and come last. */
  readonly id: string | null;
  readonly usual: number;
  readonly fewest: number;
  readonly most: number;
  /** What one repeat more or less costs the design. */
  readonly cost: number;
  /** Components that one repeat adds, both sides together. */
  readonly partsPerRepeat: number;
  /** Of each counted component, by its place in `FitProblem.stock`, how many one repeat takes. */
  readonly takes: readonly number[];
};

/** What is left of a counted component for the repeats of this strand's sections. */
type StockLimit = { readonly component: string; readonly left: number };

export type FitProblem = {
  readonly sections: readonly FitSection[];
  readonly stock: readonly StockLimit[];
};

/** Repeats of a section's motif on the strand for each of its count. */
export function sidesOf(strand: Strand, section: Section): number {
  return strand.mirrored && section.role !== 'focal' ? 2 : 1;
}

/** Components of one repeat, both sides together, by id. */
export function takenByRepeat(strand: Strand, section: Section): ReadonlyMap<string, number> {
  const taken = new Map<string, number>();
  const sides = sidesOf(strand, section);
  for (const part of section.motif) {
    taken.set(part.component, (taken.get(part.component) ?? 0) + sides * part.count);
  }
  return taken;
}

/** The fewest and the most that the maker allows of a section; a focal never changes. */
export function makersLimits({
  role,
  usual,
  fewest,
  most,
}: Section): readonly [fewest: number, most: number] {
  return role === 'focal' ? [usual, usual] : [fewest, most];
}

/**
 * What one repeat costs where the maker names no cost: by place, falling from
 * the centre to the clasp, 1 at the clasp. The centre of a one-run strand is
 * its middle.
 */
function costByPlace(strand: Strand, index: number): number {
  const count = strand.sections.length;
  return strand.mirrored ? count - index : Math.min(index, count - 1 - index) + 1;
}

/** The links of a chain as a section: how many are let out changes nothing of the piece, so it costs nothing. */
const chainSection = (links: number, counted: readonly string[]): FitSection => ({
  id: null,
  usual: 0,
  fewest: 0,
  most: links,
  cost: 0,
  partsPerRepeat: 0,
  takes: counted.map(() => 0),
});

/**
 * A stock that no choice can use up says nothing, and is left out: most
 * searches are quicker without.
 * @param left what is left of each counted component for this strand.
 * @param links of the chain that closes it, as far as a fit may count on them.
 */
export function fitProblem(strand: Strand, left: ReadonlyMap<string, number>, links = 0): FitProblem {
  const taken = strand.sections.map((section) => takenByRepeat(strand, section));
  const largest = mostCounts(strand);
  const mostTaken = (id: string): number =>
    taken.reduce((sum, each, at) => sum + (each.get(id) ?? 0) * largest[at]!, 0);
  // What the findings already take too many of rules out every choice here too.
  const counted = [...left].filter(([id, over]) => mostTaken(id) > over).map(([id]) => id);
  const sections = strand.sections.map((section, index): FitSection => {
    const of = taken[index] ?? new Map<string, number>();
    const [fewest, most] = makersLimits(section);
    return {
      id: section.id,
      usual: section.usual,
      fewest,
      most,
      cost: section.cost ?? costByPlace(strand, index),
      partsPerRepeat: [...of.values()].reduce((sum, count) => sum + count, 0),
      takes: counted.map((id) => of.get(id) ?? 0),
    };
  });
  if (links > 0) sections.push(chainSection(links, counted));
  return { sections, stock: counted.map((component) => ({ component, left: left.get(component) ?? 0 })) };
}

/** The fewest of every section, as counts. */
export function fewestCounts(strand: Strand): number[] {
  return strand.sections.map((section) => makersLimits(section)[0]);
}

/** The most of every section, as counts. */
export function mostCounts(strand: Strand): number[] {
  return strand.sections.map((section) => makersLimits(section)[1]);
}
