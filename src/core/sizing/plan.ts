/** What a piece becomes for a target: a choice for every strand. */
import { linksToFit } from '../design/chain.ts';
import type { Counts } from '../design/design.ts';
import { fitJointly } from '../solver/fit.ts';
import { offNm, toMm, toNm, type Outcome } from '../solver/outcome.ts';
import { chainUsedMm } from './chain.ts';
import type { Job } from './job.ts';

/** One choice for the whole piece. */
export type PiecePlan = {
  readonly counts: Counts;
  /** By strand. */
  readonly outcomes: readonly Outcome[];
  readonly chainUsedMm: number;
  /** How far off the strand is that is furthest off, signed. */
  readonly worstMm: number;
  /** True where every strand is within tolerance. */
  readonly within: boolean;
};

export type Plan =
  | { readonly status: 'fits'; readonly best: PiecePlan }
  | {
      readonly status: 'near';
      readonly best: PiecePlan;
      readonly below: PiecePlan;
      readonly above: PiecePlan;
    }
  | { readonly status: 'outside'; readonly side: 'below' | 'above'; readonly best: PiecePlan };

/** What each strand is fitted to for a target of the first one, mm. */
export function strandTargets({ design, nesting }: Job, targetMm: number): number[] {
  return design.strands.map((_, strand) => nesting.targetMm(strand, targetMm));
}

function piecePlan(job: Job, targetsMm: readonly number[], outcomes: readonly Outcome[]): PiecePlan {
  const { design, fitted } = job;
  let worstNm = 0;
  let usedMm = 0;
  outcomes.forEach(({ counts, span }, strand) => {
    const off = offNm(span, toNm(targetsMm[strand]!));
    if (Math.abs(off) > Math.abs(worstNm)) worstNm = off;
    usedMm =
      linksToFit(design) > 0
        ? counts.at(-1)! * design.ends.linkMm!
        : chainUsedMm(design, strand, counts, span, fitted, targetsMm[strand]!);
  });
  return {
    // The links of the chain, counted last, are none of the piece's sections.
    counts: outcomes.map(({ counts }, strand) => counts.slice(0, design.strands[strand]!.sections.length)),
    outcomes,
    chainUsedMm: usedMm,
    worstMm: toMm(worstNm),
    within: outcomes.every(({ excess }) => excess === 0),
  };
}

/**
 * Fits all strands of a piece, out of one stock.
 * @returns null where the stock doesn't reach for any piece.
 * @throws SearchLimit
 */
export function planPiece(job: Job, targetMm: number): Plan | null {
  const targetsMm = strandTargets(job, targetMm);
  const toleranceNm = toNm(job.toleranceMm);
  const fit = fitJointly(
    job.joint,
    targetsMm.map((mm) => ({ targetNm: toNm(mm), toleranceNm })),
  );
  if (fit === null) return null;
  const made = (outcomes: readonly Outcome[]): PiecePlan => piecePlan(job, targetsMm, outcomes);
  const best = made(fit.best);
  if (fit.status !== 'near') return { ...fit, best };
  return { ...fit, best, below: made(fit.below), above: made(fit.above) };
}
