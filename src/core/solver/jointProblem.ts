/** All strands of a piece with what they draw on together: the problem that a fit solves. */
import { linksToFit } from '../design/chain.ts';
import type { Design, Strand } from '../design/design.ts';
import { tallyFindings } from '../design/tally.ts';
import type { Measure } from './measure.ts';
import { fewestCounts, fitProblem, mostCounts, takenByRepeat, type FitProblem } from './problem.ts';
import type { Search } from './questions.ts';
import { searchOf } from './search.ts';

/** One strand's problem, and who answers questions about it. */
export type StrandSearch = { readonly problem: FitProblem; readonly search: Search };

export type JointStrand = {
  readonly measure: Measure;
  /** What given counts take of each shared component. */
  readonly uses: (counts: readonly number[]) => number[];
  /** What it takes of them at its fewest. */
  readonly fewestUses: readonly number[];
  /** The strand out of a share of each shared component; the same share gives the same one again. */
  readonly within: (share: readonly number[]) => StrandSearch;
};

export type JointProblem = {
  /** In the order of the design. */
  readonly strands: readonly JointStrand[];
  /** What there is of each component that strands contend for, findings taken off. Mostly there is none. */
  readonly shared: readonly number[];
};

/** What counts take of a component, both sides together. */
function usesOf(strand: Strand, component: string): (counts: readonly number[]) => number {
  const each = strand.sections.map((section) => takenByRepeat(strand, section).get(component) ?? 0);
  return (counts) => each.reduce((sum, taken, at) => sum + taken * (counts[at] ?? 0), 0);
}

/** Of each counted component, what one of `pieces` pieces leaves over for its sections once its findings are met. */
export function stockForSections(design: Design, pieces: number): ReadonlyMap<string, number> {
  const findings = tallyFindings(design);
  const left = new Map<string, number>();
  for (const [id, { stock }] of Object.entries(design.components)) {
    if (stock !== null) left.set(id, Math.floor(stock / pieces) - (findings.get(id) ?? 0));
  }
  return left;
}

/** Counted components that several strands use and that may not reach for all of them. */
function contended(design: Design, stock: ReadonlyMap<string, number>): string[] {
  return [...stock].flatMap(([id, left]) => {
    const most = design.strands.map((strand) => usesOf(strand, id)(mostCounts(strand)));
    const users = most.filter((uses) => uses > 0).length;
    return users > 1 && most.reduce((sum, uses) => sum + uses, 0) > left ? [id] : [];
  });
}

/**
 * @param pieces how many the stock is shared out over.
 * @param measureOf measures one strand.
 */
export function jointProblem(
  design: Design,
  pieces: number,
  measureOf: (strand: number) => Measure,
): JointProblem {
  const stock = stockForSections(design, pieces);
  const shared = contended(design, stock);
  const strands = design.strands.map((strand, index): JointStrand => {
    const measure = measureOf(index);
    const uses = shared.map((id) => usesOf(strand, id));
    const known = new Map<string, StrandSearch>();
    return {
      measure,
      uses: (counts) => uses.map((use) => use(counts)),
      fewestUses: uses.map((use) => use(fewestCounts(strand))),
      within: (share) => {
        const left = new Map(stock);
        shared.forEach((id, at) => left.set(id, share[at]!));
        const problem = fitProblem(strand, left, linksToFit(design));
        const key = problem.stock.map((one) => `${one.component} ${one.left}`).join();
        const made = known.get(key) ?? { problem, search: searchOf(problem, measure) };
        known.set(key, made);
        return made;
      },
    };
  });
  return { strands, shared: shared.map((id) => stock.get(id)!) };
}

/** The joint problem of one strand, for a problem that is there already. */
export function loneStrand(problem: FitProblem, measure: Measure): JointProblem {
  const search = searchOf(problem, measure);
  const strand = { measure, uses: () => [], fewestUses: [], within: () => ({ problem, search }) };
  return { strands: [strand], shared: [] };
}
