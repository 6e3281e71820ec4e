/** The length fit against a general integer-programming solver on the same designs. */
import loadHighs from 'highs';
import { fitJointly } from '#core/solver/fit.ts';
import { loneStrand } from '#core/solver/jointProblem.ts';
import type { FitProblem } from '#core/solver/problem.ts';
import { sumMeasure, type Measure } from '#core/solver/measure.ts';
import { ms, table } from './table.ts';
import { time } from './timing.ts';

/** Designs timed. Each takes the general solver some tenths of a second. */
const DESIGNS = 12;
const SECTIONS = 8;
const MOST_REPEATS = 60;
/** Lengths in tenths of a millimetre, as millionths. */
const TENTH_NM = 100_000;

type Highs = Awaited<ReturnType<typeof loadHighs>>;

/** A small generator, the same numbers every run (a linear congruence; Knuth's MMIX would do as well). */
function numbers(seed: number): (least: number, most: number) => number {
  let state = seed;
  return (least, most) => {
    state = (state * 48271) % 2147483647;
    return least + (state % (most - least + 1));
  };
}

type Case = {
  readonly problem: FitProblem;
  readonly measure: Measure;
  readonly eachTenths: readonly number[];
  readonly targetTenths: number;
};

function makeCase(seed: number): Case {
  const whole = numbers(seed * 7919);
  for (let warm = 0; warm < 10; warm += 1) whole(0, 1);
  const sections = Array.from({ length: SECTIONS }, (_, at) => {
    const usual = whole(0, MOST_REPEATS);
    return { id: `s${at}`, usual, fewest: 0, most: MOST_REPEATS, cost: 1, partsPerRepeat: 1, takes: [] };
  });
  const eachTenths = sections.map(() => whole(15, 160));
  const usualTenths = eachTenths.reduce((sum, each, at) => sum + each * sections[at]!.usual, 0);
  return {
    problem: { sections, stock: [] },
    measure: sumMeasure(
      eachTenths.map((each) => each * TENTH_NM),
      0,
      0,
    ),
    eachTenths,
    targetTenths: usualTenths + whole(-1500, 1500),
  };
}

/** The model built once: least error first, then least change with that error held. Returns the solver's cost. */
function highsFit(
  highs: Highs,
  one: Case,
): { solve: () => { error: number; cost: number }; dispose: () => void } {
  const model = highs.createModel();
  model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 });
  const { sections } = one.problem;
  const integer = highs.constants.variableType.integer;
  sections.forEach(({ most }, at) => {
    model.addVar(0, most);
    model.changeColIntegrality(at, integer);
  });
  const n = sections.length;
  for (let at = 0; at < 2 * n + 2; at += 1) model.addVar(0, highs.infinity);
  sections.forEach(({ usual }, at) => {
    model.addRow(usual, usual, { indices: [at, n + 2 * at, n + 2 * at + 1], values: [1, -1, 1] });
  });
  const [over, under] = [3 * n, 3 * n + 1];
  model.addRow(one.targetTenths, one.targetTenths, {
    indices: [...sections.keys(), over, under],
    values: [...one.eachTenths, -1, 1],
  });
  const minimise = (columns: readonly number[]): number => {
    for (let at = 0; at < 3 * n + 2; at += 1) model.changeColCost(at, columns.includes(at) ? 1 : 0);
    model.run();
    const { colValue } = model.getSolution();
    return Math.round(columns.reduce((sum, at) => sum + colValue[at]!, 0));
  };
  return {
    solve: () => {
      model.changeColBounds(over, 0, highs.infinity);
      model.changeColBounds(under, 0, highs.infinity);
      const error = minimise([over, under]);
      model.changeColBounds(over, 0, error + 0.25);
      model.changeColBounds(under, 0, error + 0.25);
      return { error, cost: minimise(Array.from({ length: 2 * n }, (_, at) => n + at)) };
    },
    dispose: () => model.dispose(),
  };
}

function ownFit(one: Case): { error: number; cost: number } {
  const wanted = { targetNm: one.targetTenths * TENTH_NM, toleranceNm: 0 };
  const [best] = fitJointly(loneStrand(one.problem, one.measure), [wanted])!.best;
  return { error: Math.round(best!.error / 10), cost: best!.cost };
}

/** Times both on the same designs, each model built once, and holds their answers together. */
export async function againstHighs(): Promise<string> {
  const highs = await loadHighs();
  const timed = Array.from({ length: DESIGNS }, (_, at) => {
    const one = makeCase(at + 1);
    const model = highsFit(highs, one);
    const theirs = time([model.solve], 1);
    const same = JSON.stringify(model.solve()) === JSON.stringify(ownFit(one));
    model.dispose();
    const own = time([() => ownFit(one)], 20);
    return { own: own.medianMs, theirs: theirs.medianMs, ratio: theirs.medianMs / own.medianMs, same };
  });
  const middle = (of: 'own' | 'theirs' | 'ratio'): number =>
    timed.map((one) => one[of]).sort((a, b) => a - b)[Math.floor(timed.length / 2)]!;
  const least = Math.min(...timed.map(({ ratio }) => ratio));
  const worst = Math.max(...timed.map(({ own }) => own));
  return `Length fit of ${SECTIONS} sections, 0 to ${MOST_REPEATS} repeats, tolerance 0, against HiGHS (model built once)\n${table(
    ['', 'median ms'],
    [
      ['this', ms(middle('own'))],
      ['this, slowest design', ms(worst)],
      ['HiGHS', ms(middle('theirs'))],
      ['times faster, median', middle('ratio').toFixed(0)],
      ['times faster, least', least.toFixed(0)],
    ],
  )}\nsame optimum on ${timed.filter(({ same }) => same).length} of ${timed.length}`;
}
