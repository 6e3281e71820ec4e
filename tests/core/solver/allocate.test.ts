/** Shares of what is scarce, against every combination written out. */
import { expect, test } from 'vitest';
import { allocate } from '#core/solver/allocate.ts';
import type { JointProblem, JointStrand } from '#core/solver/jointProblem.ts';
import { sumMeasure } from '#core/solver/measure.ts';
import { SearchLimit } from '#core/solver/searchLimit.ts';
import { random, type Random } from '../random.ts';

/** What a strand may be: what it takes of each shared component, and how bad it is. */
type Option = { readonly counts: readonly number[]; readonly uses: readonly number[]; readonly bad: number };

const worth = (options: readonly Option[]): number => options.reduce((sum, { bad }) => sum + bad, 0);

/** A joint problem of bare options; `asked` counts how often a strand is asked for its best. */
function jointOf(strands: readonly (readonly Option[])[], shared: readonly number[]) {
  let asked = 0;
  const shares = new Map<object, readonly number[]>();
  const joint: JointProblem = {
    shared,
    strands: strands.map((options): JointStrand => ({
      measure: sumMeasure([], 0, 0),
      uses: ([place]) => [...options[place!]!.uses],
      fewestUses: shared.map((_, at) => Math.min(...options.map(({ uses }) => uses[at]!))),
      within: (share) => {
        const search = { within: () => null, nearest: () => null, between: () => null };
        const made = { problem: { sections: [], stock: [] }, search };
        shares.set(made, share);
        return made;
      },
    })),
  };
  const best = (): readonly Option[] | null =>
    allocate(
      joint,
      (strand, place) => {
        asked += 1;
        const share = shares.get(strand)!;
        const there = strands[place]!.filter(({ uses }) => uses.every((used, at) => used <= share[at]!));
        return there.toSorted((one, other) => one.bad - other.bad)[0] ?? null;
      },
      (one, other) => worth(one) - worth(other),
    );
  return { best, asked: () => asked };
}

function bestOfAll(strands: readonly (readonly Option[])[], shared: readonly number[]): number | null {
  let all: Option[][] = [[]];
  for (const options of strands) all = all.flatMap((so) => options.map((one) => [...so, one]));
  const fitting = all.filter((one) =>
    shared.every((left, at) => one.reduce((sum, { uses }) => sum + uses[at]!, 0) <= left),
  );
  return fitting.length === 0 ? null : Math.min(...fitting.map(worth));
}

function randomStrand(of: Random, components: number): Option[] {
  return Array.from({ length: of.whole(1, 12) }, (_, place) => ({
    counts: [place],
    uses: Array.from({ length: components }, () => of.whole(0, 9)),
    bad: of.whole(0, 30),
  }));
}

test('the best of all combinations that the stock allows, or none', () => {
  const seen = { none: 0, contended: 0 };
  for (let seed = 1; seed <= 2000; seed += 1) {
    const of = random(seed);
    const components = of.whole(0, 3);
    const strands = Array.from({ length: of.whole(1, 4) }, () => randomStrand(of, components));
    const shared = Array.from({ length: components }, () => of.whole(0, 9 * strands.length));
    const { best, asked } = jointOf(strands, shared);
    const found = best();
    const wanted = bestOfAll(strands, shared);
    expect(found === null ? null : worth(found), `seed ${seed}`).toBe(wanted);
    if (found === null) seen.none += 1;
    else if (asked() > strands.length) seen.contended += 1;
    for (const [at, left] of shared.entries()) {
      const used = (found ?? []).reduce((sum, { uses }) => sum + uses[at]!, 0);
      expect(used, `seed ${seed}`).toBeLessThanOrEqual(left);
    }
  }
  expect(seen.none).toBeGreaterThan(100);
  expect(seen.contended).toBeGreaterThan(200);
});

test('strands that contend for nothing are asked once each', () => {
  const of = random(7);
  const strands = Array.from({ length: 5 }, () => randomStrand(of, 2));
  const { best, asked } = jointOf(strands, [45, 45]);
  expect(best()).toHaveLength(5);
  expect(asked()).toBe(5);
});

test('where every unit is worth the same to both, two questions a unit at the most', () => {
  const strand = (worst: number): Option[] =>
    Array.from({ length: 1001 }, (_, used) => ({ counts: [used], uses: [used], bad: worst - used }));
  const { best, asked } = jointOf([strand(1000), strand(1000)], [1000]);
  expect(worth(best()!)).toBe(1000);
  expect(asked()).toBeLessThanOrEqual(2 * 1001);
});

test('past its cap no answer is claimed', () => {
  // Every unit is worth the same everywhere, and none of what is asked for first ever fits.
  const strand = (seed: number): Option[] =>
    Array.from({ length: 40 }, (_, used) => ({
      counts: [used],
      uses: [used, 39 - used, random(seed + used).whole(0, 39)],
      bad: 0,
    }));
  const strands = Array.from({ length: 12 }, (_, at) => strand(100 * at));
  expect(() => jointOf(strands, [39 * 6 - 1, 39 * 6 - 1, 12 * 39]).best()).toThrow(SearchLimit);
});
