/** Everything that sizing a piece comes back to, worked out once. */
import { tallyFindings } from '../components/tally.ts';
import { girthMeasure } from '../fit/girth.ts';
import { lengthMeasure, type Chain, type Measure } from '../fit/measure.ts';
import { fewestCounts, fitProblem, stockLeft, takenByRepeat, type FitProblem } from '../fit/problem.ts';
import type { Counts, Design } from '../strand/design.ts';
import { nestingOf, type Nesting } from './nest.ts';
import type { Rules } from './rules.ts';
import { fittedOf, type Fitted } from './target.ts';

export type Job = {
  readonly design: Design;
  readonly fitted: Fitted;
  readonly toleranceMm: number;
  /** Pieces that the stock is shared out over. */
  readonly pieces: number;
  /** One for each strand. */
  readonly measures: readonly Measure[];
  readonly nesting: Nesting;
};

/** Adds what `counts` of a strand take. */
function take(design: Design, strand: number, counts: readonly number[], into: Map<string, number>): void {
  const found = design.strands[strand];
  if (found === undefined) return;
  found.sections.forEach((section, index) => {
    for (const [id, each] of takenByRepeat(found, section)) {
      into.set(id, (into.get(id) ?? 0) + each * (counts[index] ?? 0));
    }
  });
}

/** What the findings and the other strands take: those already `chosen` as they are, the rest at their fewest. */
function takenElsewhere(design: Design, strand: number, chosen: Counts): Map<string, number> {
  const taken = new Map(tallyFindings(design));
  design.strands.forEach((other, at) => {
    if (at !== strand) take(design, at, chosen[at] ?? fewestCounts(other), taken);
  });
  return taken;
}

/** A strand's measure. It remembers what it has measured, and doesn't hang on the stock. */
export function measureOf(design: Design, strand: number, fitted: Fitted): Measure {
  return (fitted === 'length' ? lengthMeasure : girthMeasure)(design, strand, wholeChain(design));
}

/** Everything that sizing a piece comes back to. */
export function jobOf(design: Design, rules: Rules, pieces: number): Job {
  const fitted = fittedOf(design.kind);
  return {
    design,
    fitted,
    toleranceMm: rules.toleranceMm[design.kind],
    pieces,
    measures: design.strands.map((_, strand) => measureOf(design, strand, fitted)),
    nesting: nestingOf(design),
  };
}

/** One strand's problem out of the stock that the others leave it. */
export function strandProblem(job: Job, strand: number, chosen: Counts): FitProblem {
  const { design, pieces } = job;
  const left = stockLeft(design, takenElsewhere(design, strand, chosen), pieces);
  return fitProblem(design.strands[strand]!, left);
}

/**
 * The extender as far as a fit may count on it. On several strands it is left
 * to the wearer: let out, it would lengthen all of them alike.
 */
export function wholeChain(design: Design): Chain {
  const { extenderMm } = design.ends;
  return { leastMm: 0, mostMm: extenderMm > 0 && design.strands.length === 1 ? extenderMm : 0 };
}
