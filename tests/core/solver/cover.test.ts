/** What a strand can measure within tolerance, against all its pieces written out. */
import { describe, expect, test } from 'vitest';
import { coverOf, intersect, type Interval } from '#core/solver/cover.ts';
import type { Outcome } from '#core/solver/outcome.ts';
import type { Search } from '#core/solver/questions.ts';
import { TooLarge } from '#core/solver/tooLarge.ts';
import { random } from '../random.ts';

const TOUCH_NM = 10_000;

const outcome = (lowNm: number, chainNm: number): Outcome => ({
  counts: [],
  span: { lowNm, highNm: lowNm + chainNm },
  error: 0,
  excess: 0,
  cost: 0,
  parts: 0,
});

/** A strand with pieces of these lengths and no others. */
function searchAmong(lengths: readonly number[], chainNm: number): { search: Search; asked: () => number } {
  const pieces = lengths.map((nm) => outcome(nm, chainNm));
  let asked = 0;
  const search: Search = {
    within: () => null,
    nearest: (targetNm, side) => {
      asked += 1;
      return side === 'above'
        ? (pieces.find(({ span }) => span.lowNm >= targetNm) ?? null)
        : (pieces.findLast(({ span }) => span.highNm <= targetNm) ?? null);
    },
    between: (fromNm, toNm) => {
      asked += 1;
      return pieces.findLast(({ span }) => span.lowNm <= toNm && span.highNm >= fromNm) ?? null;
    },
  };
  return { search, asked: () => asked };
}

function coverAmong(lengths: readonly number[], toleranceNm: number, chainNm = 0): readonly Interval[] {
  const { search } = searchAmong(lengths, chainNm);
  const [least, most] = [outcome(lengths[0]!, chainNm), outcome(lengths.at(-1)!, chainNm)];
  return coverOf(search, { least, most }, toleranceNm);
}

/** The union, laid end to end. */
function written(lengths: readonly number[], toleranceNm: number, chainNm = 0): Interval[] {
  const all: Interval[] = [];
  for (const nm of lengths) {
    const [fromNm, toNm] = [nm - toleranceNm, nm + chainNm + toleranceNm];
    const last = all.at(-1);
    if (last !== undefined && fromNm <= last.toNm + TOUCH_NM)
      all[all.length - 1] = { fromNm: last.fromNm, toNm };
    else all.push({ fromNm, toNm });
  }
  return all;
}

describe('a cover', () => {
  test.each([0, 400_000, 3_000_000])('is the union of what each piece meets, chain of %i', (chainNm) => {
    for (let seed = 1; seed <= 200; seed += 1) {
      const of = random(seed);
      let nm = 100_000_000;
      const lengths = Array.from({ length: of.whole(1, 30) }, () => (nm += of.whole(1, 90) * 50_000));
      const toleranceNm = of.pick([0, 100_000, 1_000_000]);
      expect(coverAmong(lengths, toleranceNm, chainNm), `seed ${seed}`).toEqual(
        written(lengths, toleranceNm, chainNm),
      );
    }
  });

  test('a hundredth leaves no size between, two do', () => {
    const at = 100_000_000;
    expect(coverAmong([at, at + 2_000_000 + TOUCH_NM], 1_000_000)).toHaveLength(1);
    expect(coverAmong([at, at + 2_000_000 + TOUCH_NM + 1], 1_000_000)).toHaveLength(2);
  });

  test('long steps are taken first', () => {
    const lengths = Array.from({ length: 2000 }, (_, at) => 100_000_000 + at * 10_000);
    const { search, asked } = searchAmong(lengths, 0);
    const limits = { least: outcome(lengths[0]!, 0), most: outcome(lengths.at(-1)!, 0) };
    expect(coverOf(search, limits, 1_000_000)).toHaveLength(1);
    expect(asked()).toBeLessThanOrEqual(12);
  });

  test('nothing is asked twice', () => {
    const askedFor = (lengths: readonly number[], toleranceNm: number): number => {
      const { search, asked } = searchAmong(lengths, 0);
      coverOf(search, { least: outcome(lengths[0]!, 0), most: outcome(lengths.at(-1)!, 0) }, toleranceNm);
      return asked();
    };
    const at = 100_000_000;
    expect(askedFor([at], 1_000_000)).toBe(0);
    // What meets the next size, near or at all, and where there is none what comes after.
    expect(askedFor([at, at + 9_000_000], 1_000_000)).toBe(3);
    expect(askedFor([at, at + 1_500_000], 1_000_000)).toBe(1);
  });

  test('of more steps than any strand takes is given up', () => {
    const lengths = Array.from({ length: 5100 }, (_, at) => 100_000_000 + at * 100_000);
    expect(() => coverAmong(lengths, 0)).toThrow(TooLarge);
    expect(coverAmong(lengths.slice(0, 4900), 0)).toHaveLength(4900);
  });
});

describe('what two covers share', () => {
  const of = (...ends: readonly (readonly [number, number])[]): Interval[] =>
    ends.map(([fromNm, toNm]) => ({ fromNm, toNm }));

  test('is in both, rising, single sizes too', () => {
    expect(intersect(of([0, 10], [20, 30]), of([5, 22], [30, 40]))).toEqual(of([5, 10], [20, 22], [30, 30]));
    expect(intersect(of([0, 100]), of([10, 20], [40, 60]))).toEqual(of([10, 20], [40, 60]));
    expect(intersect(of([0, 10]), of([11, 20]))).toEqual([]);
  });
});
