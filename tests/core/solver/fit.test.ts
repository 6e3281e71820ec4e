/** What a strand's fit makes of what its search finds. */
import { describe, expect, test } from 'vitest';
import { boxSearch, MOST_BOXES } from '#core/solver/boxSearch.ts';
import { fewChanges } from '#core/solver/fewChanges.ts';
import { fitJointly } from '#core/solver/fit.ts';
import { loneStrand } from '#core/solver/jointProblem.ts';
import { jointLimits } from '#core/solver/limits.ts';
import type { Search } from '#core/solver/questions.ts';
import { searchOf } from '#core/solver/search.ts';
import { sumMeasure, type Measure } from '#core/solver/measure.ts';
import type { FitProblem, FitSection } from '#core/solver/problem.ts';
import { SearchLimit } from '#core/solver/searchLimit.ts';
import { fitSection } from '../designs.ts';

const problemOf = (
  sections: readonly Partial<FitSection>[],
  stock: FitProblem['stock'] = [],
): FitProblem => ({
  sections: sections.map(fitSection),
  stock,
});

const byLength = (problem: FitProblem, eachNm: readonly number[], chainNm = 0) =>
  loneStrand(problem, sumMeasure(eachNm, 0, chainNm));

const SAME = (_: number, nm: number): number => nm;

const MM = 1_000_000;

describe('a fit of one strand', () => {
  /** None to three of 4 mm, and a chain of 1 mm: 0 to 1, 4 to 5, 8 to 9, 12 to 13 mm. */
  const problem = problemOf([{}]);
  const joint = byLength(problem, [4 * MM], MM);
  const fit = (mm: number, toleranceMm: number, of = joint) =>
    fitJointly(of, [{ targetNm: mm * MM, toleranceNm: toleranceMm * MM }]);

  test('knows its smallest and its largest piece, if the stock leaves any', () => {
    expect(jointLimits(joint, SAME)).toMatchObject({
      least: { firstNm: 0, strands: [0], outcomes: [{ counts: [0] }] },
      most: { firstNm: 13 * MM, strands: [0], outcomes: [{ counts: [3] }] },
    });
    const short = problemOf([{ fewest: 1, takes: [2] }], [{ component: 'a', left: 1 }]);
    expect(jointLimits(byLength(short, [4 * MM]), SAME)).toBeNull();
    expect(fit(4, 1, byLength(short, [4 * MM]))).toBeNull();
  });

  test('fits within tolerance, near a limit as well', () => {
    expect(fit(4.5, 0)).toMatchObject({ status: 'fits', best: [{ counts: [1], error: 0, excess: 0 }] });
    expect(fit(5.5, 0.5)).toMatchObject({ status: 'fits', best: [{ counts: [1], error: 50, excess: 0 }] });
    expect(fit(-0.5, 0.5)).toMatchObject({ status: 'fits', best: [{ counts: [0] }] });
    expect(fit(13.5, 0.5)).toMatchObject({ status: 'fits', best: [{ counts: [3] }] });
  });

  test('outside tells the side and the limit', () => {
    expect(fit(-1, 0.5)).toMatchObject({
      status: 'outside',
      side: 'below',
      best: [{ counts: [0], excess: 50 }],
    });
    expect(fit(14, 0.5)).toMatchObject({
      status: 'outside',
      side: 'above',
      best: [{ counts: [3], excess: 50 }],
    });
  });

  test('between two pieces it tells both, judged by the tolerance asked for, and prefers the nearer', () => {
    expect(fit(6, 0.2)).toMatchObject({
      status: 'near',
      best: [{ counts: [1], error: 100, excess: 80 }],
      below: [{ counts: [1], error: 100, excess: 80 }],
      above: [{ counts: [2], error: 200, excess: 180 }],
    });
    expect(fit(7, 0.2)).toMatchObject({
      status: 'near',
      best: [{ counts: [2], error: 100, excess: 80 }],
      below: [{ counts: [1], error: 200, excess: 180 }],
    });
    // As near, the one that changes less.
    expect(fit(10.5, 0.2)).toMatchObject({
      status: 'near',
      best: [{ counts: [2] }],
      above: [{ counts: [3] }],
    });
    const found = fit(10.5, 0, byLength(problemOf([{ usual: 3 }]), [4 * MM], MM));
    expect(found).toMatchObject({ status: 'near', best: [{ counts: [3] }], below: [{ counts: [2] }] });
  });
});

