/** From a finished piece and a ruler back to its counts. */
import { mixesZero, split, type Box } from './box.ts';
import type { Measure } from './measure.ts';
import { offNm, toMm, toNm } from './outcome.ts';
import { MOST_BOXES } from './boxSearch.ts';
import { SearchLimit } from './searchLimit.ts';

/** How often one section's motif was counted, say on a photograph, and how far wrong that may be. */
export type CountEstimate = {
  readonly count: number;
  /** Standard deviation of the counting; 0 where it is sure. */
  readonly sd: number;
};

/** One set of counts that explains what was measured. */
export type Explanation = {
  readonly counts: readonly number[];
  /** What these counts measure. */
  readonly measuresMm: number;
  /** Signed: what the ruler said falls short of it by this. */
  readonly offMm: number;
  /** Its share of all explanations told, so that they add to 1. */
  readonly share: number;
};

export type Evidence = {
  readonly measuredMm: number;
  /** Standard deviation of the measuring: half a millimetre along a ruler, more round a wrist. */
  readonly rulerSdMm: number;
  /** One for each section. */
  readonly estimates: readonly CountEstimate[];
};

/** Counts are looked for this many standard deviations either side: all but one in 15,000 lie within. */
const REACH_SDS = 4;
/** A ruler is never better than this, mm. */
const LEAST_RULER_SD_MM = 0.05;

/** Squared distance from what was counted, in standard deviations; a sum over sections. */
function countMisfit(
  estimates: readonly CountEstimate[],
  count: (index: number, counted: number) => number,
): number {
  return estimates.reduce((sum, { count: counted, sd }, index) => {
    return sum + ((count(index, counted) - counted) / Math.max(sd, 1e-9)) ** 2;
  }, 0);
}

function boxOf(estimates: readonly CountEstimate[]): Box {
  const reach = (sd: number): number => Math.ceil(REACH_SDS * Math.max(0, sd));
  return {
    low: estimates.map(({ count, sd }) => Math.max(0, count - reach(sd))),
    high: estimates.map(({ count, sd }) => count + reach(sd)),
  };
}

type Candidate = { readonly counts: readonly number[]; readonly misfit: number; readonly off: number };

/**
 * The likeliest counts for a measured length or girth, best first: the errors
 * of ruler and counting are taken as normal and independent, so the likeliest
 * have the least sum of squared misfits. Candidate exactly, by branch and bound.
 * @param most explanations wanted at the most, one or more.
 * @throws SearchLimit where the counting is so loose that the search would not end.
 */
export function explain(measure: Measure, evidence: Evidence, most: number): Explanation[] {
  const { estimates } = evidence;
  const rulerSd = Math.max(LEAST_RULER_SD_MM, evidence.rulerSdMm);
  const target = toNm(evidence.measuredMm);
  const found: Candidate[] = [];
  let boxes = 0;
  const worst = (): number => (found.length < most ? Infinity : found.at(-1)!.misfit);
  const rulerMisfit = (nm: number): number => (toMm(Math.abs(nm)) / rulerSd) ** 2;
  /** Least misfit that any choice of the box can have. */
  const bound = (box: Box): number => {
    const counting = countMisfit(estimates, (index, counted) =>
      Math.min(Math.max(counted, box.low[index]!), box.high[index]!),
    );
    if (counting >= worst() || (measure.zeroApart && mixesZero(box))) return counting;
    const reach = { lowNm: measure.least(box.low).lowNm, highNm: measure.most(box.high).highNm };
    return counting + rulerMisfit(offNm(reach, target));
  };
  const keep = (counts: readonly number[]): void => {
    const off = offNm(measure.of(counts), target);
    const misfit = countMisfit(estimates, (index) => counts[index]!) + rulerMisfit(off);
    if (misfit >= worst()) return;
    found.push({ counts, misfit, off });
    found.sort((one, other) => one.misfit - other.misfit);
    if (found.length > most) found.pop();
  };
  const visit = (box: Box): void => {
    boxes += 1;
    if (boxes > MOST_BOXES) throw new SearchLimit();
    if (bound(box) >= worst()) return;
    const parted = split(box, measure.zeroApart);
    if (parted === null) {
      keep(box.low);
      return;
    }
    const [one, other] = parted;
    for (const half of bound(one) <= bound(other) ? [one, other] : [other, one]) visit(half);
  };
  visit(boxOf(estimates));
  const weights = found.map(({ misfit }) => Math.exp((found[0]!.misfit - misfit) / 2));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return found.map(({ counts, off }, index) => ({
    counts,
    measuresMm: evidence.measuredMm + toMm(off),
    offMm: toMm(off),
    share: weights[index]! / whole,
  }));
}
