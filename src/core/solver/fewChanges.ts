/**
 * Finds the best piece within tolerance where little needs to change, by
 * iterative deepening on what the change costs: every choice of one cost is
 * looked at before any that costs more, so the first level with an answer
 * holds the optimum. For plain sums and without stock.
 */
import {
  compareOutcomes,
  HUNDREDTH_NM,
  evaluate,
  toHundredths,
  type Outcome,
  type Span,
  type Wanted,
} from './outcome.ts';
import type { FitProblem, FitSection } from './problem.ts';

/** Choices looked at before it gives up: some milliseconds, about what branch and bound takes then. */
const MOST_NODES = 30_000;

type Line = {
  /** Place in the problem. */
  readonly at: number;
  readonly section: FitSection;
  readonly eachNm: number;
};

/** `given-up`: nothing is claimed. `none`: no choice at all is within tolerance. */
export type FewChanges = Outcome | 'given-up' | 'none';

/** Sections that may change, those that move the length most for their cost first. */
function linesOf(problem: FitProblem, eachNm: readonly number[]): Line[] {
  return problem.sections
    .map((section, at): Line => ({ at, section, eachNm: eachNm[at] ?? 0 }))
    .filter(({ section }) => section.most > section.fewest)
    .sort((one, other) => other.eachNm / other.section.cost - one.eachNm / one.section.cost);
}

/**
 * @param eachNm what one repeat of each section adds.
 * @param spanOf what the choice of given counts measures.
 */
export function fewChanges(
  problem: FitProblem,
  eachNm: readonly number[],
  spanOf: (counts: readonly number[]) => Span,
  wanted: Wanted,
): FewChanges {
  const lines = linesOf(problem, eachNm);
  if (
    problem.stock.length > 0 ||
    lines.some(({ section: { cost } }) => !(cost > 0 && Number.isInteger(cost)))
  )
    return 'given-up';
  const counts = problem.sections.map((section) => section.usual);
  const usualSpan = spanOf(counts);
  const reach = (toHundredths(wanted.toleranceNm) + 0.5) * HUNDREDTH_NM;
  const dearest = lines.reduce(
    (sum, { section: { cost, usual, fewest, most } }) => sum + cost * Math.max(usual - fewest, most - usual),
    0,
  );
  let best: Outcome | null = null;
  let nodes = 0;
  const take = (movedNm: number): void => {
    const span = { lowNm: usualSpan.lowNm + movedNm, highNm: usualSpan.highNm + movedNm };
    const outcome = evaluate(problem, wanted, [...counts], span);
    if (outcome.excess === 0 && (best === null || compareOutcomes(problem, outcome, best) < 0))
      best = outcome;
  };
  /** Tries every change of the lines from `index` on that costs exactly `budget`. */
  const deepen = (index: number, budget: number, movedNm: number): void => {
    nodes += 1;
    if (nodes > MOST_NODES) return;
    if (budget === 0) {
      take(movedNm);
      return;
    }
    // What the last line leaves of the budget is nothing, so there is a line here.
    const { section, eachNm: each, at } = lines[index]!;
    // The lines are sorted, so none from here on moves the length further for its cost.
    const mostMoved = (budget * each) / section.cost;
    if (usualSpan.highNm + movedNm + mostMoved < wanted.targetNm - reach) return;
    if (usualSpan.lowNm + movedNm - mostMoved > wanted.targetNm + reach) return;
    const last = index === lines.length - 1;
    const mostSteps = Math.floor(budget / section.cost);
    if (last && mostSteps * section.cost !== budget) return;
    for (let steps = last ? mostSteps : 0; steps <= mostSteps; steps += 1) {
      for (const way of steps === 0 ? [0] : [1, -1]) {
        const count = section.usual + way * steps;
        if (count < section.fewest || count > section.most) continue;
        counts[at] = count;
        deepen(index + 1, budget - steps * section.cost, movedNm + way * steps * each);
      }
    }
    counts[at] = section.usual;
  };
  for (let budget = 0; budget <= dearest; budget += 1) {
    deepen(0, budget, 0);
    if (nodes > MOST_NODES) return 'given-up';
    if (best !== null) return best;
  }
  return 'none';
}
