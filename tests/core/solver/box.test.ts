import { describe, expect, test } from 'vitest';
import {
  inStock,
  leastCost,
  mixesZero,
  shrink,
  split,
  wholeBox,
  withoutCorner,
  type Box,
} from '#core/solver/box.ts';
import type { FitProblem, FitSection } from '#core/solver/problem.ts';

type Row = readonly [usual: number, fewest: number, most: number, cost: number, ...takes: number[]];

const problemOf = (rows: readonly Row[], left: readonly number[] = []): FitProblem => ({
  sections: rows.map(([usual, fewest, most, cost, ...takes], at): FitSection => ({
    id: `${at}`,
    usual,
    fewest,
    most,
    cost,
    partsPerRepeat: 1,
    takes,
  })),
  stock: left.map((count, at) => ({ component: `c${at}`, left: count })),
});

const box = (...sides: readonly (readonly [number, number])[]): Box => ({
  low: sides.map(([low]) => low),
  high: sides.map(([, high]) => high),
});

/** Every choice of counts in a box. */
const choices = ({ low, high }: Box): string[] =>
  low
    .reduce<number[][]>(
      (all, from, at) =>
        all.flatMap((counts) =>
          Array.from({ length: high[at]! - from + 1 }, (_, step) => [...counts, from + step]),
        ),
      [[]],
    )
    .map((counts) => counts.join());

describe('a box of counts', () => {
  const problem = problemOf([
    [5, 2, 8, 3],
    [1, 0, 4, 2],
  ]);

  test('the whole of it is what the maker allows', () => {
    expect(wholeBox(problem)).toEqual(box([2, 8], [0, 4]));
  });

  test('its least cost is that of the choice nearest to the usual', () => {
    expect(leastCost(problem, box([2, 8], [0, 4]))).toBe(0);
    expect(leastCost(problem, box([6, 8], [0, 4]))).toBe(3);
    expect(leastCost(problem, box([2, 3], [3, 4]))).toBe(10);
    expect(leastCost(problem, box([5, 5], [1, 1]))).toBe(0);
  });

  test('a budget leaves of it what costs no more', () => {
    expect(shrink(problem, wholeBox(problem), 6)).toEqual(box([3, 7], [0, 4]));
    expect(shrink(problem, wholeBox(problem), 5)).toEqual(box([4, 6], [0, 3]));
    expect(shrink(problem, wholeBox(problem), 0)).toEqual(box([5, 5], [1, 1]));
    expect(shrink(problem, box([7, 8], [0, 4]), 6)).toEqual(box([7, 7], [1, 1]));
    expect(shrink(problem, box([7, 8], [0, 4]), 5)).toBeNull();
    expect(shrink(problem, wholeBox(problem), Infinity)).toEqual(wholeBox(problem));
  });

  test('what costs nothing is left as it is', () => {
    const free = problemOf([
      [5, 2, 8, 0],
      [1, 0, 4, 2],
    ]);
    expect(shrink(free, wholeBox(free), 0)).toEqual(box([2, 8], [1, 1]));
  });

  test('the stock leaves of it what it reaches for beside the fewest of the rest', () => {
    const rows: Row[] = [
      [5, 2, 8, 1, 3],
      [1, 1, 9, 1, 2],
      [1, 0, 4, 1, 0],
    ];
    // 2 × 3 + 1 × 2 are taken; of 7 more, two 3s or three 2s.
    expect(shrink(problemOf(rows, [15]), wholeBox(problemOf(rows)), Infinity)).toEqual(
      box([2, 4], [1, 4], [0, 4]),
    );
    expect(shrink(problemOf(rows, [8]), wholeBox(problemOf(rows)), Infinity)).toEqual(
      box([2, 2], [1, 1], [0, 4]),
    );
    expect(shrink(problemOf(rows, [7]), wholeBox(problemOf(rows)), Infinity)).toBeNull();
  });

  test('what the stock leaves may be too dear', () => {
    const rows: Row[] = [[5, 2, 8, 1, 1]];
    expect(shrink(problemOf(rows, [4]), box([2, 8]), 1)).toEqual(box([4, 4]));
    expect(shrink(problemOf(rows, [3]), box([2, 8]), 1)).toBeNull();
    expect(shrink(problemOf(rows, [3]), box([2, 8]), 2)).toEqual(box([3, 3]));
  });

  test('every stock has its say', () => {
    const both = problemOf(
      [
        [1, 0, 9, 1, 2, 0],
        [1, 0, 9, 1, 1, 3],
      ],
      [10, 9],
    );
    expect(inStock(both, [3, 3])).toBe(true);
    expect(inStock(both, [4, 3])).toBe(false);
    expect(inStock(both, [0, 4])).toBe(false);
    expect(inStock(problemOf([[1, 0, 9, 1]]), [9])).toBe(true);
  });
});

describe('splitting a box', () => {
  test('halves its widest side, the first of two as wide', () => {
    expect(split(box([0, 3], [2, 7], [0, 5]), false)).toEqual([
      box([0, 3], [2, 4], [0, 5]),
      box([0, 3], [5, 7], [0, 5]),
    ]);
    expect(split(box([3, 4]), true)).toEqual([box([3, 3]), box([4, 4])]);
  });

  test('none is parted from some before all else, where they must be told apart', () => {
    expect(split(box([1, 9], [0, 4]), true)).toEqual([box([1, 9], [0, 0]), box([1, 9], [1, 4])]);
    expect(split(box([0, 9], [0, 1]), true)).toEqual([box([0, 0], [0, 1]), box([1, 9], [0, 1])]);
    expect(split(box([1, 9], [0, 0]), true)).toEqual([box([1, 5], [0, 0]), box([6, 9], [0, 0])]);
  });

  test('one choice can’t be split', () => {
    expect(split(box([3, 3], [0, 0]), true)).toBeNull();
    expect(split(box([3, 3], [0, 0]), false)).toBeNull();
  });

  test('a box mixes none and some where one section may be either', () => {
    expect(mixesZero(box([1, 9], [0, 4]))).toBe(true);
    expect(mixesZero(box([1, 9], [0, 0]))).toBe(false);
    expect(mixesZero(box([1, 9], [2, 4]))).toBe(false);
  });
});

describe('a box without its corner', () => {
  const whole = box([1, 3], [0, 0], [2, 4]);

  test.each([
    ['low', '1,0,2'],
    ['high', '3,0,4'],
  ] as const)('%s: every other choice, each once', (corner, left) => {
    const rest = withoutCorner(whole, corner).flatMap(choices);
    expect([...rest, left].sort()).toEqual(choices(whole).sort());
  });
});
