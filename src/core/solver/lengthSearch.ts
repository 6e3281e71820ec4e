/** Finds the best piece of a wanted length in a table of all lengths. Exact, stock and all. */
import { boxSearch } from './boxSearch.ts';
import { fewChanges } from './fewChanges.ts';
import { lengthTable, weightOf, type LengthTable } from './lengthTable.ts';
import type { Measure } from './measure.ts';
import {
  compareNearest,
  compareOutcomes,
  HUNDREDTH_NM,
  judge,
  offNm,
  toHundredths,
  type Outcome,
  type Span,
  type Wanted,
} from './outcome.ts';
import type { FitProblem, FitSection } from './problem.ts';
import type { Search } from './questions.ts';
import { TooLarge } from './tooLarge.ts';

/** Counts tried for one question where the stock rules some out; a design made to need more is refused. */
const MOST_TRIED = 2_000_000;

type Spend = { tried: number };

type Lengths = {
  readonly table: LengthTable;
  /** Of each section its counts, those nearest to its usual one first, the fewer of two alike. */
  readonly orders: readonly (readonly number[])[];
  /** What the fewest of everything measures, the extender closed and let out. */
  readonly fewest: Span;
};

function spanAt({ table, fewest }: Lengths, step: number): Span {
  const nm = step * table.stepNm;
  return { lowNm: fewest.lowNm + nm, highNm: fewest.highNm + nm };
}

function byPreference({ fewest, most, usual }: FitSection): number[] {
  const counts = Array.from({ length: most - fewest + 1 }, (_, at) => fewest + at);
  return counts.sort((one, other) => Math.abs(one - usual) - Math.abs(other - usual) || one - other);
}

/**
 * The preferred counts that add up to a step and that the stock allows: the
 * table's least bound what is still to come, so that without stock the first
 * way down is the answer.
 */
function countsAt(
  problem: FitProblem,
  { table, orders }: Lengths,
  step: number,
  spent: Spend,
): number[] | null {
  const { sections, stock } = problem;
  const counts = new Array<number>(sections.length).fill(0);
  let best: number[] | null = null;
  let bestWeight = Infinity;
  const outOf = (at: number, rest: number, left: readonly number[]): boolean =>
    left.some((have, which) => have < (table.fewestTaken[which]?.[at]![rest] ?? 0));
  const down = (at: number, rest: number, weight: number, left: readonly number[]): void => {
    const section = sections[at];
    if (section === undefined) {
      best = [...counts];
      bestWeight = weight;
      return;
    }
    for (const count of orders[at]!) {
      spent.tried += 1;
      if (spent.tried > MOST_TRIED) throw new TooLarge();
      const after = rest - (count - section.fewest) * table.eachSteps[at]!;
      if (after < 0) continue;
      const here =
        weight + weightOf(section.cost * Math.abs(count - section.usual), section.partsPerRepeat * count);
      if (here + table.least[at + 1]![after]! >= bestWeight) continue;
      const now = left.map((have, which) => have - (section.takes[which] ?? 0) * count);
      if (outOf(at + 1, after, now)) continue;
      counts[at] = count;
      down(at + 1, after, here, now);
    }
  };
  down(
    0,
    step,
    0,
    stock.map(({ left }) => left),
  );
  return best;
}

/** One reachable length as a bid: no piece of it can be better than this. */
type Bid = { readonly step: number; readonly error: number; readonly weight: number };

/** Takes bids in order of their promise until none left can beat what is found. */
function settle(
  problem: FitProblem,
  lengths: Lengths,
  wanted: Wanted,
  bids: readonly Bid[],
  spent: Spend,
  compare: typeof compareOutcomes,
  beaten: (bid: Bid, best: Outcome) => boolean,
): Outcome | null {
  let best: Outcome | null = null;
  for (const bid of bids) {
    if (best !== null && beaten(bid, best)) break;
    const counts = countsAt(problem, lengths, bid.step, spent);
    if (counts === null) continue;
    const outcome = judge(problem, wanted, counts, spanAt(lengths, bid.step));
    if (best === null || compare(problem, outcome, best) < 0) best = outcome;
  }
  return best;
}

const weightOfOutcome = (outcome: Outcome): number => weightOf(outcome.cost, 0);

/** The best piece within tolerance by the order of preference, or null. */
function withinByTable(problem: FitProblem, lengths: Lengths, wanted: Wanted): Outcome | null {
  const { table, fewest } = lengths;
  const tolerance = toHundredths(wanted.toleranceNm);
  const reach = (tolerance + 1) * HUNDREDTH_NM;
  const first = Math.max(0, Math.ceil((wanted.targetNm - reach - fewest.highNm) / table.stepNm));
  const last = Math.min(table.steps, Math.floor((wanted.targetNm + reach - fewest.lowNm) / table.stepNm));
  const bids: Bid[] = [];
  for (let step = first; step <= last; step += 1) {
    const weight = table.least[0]![step]!;
    const error = toHundredths(Math.abs(offNm(spanAt(lengths, step), wanted.targetNm)));
    if (weight < Infinity && error <= tolerance) bids.push({ step, error, weight });
  }
  bids.sort((one, other) => one.weight - other.weight);
  return settle(problem, lengths, wanted, bids, { tried: 0 }, compareOutcomes, (bid, best) => {
    return bid.weight >= weightOfOutcome(best) + weightOf(1, 0);
  });
}

