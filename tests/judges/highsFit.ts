/** The necklace fit as an integer programme, for the general solver HiGHS. */
import loadHighs from 'highs';
import type { FitProblem } from '#core/solver/problem.ts';

export type Highs = Awaited<ReturnType<typeof loadHighs>>;

/** The order of preference as far as numbers go, in whole hundredths of a millimetre. */
type Judged = {
  readonly excess: number;
  readonly cost: number;
  readonly error: number;
  readonly parts: number;
};

export type LengthModel = {
  /** Judges one target; `stages` may stop after cost and error, which is all that most comparisons need. */
  readonly judge: (targetHundredths: number, toleranceHundredths: number) => Judged | null;
  readonly dispose: () => void;
};

/**
 * Builds the model once for a problem; each target then changes bounds and
 * costs only. Stage after stage the next preference is minimised with the ones
 * before held at their best.
 * @param baseHundredths length without any repeat; `eachHundredths` of one repeat of every section.
 */
export function lengthModel(
  highs: Highs,
  problem: FitProblem,
  baseHundredths: number,
  eachHundredths: readonly number[],
): LengthModel {
  const model = highs.createModel();
  model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 });
  const { sections, stock } = problem;
  let columns = 0;
  const column = (least: number, most: number, whole: boolean): number => {
    model.addVar(least, most);
    if (whole) model.changeColIntegrality(columns, highs.constants.variableType.integer);
    return columns++;
  };
  const count = sections.map((section) => column(section.fewest, section.most, true));
  const more = sections.map(() => column(0, highs.infinity, false));
  const fewer = sections.map(() => column(0, highs.infinity, false));
  const [over, under, excess] = [0, 1, 2].map(() => column(0, highs.infinity, false)) as [
    number,
    number,
    number,
  ];
  let rows = 0;
  const row = (least: number, most: number, terms: readonly (readonly [number, number])[]): number => {
    const kept = terms.filter(([, value]) => value !== 0);
    model.addRow(least, most, {
      indices: kept.map(([index]) => index),
      values: kept.map(([, value]) => value),
    });
    return rows++;
  };
  sections.forEach(({ usual }, at) => {
    row(usual, usual, [
      [count[at]!, 1],
      [more[at]!, -1],
      [fewer[at]!, 1],
    ]);
  });
  stock.forEach(({ left }, which) => {
    row(
      -highs.infinity,
      left,
      sections.map((section, at) => [count[at]!, section.takes[which]!] as const),
    );
  });
  const lengths = sections.map((_, at) => [count[at]!, eachHundredths[at]!] as const);
  const lengthRow = row(0, 0, [...lengths, [over, -1], [under, 1]]);
  const excessRow = row(-highs.infinity, 0, [
    [over, 1],
    [under, 1],
    [excess, -1],
  ]);
  const costs = sections.flatMap(({ cost }, at) => [[more[at]!, cost] as const, [fewer[at]!, cost] as const]);
  const costRow = row(-highs.infinity, highs.infinity, costs);
  const errors = [[over, 1] as const, [under, 1] as const];
  const errorRow = row(-highs.infinity, highs.infinity, errors);
  const parts = sections.map(({ partsPerRepeat }, at) => [count[at]!, partsPerRepeat] as const);

  const minimise = (terms: readonly (readonly [number, number])[]): number | null => {
    for (let at = 0; at < columns; at += 1) model.changeColCost(at, 0);
    for (const [at, value] of terms) model.changeColCost(at, value);
    model.run();
    if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return null;
    const { colValue } = model.getSolution();
    return terms.reduce((sum, [at, value]) => sum + value * colValue[at]!, 0);
  };
  const free = (): void => {
    model.changeColBounds(excess, 0, highs.infinity);
    model.changeRowBounds(costRow, -highs.infinity, highs.infinity);
    model.changeRowBounds(errorRow, -highs.infinity, highs.infinity);
  };
  return {
    judge: (target, tolerance) => {
      free();
      model.changeRowBounds(lengthRow, target - baseHundredths, target - baseHundredths);
      model.changeRowBounds(excessRow, -highs.infinity, tolerance);
      const leastExcess = minimise([[excess, 1]]);
      if (leastExcess === null) return null;
      const found = { excess: Math.round(leastExcess), cost: 0, error: 0, parts: 0 };
      model.changeColBounds(excess, 0, found.excess + 0.25);
      found.cost = Math.round(minimise(costs) ?? NaN);
      model.changeRowBounds(costRow, -highs.infinity, found.cost + 0.25);
      found.error = Math.round(minimise(errors) ?? NaN);
      model.changeRowBounds(errorRow, -highs.infinity, found.error + 0.25);
      found.parts = Math.round(minimise(parts) ?? NaN);
      return found;
    },
    dispose: () => model.dispose(),
  };
}
