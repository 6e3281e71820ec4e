import { describe, expect, test } from 'vitest';
import {
  compareNearest,
  compareOutcomes,
  evaluate,
  offNm,
  toHundredths,
  toMm,
  toNm,
  type Outcome,
} from '#core/solver/outcome.ts';
import { stockForSections } from '#core/solver/jointProblem.ts';
import { fewestCounts, fitProblem, takenByRepeat, type FitProblem } from '#core/solver/problem.ts';
import { design, focalBracelet, section, strand, ball } from '../designs.ts';

const two = [
  { component: 'a', count: 1 },
  { component: 'b', count: 2 },
  { component: 'a', count: 1 },
];
const sections = [
  section('x', two, [5, 3, 7]),
  section('y', [{ component: 'b', count: 1 }], [4, 0, 9], 'body', 7),
  section('z', [{ component: 'c', count: 1 }], [1, 0, 4], 'filler'),
];

describe('what may change of a strand', () => {
  test('costs by place: of a mirrored strand the centre costs most, of one run the middle', () => {
    const costs = (count: number, mirrored: boolean): number[] => {
      const plain = Array.from({ length: count }, (_, at) => section(`${at}`, two, [1, 0, 2]));
      return fitProblem(strand('s', plain, mirrored), new Map()).sections.map(({ cost }) => cost);
    };
    expect(costs(4, true)).toEqual([4, 3, 2, 1]);
    expect(costs(4, false)).toEqual([1, 2, 2, 1]);
    expect(costs(5, false)).toEqual([1, 2, 3, 2, 1]);
  });

  test('what the maker says a repeat costs stands', () => {
    expect(fitProblem(strand('s', sections), new Map()).sections.map(({ cost }) => cost)).toEqual([3, 7, 1]);
  });

  test('a repeat takes both sides, a component named twice is counted together', () => {
    expect([...takenByRepeat(strand('s', sections), sections[0]!)]).toEqual([
      ['a', 4],
      ['b', 4],
    ]);
    expect([...takenByRepeat(strand('s', sections, false), sections[0]!)]).toEqual([
      ['a', 2],
      ['b', 2],
    ]);
    const problem = fitProblem(strand('s', sections), new Map([['b', 45]]));
    expect(problem.sections.map(({ partsPerRepeat }) => partsPerRepeat)).toEqual([8, 2, 2]);
    expect(problem.sections.map(({ takes }) => takes)).toEqual([[4], [2], [0]]);
  });

  test('only stock that is counted and wanted here, or already overdrawn, has a say', () => {
    const left = new Map([
      ['c', 7],
      ['elsewhere', 3],
      ['clasp', -1],
    ]);
    expect(fitProblem(strand('s', sections), left).stock).toEqual([
      { component: 'c', left: 7 },
      { component: 'clasp', left: -1 },
    ]);
  });

  test('nor has stock that lasts for the most of everything: 7 × 4 and 9 × 2 of b', () => {
    const stockOf = (left: number): unknown =>
      fitProblem(strand('s', sections), new Map([['b', left]])).stock;
    expect(stockOf(46)).toEqual([]);
    expect(stockOf(45)).toEqual([{ component: 'b', left: 45 }]);
    // A focal stays at its usual count, so its most has no say.
    const focal = section('f', two, [1, 0, 9], 'focal');
    expect(fitProblem(strand('s', [focal]), new Map([['b', 2]])).stock).toEqual([]);
  });

  test('a focal keeps its count', () => {
    const focal = section('f', two, [1, 1, 1], 'focal');
    const loose = { ...focal, fewest: 0, most: 3 };
    expect(fitProblem(strand('s', [loose]), new Map()).sections[0]).toMatchObject({ fewest: 1, most: 1 });
    expect(fewestCounts(strand('s', [loose, ...sections]))).toEqual([1, 3, 0, 0]);
  });

  test('the stock left: each piece’s share, less what is taken', () => {
    const stocked = design(
      'necklace',
      [strand('s', sections)],
      [{ ...ball('a', 5), stock: 11 }, ball('b', 3)],
    );
    expect([...stockForSections(stocked, 3)]).toEqual([['a', 3]]);
    expect([...stockForSections(stocked, 1)]).toEqual([['a', 11]]);
    expect([...stockForSections(focalBracelet, 1)]).toEqual([]);
    // Two covers close its ends.
    const covers = { ...stocked.components, cover: { ...stocked.components['cover']!, stock: 9 } };
    expect(stockForSections({ ...stocked, components: covers }, 3).get('cover')).toBe(1);
  });
});

