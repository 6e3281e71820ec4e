/** What a strand can measure within tolerance, against all its pieces written out. */
import { describe, expect, test } from 'vitest';
import { coverOf, type Interval, type Scale } from '#core/solver/cover.ts';
import type { Outcome } from '#core/solver/outcome.ts';
import type { JointProblem } from '#core/solver/jointProblem.ts';
import type { Search } from '#core/solver/questions.ts';
import { sumMeasure } from '#core/solver/measure.ts';
import { SearchLimit } from '#core/solver/searchLimit.ts';
import { random } from '../random.ts';

const TOUCH_NM = 10_000;

/** One strand: its own measure is the piece's. */
const SAME: Scale = { fromFirst: (_, nm) => nm, toFirst: (_, nm) => nm };

const outcome = (lowNm: number, chainNm: number): Outcome => ({
  counts: [],
  span: { lowNm, highNm: lowNm + chainNm },
  error: 0,
  excess: 0,
  cost: 0,
  parts: 0,
});

/** A strand with pieces of these lengths and no others. */
function strandAmong(
  lengths: readonly number[],
  chainNm: number,
): { joint: JointProblem; asked: () => number } {
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
  const within = () => ({ problem: { sections: [], stock: [] }, search });
  const strand = { measure: sumMeasure([], 0, 0), uses: () => [], fewestUses: [], within };
  return { joint: { strands: [strand], shared: [] }, asked: () => asked };
}

function coverAmong(lengths: readonly number[], toleranceNm: number, chainNm = 0): readonly Interval[] {
  return coverOf(strandAmong(lengths, chainNm).joint, SAME, toleranceNm);
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
    const { joint, asked } = strandAmong(lengths, 0);
    expect(coverOf(joint, SAME, 1_000_000)).toHaveLength(1);
    expect(asked()).toBeLessThanOrEqual(40);
  });

  test('little is asked', () => {
    const askedFor = (lengths: readonly number[], toleranceNm: number): number => {
      const { joint, asked } = strandAmong(lengths, 0);
      coverOf(joint, SAME, toleranceNm);
      return asked();
    };
    const at = 100_000_000;
    // Where it begins, that it is met, what meets the next size, near or at all, and what comes after.
    const alone = askedFor([at], 1_000_000);
    expect(alone).toBeLessThanOrEqual(7);
    expect(askedFor([at, at + 9_000_000], 1_000_000)).toBe(2 * alone - 2);
    expect(askedFor([at, at + 1_500_000], 1_000_000)).toBe(alone + 1);
  });

  test('of more steps than any strand takes is given up', () => {
    const lengths = Array.from({ length: 5100 }, (_, at) => 100_000_000 + at * 100_000);
    expect(() => coverAmong(lengths, 0)).toThrow(SearchLimit);
    expect(coverAmong(lengths.slice(0, 4900), 0)).toHaveLength(4900);
  });
});
