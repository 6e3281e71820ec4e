/** Everything that sizing a piece comes back to, worked out once. */
import { tallyFindings, tallyStrand } from '../design/tally.ts';
import { girthMeasure } from '../solver/girth.ts';
import { lengthMeasure, type Measure } from '../solver/measure.ts';
import { fewestCounts, fitProblem, stockLeft, type FitProblem } from '../solver/problem.ts';
import type { Search } from '../solver/questions.ts';
import type { Limits } from '../solver/stretches.ts';
import { searchOf } from '../solver/search.ts';
import type { Counts, Design } from '../design/design.ts';
import { nestingOf, type Nesting } from './nest.ts';
import type { Rules } from '../design/rules.ts';
import { fittedOf, type Fitted } from './target.ts';

/** One strand's problem, and everything that may be asked about it. */
export type StrandJob = {
  readonly problem: FitProblem;
  readonly measure: Measure;
  readonly search: Search;
};

export type Job = {
  readonly design: Design;
  readonly fitted: Fitted;
  readonly toleranceMm: number;
  /** Pieces that the stock is shared out over. */
  readonly pieces: number;
  /** One strand, out of the stock that the findings, the strands chosen so far and the fewest of the others leave. */
  readonly strand: (index: number, chosen: Counts) => StrandJob;
  readonly nesting: Nesting;
};

/** What the findings and the other strands take: those already `chosen` as they are, the rest at their fewest. */
function takenElsewhere(design: Design, strand: number, chosen: Counts): Map<string, number> {
  const taken = new Map(tallyFindings(design));
  design.strands.forEach((other, at) => {
    if (at === strand) return;
    for (const [id, count] of tallyStrand(other, chosen[at] ?? fewestCounts(other))) {
      taken.set(id, (taken.get(id) ?? 0) + count);
    }
  });
  return taken;
}

/**
 * A strand's measure. It remembers what it has measured, and doesn't hang on the stock.
 * @param limits what counts may be asked about; the maker's where it isn't given.
 */
export function measureOf(design: Design, strand: number, fitted: Fitted, limits?: Limits): Measure {
  const chainMm = wholeChainMm(design);
  return fitted === 'length'
    ? lengthMeasure(design, strand, chainMm)
    : girthMeasure(design, strand, chainMm, limits);
}

/**
 * The extender as far as a fit may count on it, mm. On several strands it is left
 * to the wearer: let out, it would lengthen all of them alike.
 */
export function wholeChainMm(design: Design): number {
  return design.strands.length === 1 ? design.ends.extenderMm : 0;
}

/** Strands as they are asked for; the same stock left gives the same one again, with all that it has found out. */
function strandJobs(design: Design, fitted: Fitted, pieces: number): Job['strand'] {
  const measures = design.strands.map((_, index) => measureOf(design, index, fitted));
  const known = new Map<string, StrandJob>();
  return (index, chosen) => {
    const left = stockLeft(design, takenElsewhere(design, index, chosen), pieces);
    const problem = fitProblem(design.strands[index]!, left);
    const key = JSON.stringify([index, problem.stock]);
    const found = known.get(key);
    if (found !== undefined) return found;
    const measure = measures[index]!;
    const made = { problem, measure, search: searchOf(problem, measure) };
    known.set(key, made);
    return made;
  };
}

export function jobOf(design: Design, rules: Rules, pieces: number): Job {
  const fitted = fittedOf(design.kind);
  return {
    design,
    fitted,
    toleranceMm: rules.toleranceMm[design.kind],
    pieces,
    strand: strandJobs(design, fitted, pieces),
    nesting: nestingOf(design),
  };
}