describe('where little changes', () => {
  const usual = () => ({ lowNm: 0, highNm: 0 });
  const few = (problem: FitProblem, eachNm: readonly number[], targetNm: number, toleranceNm = 0) =>
    fewChanges(problem, eachNm, usual, { targetNm, toleranceNm });

  test("what can't change may cost what it likes", () => {
    const kept = problemOf([{}, { usual: 2, fewest: 2, most: 2, cost: 0 }]);
    expect(few(kept, [4 * MM, MM], 8 * MM)).toMatchObject({ counts: [3, 2], cost: 2 });
    expect(few(problemOf([{}, { cost: 0 }]), [4 * MM, MM], 8 * MM)).toBe('given-up');
    expect(few(problemOf([{}, { cost: 1.5 }]), [4 * MM, MM], 8 * MM)).toBe('given-up');
    expect(few(problemOf([{}], [{ component: 'a', left: 9 }]), [4 * MM], 8 * MM)).toBe('given-up');
  });

  test('none within tolerance is known for certain, nothing to change or much', () => {
    expect(few(problemOf([{}]), [4 * MM], 3 * MM)).toBe('none');
    const kept = problemOf([{ fewest: 1, most: 1 }]);
    expect(few(kept, [4 * MM], 0)).toMatchObject({ counts: [1] });
    expect(few(kept, [4 * MM], 4 * MM)).toBe('none');
    // Many, but hardly any more or less of them.
    expect(few(problemOf([{ usual: 90_000, fewest: 90_000, most: 90_003 }]), [4 * MM], 3 * MM)).toBe('none');
    expect(few(problemOf([{ usual: 3, fewest: 0, most: 90_000 }]), [4 * MM], -13 * MM)).toBe('given-up');
  });

  test('is given up where it would be too much', () => {
    const many = problemOf(Array.from({ length: 7 }, () => ({ usual: 20, most: 40 })));
    const odd = [4, 6, 8, 10, 12, 14, 16].map((mm) => mm * MM);
    expect(few(many, odd, 201 * MM)).toBe('given-up');
    expect(few(many, odd, 16 * MM)).toMatchObject({ cost: 1 });
  });
});

describe('a search that would not end is refused, whatever it is asked', () => {
  const QUESTIONS = {
    within: (search: ReturnType<typeof boxSearch>) => search.within({ targetNm: 201 * MM, toleranceNm: 0 }),
    below: (search: ReturnType<typeof boxSearch>) => search.nearest(201 * MM, 'below'),
    above: (search: ReturnType<typeof boxSearch>) => search.nearest(201 * MM, 'above'),
    between: (search: ReturnType<typeof boxSearch>) => search.between(201 * MM, 201 * MM),
  } as const;

  test.each(Object.entries(QUESTIONS))('by boxes: %s', (_, ask) => {
    let measured = 0;
    const eachNm = [4, 6, 8, 10, 12, 14, 16].map((mm) => mm * MM);
    const measure = sumMeasure(eachNm, 0, 0);
    const problem = problemOf(eachNm.map(() => ({ usual: 3, most: 9 })));
    // Bounds so wide that no box is ever settled.
    const bound =
      (offNm: number): Measure['least'] =>
      (counts) => {
        measured += 1;
        const { lowNm, highNm } = measure.of(counts);
        return { lowNm: lowNm + offNm, highNm: highNm + offNm };
      };
    const search = boxSearch(problem, {
      ...measure,
      least: bound(-1000 * MM),
      most: bound(1000 * MM),
      eachNm: null,
    });
    expect(() => ask(search)).toThrow(SearchLimit);
    // A box is asked about at most six times.
    expect(measured).toBeLessThan(6 * MOST_BOXES);
  });

  /**
   * Twelve sections alike but for what they take: half of one component, half
   * of another. There is enough of either for any length, and not of both.
   */
  const torn = (): Search => {
    const sections = Array.from({ length: 12 }, (_, at) => ({
      usual: 0,
      most: 9,
      takes: at < 6 ? [1, 0] : [0, 1],
    }));
    const stock = [
      { component: 'a', left: 35 },
      { component: 'b', left: 35 },
    ];
    const eachNm = sections.map(() => 4 * MM);
    return searchOf(problemOf(sections, stock), sumMeasure(eachNm, 0, 0));
  };

  test('where two stocks hold a sum back together', () => {
    expect(() => torn().within({ targetNm: 284 * MM, toleranceNm: 0 })).toThrow(SearchLimit);
    expect(() => torn().between(284 * MM, 284 * MM)).toThrow(SearchLimit);
  });

  test('many counted components of one section are met', () => {
    const takes = [1, 2, 3, 4, 5];
    const wide = problemOf(
      [{ usual: 0, most: 300_000, takes, cost: 1 }],
      takes.map((each) => ({ component: `c${each}`, left: each === 5 ? 50_000 : 2_000_000 })),
    );
    const search = searchOf(wide, sumMeasure([MM / 100], 0, 0));
    const within = (mm: number) => search.within({ targetNm: mm * MM, toleranceNm: 0 });
    expect(within(100)).toMatchObject({ counts: [10_000] });
    expect(within(100.01)).toBeNull();
  });
});
