/**
 * Every length that the sections of a strand can add up to, with the least
 * change that reaches it: a bounded knapsack, filled section by section from
 * the last to the first with sliding-window minima. Lengths are counted in
 * steps of their greatest common divisor, from the fewest of every section.
 */
import type { FitProblem, FitSection } from './problem.ts';

/** Entries of a table at the most: beyond that it costs more than it saves. */
const MOST_ENTRIES = 3_000_000;
/** Parts are kept below the cost in one number; more than any strand has. */
const PARTS_UNIT = 8192;
/** Sums stay whole numbers below this. */
const EXACT = 2 ** 52;

export type LengthTable = {
  /** Millionths of a millimetre of one step. */
  readonly stepNm: number;
  /** Steps from the fewest of everything to the most. */
  readonly steps: number;
  /** Steps of one repeat, by section. */
  readonly eachSteps: readonly number[];
  /**
   * `least[k][s]`: least weight of sections k and after that take s steps
   * between them, Infinity where none do. The first holds whole strands.
   */
  readonly least: readonly Float64Array[];
  /**
   * The same of each counted component, by its place in `FitProblem.stock`:
   * `fewestTaken[c][k][s]` is the fewest of it that sections k and after take
   * for s steps. Only for as many components as there is room for.
   */
  readonly fewestTaken: readonly (readonly Float64Array[])[];
};

/** Weight of a choice: its cost first, then its parts. */
export function weightOf(cost: number, parts: number): number {
  return cost * PARTS_UNIT + parts;
}

function divisor(a: number, b: number): number {
  while (b > 0) [a, b] = [b, a % b];
  return a;
}

/**
 * Minimum over a window that slides along one residue class: afterwards
 * `to[s]` is at most `from[s − n·each] + n·slope + base` for every n from
 * `first` to `last`.
 */
function slide(
  from: Float64Array,
  to: Float64Array,
  each: number,
  first: number,
  last: number,
  slope: number,
  base: number,
  queue: Int32Array,
): void {
  for (let residue = 0; residue < each; residue += 1) {
    let head = 0;
    let tail = 0;
    const stops = Math.ceil((to.length - residue) / each);
    for (let stop = first; stop < stops; stop += 1) {
      const entering = stop - first;
      const value = from[residue + entering * each]! - slope * entering;
      if (value < Infinity) {
        while (tail > head) {
          const back = queue[tail - 1]!;
          if (from[residue + back * each]! - slope * back < value) break;
          tail -= 1;
        }
        queue[tail] = entering;
        tail += 1;
      }
      while (tail > head && queue[head]! < stop - last) head += 1;
      if (tail > head) {
        const best = queue[head]!;
        const found = from[residue + best * each]! + slope * (stop - best) + base;
        const place = residue + stop * each;
        if (found < to[place]!) to[place] = found;
      }
    }
  }
}

/** Steps of one repeat of each section that may change; 0 where it may not. Null where one may change and takes no length. */
function stepsOf(
  problem: FitProblem,
  eachNm: readonly number[],
): { stepNm: number; eachSteps: number[] } | null {
  const changing = problem.sections.map(({ fewest, most }) => most > fewest);
  if (changing.some((may, at) => may && !(eachNm[at]! > 0))) return null;
  const common = eachNm.reduce((step, each, at) => (changing[at] === true ? divisor(each, step) : step), 0);
  // Where nothing may change there is one length only, and any step will do.
  const stepNm = Math.max(1, common);
  return { stepNm, eachSteps: eachNm.map((each, at) => (changing[at] === true ? each / stepNm : 0)) };
}

/** A section's part in what is kept least: what its usual count has, what a repeat adds, and what one away from usual does. */
type Share = { readonly perRepeat: number; readonly perChange: number };

/** The table of one section and those after it, from the table of those after it. */
function addSection(
  { fewest, most, usual }: FitSection,
  { perRepeat, perChange }: Share,
  each: number,
  after: Float64Array,
  queue: Int32Array,
): Float64Array {
  const kept = usual - fewest;
  const own = perRepeat * fewest;
  // What may not change stands at its usual count.
  if (each === 0) return after.map((value) => value + own);
  const here = new Float64Array(after.length).fill(Infinity);
  slide(after, here, each, 0, kept, perRepeat - perChange, own + perChange * kept, queue);
  slide(after, here, each, kept, most - fewest, perRepeat + perChange, own - perChange * kept, queue);
  return here;
}

/** The tables of sections k and after, for every k and for none. */
function tablesOf(
  problem: FitProblem,
  eachSteps: readonly number[],
  steps: number,
  shareOf: (section: FitSection) => Share,
): Float64Array[] {
  const queue = new Int32Array(steps + 1);
  let after: Float64Array = new Float64Array(steps + 1).fill(Infinity);
  after[0] = 0;
  const tables: Float64Array[] = [after];
  for (let at = problem.sections.length - 1; at >= 0; at -= 1) {
    const section = problem.sections[at]!;
    after = addSection(section, shareOf(section), eachSteps[at]!, after, queue);
    tables.unshift(after);
  }
  return tables;
}

/**
 * @param eachNm length of one repeat of every section.
 * @returns null where the lengths have no step coarse enough to count in.
 */
export function lengthTable(problem: FitProblem, eachNm: readonly number[]): LengthTable | null {
  const { sections } = problem;
  const counted = stepsOf(problem, eachNm);
  if (counted === null) return null;
  const { stepNm, eachSteps } = counted;
  const steps = eachSteps.reduce(
    (sum, each, at) => sum + each * (sections[at]!.most - sections[at]!.fewest),
    0,
  );
  const heaviest = sections.reduce((sum, { cost, most }) => sum + weightOf(cost, 1) * (most + 1), 1);
  const entries = (steps + 1) * (sections.length + 1);
  if (entries > MOST_ENTRIES || heaviest * (steps + 1) > EXACT) return null;
  const tables = (shareOf: (section: FitSection) => Share): Float64Array[] =>
    tablesOf(problem, eachSteps, steps, shareOf);
  return {
    stepNm,
    steps,
    eachSteps,
    least: tables(({ cost, partsPerRepeat }) => ({
      perRepeat: partsPerRepeat,
      perChange: weightOf(cost, 0),
    })),
    fewestTaken: problem.stock
      .slice(0, Math.floor(MOST_ENTRIES / entries))
      .map((_, which) => tables(({ takes }) => ({ perRepeat: takes[which]!, perChange: 0 }))),
  };
}