/** The nearest piece on one side of the target, or null. */
function nearestByTable(
  problem: FitProblem,
  lengths: Lengths,
  targetNm: number,
  side: 'below' | 'above',
): Outcome | null {
  const { table, fewest } = lengths;
  const wanted: Wanted = { targetNm, toleranceNm: 0 };
  const below = side === 'below';
  const from = below
    ? Math.min(table.steps, Math.floor((targetNm - fewest.highNm) / table.stepNm))
    : Math.max(0, Math.ceil((targetNm - fewest.lowNm) / table.stepNm));
  const onward = below ? -1 : 1;
  const spent: Spend = { tried: 0 };
  let best: Outcome | null = null;
  for (let step = from; step >= 0 && step <= table.steps; step += onward) {
    const weight = table.least[0]![step]!;
    if (!(weight < Infinity)) continue;
    const error = toHundredths(Math.abs(offNm(spanAt(lengths, step), targetNm)));
    if (best !== null && error > (best as Outcome).error) break;
    const found = settle(
      problem,
      lengths,
      wanted,
      [{ step, error, weight }],
      spent,
      compareNearest,
      () => false,
    );
    if (found !== null && (best === null || compareNearest(problem, found, best) < 0)) best = found;
  }
  return best;
}

/** The largest length between two ends that a piece has. */
function betweenByTable(problem: FitProblem, lengths: Lengths, fromNm: number, toNm: number): Outcome | null {
  const { table, fewest } = lengths;
  const last = Math.min(table.steps, Math.floor((toNm - fewest.lowNm) / table.stepNm));
  const spent: Spend = { tried: 0 };
  for (let step = last; step >= 0; step -= 1) {
    const span = spanAt(lengths, step);
    if (span.highNm < fromNm) return null;
    if (table.least[0]![step] === Infinity) continue;
    const counts = countsAt(problem, lengths, step, spent);
    if (counts !== null) return judge(problem, { targetNm: toNm, toleranceNm: 0 }, counts, span);
  }
  return null;
}

/** The smallest or largest of all, where that is what is asked for and the stock has no say. */
function extreme(
  problem: FitProblem,
  measure: Measure,
  eachNm: readonly number[],
  targetNm: number,
  side: 'below' | 'above',
): Outcome | null {
  if (problem.stock.length > 0) return null;
  const end = side === 'below' ? 'most' : 'fewest';
  const counts = problem.sections.map((section) => section[end]);
  // Nothing else can measure alike, unless a section is shorter than what lengths are told apart by.
  if (problem.sections.some(({ fewest, most }, at) => most > fewest && !(eachNm[at]! > HUNDREDTH_NM)))
    return null;
  const span = measure.of(counts);
  const beyond = side === 'below' ? span.highNm <= targetNm : span.lowNm >= targetNm;
  return beyond ? judge(problem, { targetNm, toleranceNm: 0 }, counts, span) : null;
}

/** The slower way, made only when it is needed: a table, or boxes where the lengths have no common step. */
function slower(problem: FitProblem, measure: Measure, eachNm: readonly number[]): Search {
  const table = lengthTable(problem, eachNm);
  if (table === null) return boxSearch(problem, measure);
  const fewest = measure.of(problem.sections.map((section) => section.fewest));
  const lengths: Lengths = { table, orders: problem.sections.map(byPreference), fewest };
  return {
    within: (wanted) => withinByTable(problem, lengths, wanted),
    nearest: (targetNm, side) => nearestByTable(problem, lengths, targetNm, side),
    between: (fromNm, toNm) => betweenByTable(problem, lengths, fromNm, toNm),
  };
}

/** The search for plain sums: what is near the usual piece is found at once, the rest in a table of all lengths. */
export function lengthSearch(problem: FitProblem, measure: Measure, eachNm: readonly number[]): Search {
  let made: Search | null = null;
  const rest = (): Search => (made ??= slower(problem, measure, eachNm));
  const usualSpan = measure.of(problem.sections.map((section) => section.usual));
  return {
    within: (wanted) => {
      const found = fewChanges(problem, eachNm, usualSpan, wanted);
      if (found === 'none') return null;
      return found === 'given-up' ? rest().within(wanted) : found;
    },
    nearest: (targetNm, side) =>
      extreme(problem, measure, eachNm, targetNm, side) ?? rest().nearest(targetNm, side),
    between: (fromNm, toNm) => rest().between(fromNm, toNm),
  };
}
