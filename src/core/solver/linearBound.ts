/**
 * How far the measures of a box of choices can lie apart where the measure is a
 * plain sum: the bound of a linear relaxation. Counts may be fractions there, and
 * one constraint at a time holds, the cost budget or one counted component; the
 * extreme then comes greedily, by what a section gains for what it takes (Dantzig's
 * bound of the knapsack problem).
 */
import type { Box } from './box.ts';
import type { Span } from './outcome.ts';
import type { FitProblem } from './problem.ts';

/** No choice in the box within the cost budget and the stock measures less than `lowNm` or more than `highNm`. */
export type LinearBound = (box: Box, budget: number) => Span;

/** One constraint: what a step of each section takes, and the sections in the order of what they gain for it. */
type Constraint = { readonly takes: readonly number[]; readonly order: readonly number[] };

function constraint(gainsNm: readonly number[], takes: readonly number[]): Constraint {
  // Cross-multiplied, so that what takes nothing comes first.
  const order = [...takes.keys()].sort(
    (one, other) => gainsNm[other]! * takes[one]! - gainsNm[one]! * takes[other]!,
  );
  return { takes, order };
}

/** The most that steps can gain, up to `most` of each section, while what they take stays within `spare`. */
function greedyNm(
  { takes, order }: Constraint,
  gainsNm: readonly number[],
  most: (section: number) => number,
  spare: number,
): number {
  let gain = 0;
  let left = spare;
  for (const section of order) {
    const each = takes[section]!;
    const steps = each > 0 ? Math.min(most(section), left / each) : most(section);
    gain += steps * gainsNm[section]!;
    left -= steps * each;
  }
  return gain;
}

/**
 * @param eachNm what one repeat of each section adds; never below 0.
 * @param spanOf what the choice of given counts measures.
 */
export function linearBound(
  { sections, stock }: FitProblem,
  eachNm: readonly number[],
  spanOf: (counts: readonly number[]) => Span,
): LinearBound {
  const change = constraint(
    eachNm,
    sections.map(({ cost }) => cost),
  );
  const counted = stock.map(({ left }, which) => ({
    left,
    ...constraint(
      eachNm,
      sections.map(({ takes }) => takes[which]!),
    ),
  }));
  return ({ low, high }, budget) => {
    // The cheapest choice of the box; every step away from it costs.
    const cheapest = sections.map(({ usual }, at) => Math.min(Math.max(usual, low[at]!), high[at]!));
    const spent = sections.reduce(
      (sum, { usual, cost }, at) => sum + cost * Math.abs(cheapest[at]! - usual),
      0,
    );
    const span = spanOf(cheapest);
    const up = greedyNm(change, eachNm, (at) => high[at]! - cheapest[at]!, budget - spent);
    const down = greedyNm(change, eachNm, (at) => cheapest[at]! - low[at]!, budget - spent);
    let highNm = span.highNm + up;
    if (counted.length > 0) {
      const lowHighNm = spanOf(low).highNm;
      for (const each of counted) {
        const spare = each.takes.reduce((sum, takes, at) => sum - takes * low[at]!, each.left);
        const more = greedyNm(each, eachNm, (at) => high[at]! - low[at]!, spare);
        highNm = Math.min(highNm, lowHighNm + more);
      }
    }
    return { lowNm: Math.floor(span.lowNm - down), highNm: Math.ceil(highNm) };
  };
}
