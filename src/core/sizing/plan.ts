/** Fits every strand of a piece, one after the other, out of one stock. */
import { tallyFindings } from '../components/tally.ts';
import { fitStrand, strandLimits, type StrandFit, type StrandLimits } from '../fit/fit.ts';
import { girthMeasure } from '../fit/girth.ts';
import { lengthMeasure, type Chain, type Measure } from '../fit/measure.ts';
import { offNm, toMm, toNm, type Outcome } from '../fit/outcome.ts';
import { fewestCounts, fitProblem, stockLeft, takenByRepeat, type FitProblem } from '../fit/problem.ts';
import type { Counts, Design } from '../strand/design.ts';
import type { Pick } from './choice.ts';
import { chainUsedMm } from './chain.ts';
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

/**
 * The measures of all strands. Made once for a piece: they remember what they
 * have measured, and don't hang on the stock.
 */
function measuresOf(design: Design, fitted: Fitted): Measure[] {
  const chain = wholeChain(design);
  const measureOf = fitted === 'length' ? lengthMeasure : girthMeasure;
  return design.strands.map((_, strand) => measureOf(design, strand, chain));
}

/** Everything that sizing a piece comes back to. */
export function jobOf(design: Design, rules: Rules, pieces: number): Job {
  const fitted = fittedOf(design.kind);
  return {
    design,
    fitted,
    toleranceMm: rules.toleranceMm[design.kind],
    pieces,
    measures: measuresOf(design, fitted),
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

/** Limits of every strand, each with the others at their fewest; null where the stock doesn't reach. */
export function allLimits(job: Job): StrandLimits[] | null {
  const limits = job.measures.map((measure, strand) => strandLimits(strandProblem(job, strand, []), measure));
  return limits.every((limit) => limit !== null) ? limits : null;
}

export type Plan = {
  readonly counts: Counts;
  readonly fits: readonly StrandFit[];
  readonly chainUsedMm: number;
  /** Of the strand that is furthest off, signed. */
  readonly errorMm: number;
};

/** The strand's piece for a pick; null where there is none on that side. */
function picked(fit: StrandFit, pick: Pick): Outcome | null {
  if (fit.status === 'fits') return fit.best;
  if (fit.status === 'outside') return pick === 'best' || pick !== fit.side ? fit.nearest : null;
  return pick === 'best' ? fit.best : fit[pick];
}

/**
 * Strand after strand: each takes its optimum out of the stock that the ones
 * before leave and the ones after need at their fewest.
 * @returns null where a strand has no piece on the side that `pick` names.
 * @throws TooLarge
 */
export function planStrands(job: Job, targetMm: number, pick: Pick): Plan | null {
  const { design, fitted, toleranceMm, measures, nesting } = job;
  const counts: (readonly number[])[] = [];
  const fits: StrandFit[] = [];
  let usedMm = 0;
  let worstNm = 0;
  for (const [strand, measure] of measures.entries()) {
    const problem = strandProblem(job, strand, counts);
    const limits = strandLimits(problem, measure);
    if (limits === null) return null;
    const strandMm = nesting.targetMm(strand, targetMm);
    const wanted = { targetNm: toNm(strandMm), toleranceNm: toNm(toleranceMm) };
    const fit = fitStrand(problem, measure, wanted, limits);
    const outcome = picked(fit, pick);
    if (outcome === null) return null;
    counts.push(outcome.counts);
    fits.push(fit);
    const off = offNm(outcome.span, wanted.targetNm);
    if (Math.abs(off) > Math.abs(worstNm)) worstNm = off;
    if (wholeChain(design).mostMm > 0) {
      usedMm = chainUsedMm(design, strand, outcome.counts, outcome.span, fitted, strandMm);
    }
  }
  return { counts, fits, chainUsedMm: usedMm, errorMm: toMm(worstNm) };
}
