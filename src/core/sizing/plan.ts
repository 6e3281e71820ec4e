/** Fits every strand of a piece, one after the other, out of one stock. */
import { fitStrand, strandLimits, type StrandFit } from '../solver/fit.ts';
import { offNm, toMm, toNm, type Outcome } from '../solver/outcome.ts';
import type { Counts } from '../design/design.ts';
import { chainUsedMm } from './chain.ts';
import type { Pick } from '../design/choice.ts';
import type { Job, StrandJob } from './job.ts';

/** One strand as planned: what it was asked, out of what, and what came of it. */
type StrandPlan = {
  readonly job: StrandJob;
  readonly targetMm: number;
  readonly fit: StrandFit;
};

export type Plan = {
  readonly counts: Counts;
  readonly strands: readonly StrandPlan[];
  readonly chainUsedMm: number;
  /** How far off the strand is that is furthest off, signed. */
  readonly worstMm: number;
};

/** The strand's piece for a pick; null where there is none on that side. */
function picked(fit: StrandFit, pick: Pick): Outcome | null {
  if (fit.status === 'fits') return fit.best;
  if (fit.status === 'outside') return pick === fit.side ? null : fit.nearest;
  return fit[pick];
}

/**
 * Strand after strand: each takes its optimum out of the stock that the ones
 * before leave and the ones after need at their fewest. So none is left without
 * where the stock reaches for the smallest piece, as `reachOf` makes sure.
 * @returns null where a strand has no piece on the side that `pick` names.
 * @throws TooLarge
 */
export function planStrands(job: Job, targetMm: number, pick: Pick): Plan | null {
  const { design, fitted, toleranceMm, nesting } = job;
  const counts: (readonly number[])[] = [];
  const strands: StrandPlan[] = [];
  let usedMm = 0;
  let worstNm = 0;
  for (const strand of design.strands.keys()) {
    const planned = job.strand(strand, counts);
    const limits = strandLimits(planned.search)!;
    const strandMm = nesting.targetMm(strand, targetMm);
    const wanted = { targetNm: toNm(strandMm), toleranceNm: toNm(toleranceMm) };
    const fit = fitStrand(planned.problem, planned.search, wanted, limits);
    const outcome = picked(fit, pick);
    if (outcome === null) return null;
    counts.push(outcome.counts);
    strands.push({ job: planned, targetMm: strandMm, fit });
    const off = offNm(outcome.span, wanted.targetNm);
    if (Math.abs(off) > Math.abs(worstNm)) worstNm = off;
    usedMm = chainUsedMm(design, strand, outcome.counts, outcome.span, fitted, strandMm);
  }
  return { counts, strands, chainUsedMm: usedMm, worstMm: toMm(worstNm) };
}