describe('how far off', () => {
  const span = { lowNm: 100, highNm: 160 };

  test('a target inside the span is met; else by how much, below 0 where the strand stays short', () => {
    expect([90, 100, 130, 160, 165].map((target) => offNm(span, target))).toEqual([10, 0, 0, 0, -5]);
  });

  test('lengths are whole millionths, errors whole hundredths', () => {
    expect(toNm(1.2345678)).toBe(1_234_568);
    expect(toMm(1_234_568)).toBe(1.234568);
    expect([4_999, 5_000, 14_999, 15_000].map(toHundredths)).toEqual([0, 1, 1, 2]);
  });
});

const problem: FitProblem = fitProblem(strand('s', sections), new Map());
const wanted = { targetNm: toNm(200), toleranceNm: toNm(1) };

test('judged: error, what exceeds the tolerance, cost and parts', () => {
  const at = toNm(203);
  // Two repeats of cost 3, one of cost 7, three of cost 1; parts 8, 2 and 2 a repeat.
  expect(evaluate(problem, wanted, [3, 5, 4], { lowNm: at, highNm: at })).toEqual({
    counts: [3, 5, 4],
    span: { lowNm: at, highNm: at },
    error: 300,
    excess: 200,
    cost: 16,
    parts: 42,
  });
  const near = toNm(199.5);
  expect(evaluate(problem, wanted, [5, 4, 1], { lowNm: near, highNm: near })).toMatchObject({
    error: 50,
    excess: 0,
    cost: 0,
  });
});

describe('the order of preference', () => {
  const base: Outcome = {
    counts: [5, 4, 1],
    span: { lowNm: 0, highNm: 0 },
    error: 10,
    excess: 0,
    cost: 4,
    parts: 40,
  };
  const better = (one: Partial<Outcome>, other: Partial<Outcome>): void => {
    expect(compareOutcomes(problem, { ...base, ...one }, { ...base, ...other })).toBeLessThan(0);
    expect(compareOutcomes(problem, { ...base, ...other }, { ...base, ...one })).toBeGreaterThan(0);
  };

  test('first what exceeds the tolerance, then cost, then error, then parts', () => {
    better({ cost: 9, error: 90, parts: 90 }, { excess: 1 });
    better({ error: 90, parts: 90 }, { cost: 5 });
    better({ parts: 90 }, { error: 11 });
    better({}, { parts: 41 });
  });

  test('then the first section that differs: nearer to its usual count, or fewer', () => {
    better({ counts: [5, 9, 1] }, { counts: [6, 4, 1] });
    better({ counts: [5, 4, 1] }, { counts: [5, 3, 1] });
    better({ counts: [4, 9, 1] }, { counts: [6, 4, 1] });
    better({ counts: [5, 4, 0] }, { counts: [5, 4, 2] });
    expect(compareOutcomes(problem, base, { ...base })).toBe(0);
  });

  test('for the nearest on one side the error comes first', () => {
    const compared = (one: Partial<Outcome>, other: Partial<Outcome>): number =>
      compareNearest(problem, { ...base, ...one }, { ...base, ...other });
    expect(compared({ error: 9, cost: 99 }, {})).toBeLessThan(0);
    expect(compared({ error: 11, cost: 0 }, {})).toBeGreaterThan(0);
    expect(compared({ cost: 3 }, {})).toBeLessThan(0);
  });
});
