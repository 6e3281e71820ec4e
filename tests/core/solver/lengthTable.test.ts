/** The table of all lengths against every choice of counts, written out. */
import { describe, expect, test } from 'vitest';
import { lengthTable, weightOf, type LengthTable } from '#core/solver/lengthTable.ts';
import type { FitProblem, FitSection } from '#core/solver/problem.ts';
import { fitSection } from '../designs.ts';
import { random } from '../random.ts';

/** Least of something over every choice of the sections from `at` on, by how many steps they take. */
function written(
  sections: readonly FitSection[],
  eachSteps: readonly number[],
  at: number,
  steps: number,
  of: (section: FitSection, count: number) => number,
): number[] {
  const least = new Array<number>(steps + 1).fill(Infinity);
  const go = (index: number, taken: number, sum: number): void => {
    const section = sections[index];
    if (section === undefined) {
      least[taken] = Math.min(least[taken]!, sum);
      return;
    }
    for (let count = section.fewest; count <= section.most; count += 1) {
      go(index + 1, taken + (count - section.fewest) * eachSteps[index]!, sum + of(section, count));
    }
  };
  go(at, 0, 0);
  return least;
}

describe('every length of a strand, with the least that reaches it', () => {
  test.each(Array.from({ length: 60 }, (_, seed) => seed))('random sections, seed %i', (seed) => {
    const of = random(seed + 1);
    const sections = Array.from({ length: of.whole(1, 4) }, (): FitSection => {
      const fewest = of.whole(0, 3);
      const most = fewest + of.whole(0, 5);
      return fitSection({
        fewest,
        most,
        usual: of.whole(fewest, most),
        cost: of.whole(0, 4),
        partsPerRepeat: of.whole(1, 6),
        takes: [of.whole(0, 3), of.whole(0, 2)],
      });
    });
    const problem: FitProblem = {
      sections,
      stock: [
        { component: 'a', left: 9 },
        { component: 'b', left: 9 },
      ],
    };
    const unit = of.pick([1, 7, 250_000]);
    const eachNm = sections.map(() => unit * of.whole(1, 9));
    const table = lengthTable(problem, eachNm)!;
    const may = sections.map(({ fewest, most }) => most > fewest);
    eachNm.forEach((nm, at) => {
      expect(table.eachSteps[at]! * table.stepNm).toBe(may[at] === true ? nm : 0);
    });
    const steps = sections.reduce(
      (sum, { fewest, most }, at) => sum + (most - fewest) * table.eachSteps[at]!,
      0,
    );
    expect(table.steps).toBe(steps);
    sections.forEach((_, at) => {
      const weight = ({ cost, usual, partsPerRepeat }: FitSection, count: number): number =>
        weightOf(cost * Math.abs(count - usual), partsPerRepeat * count);
      expect([...table.least[at]!]).toEqual(written(sections, table.eachSteps, at, steps, weight));
      for (const which of [0, 1]) {
        expect([...table.fewestTaken[which]![at]!]).toEqual(
          written(sections, table.eachSteps, at, steps, ({ takes }, count) => takes[which]! * count),
        );
      }
    });
    expect(table.least.at(-1)![0]).toBe(0);
  });

  test('cost comes before parts', () => {
    expect(weightOf(1, 0)).toBeGreaterThan(weightOf(0, 1000));
    expect(weightOf(2, 3)).toBeGreaterThan(weightOf(2, 2));
  });
});

describe('no table', () => {
  const wide = (count: number, most: number, over: Partial<FitSection> = {}): FitProblem => ({
    sections: Array.from({ length: count }, () => fitSection({ most, ...over })),
    stock: [],
  });
  const tableOf = (problem: FitProblem, eachNm: readonly number[]): LengthTable | null =>
    lengthTable(problem, eachNm);

  test('where a section may change and takes no length', () => {
    expect(tableOf(wide(2, 3), [5, 0])).toBeNull();
    const kept: FitProblem = { sections: [fitSection({}), fitSection({ fewest: 1, most: 1 })], stock: [] };
    expect(tableOf(kept, [5, 0])).not.toBeNull();
  });

  test('where it would have more than three million entries', () => {
    // One section of n steps: (n + 1) entries for it and as many for none.
    expect(tableOf(wide(1, 1_499_999, { cost: 0 }), [1])).not.toBeNull();
    expect(tableOf(wide(1, 1_500_000, { cost: 0 }), [1])).toBeNull();
    // Two sections that take turns: lengths of no common step.
    expect(tableOf(wide(2, 1), [1_000_003, 999_979])).toBeNull();
  });

  test('where sums would no longer be whole', () => {
    expect(tableOf(wide(1, 1000, { cost: 100_000 }), [1])).not.toBeNull();
    expect(tableOf(wide(1, 1000, { cost: 1_000_000 }), [1])).toBeNull();
  });

  test('counted components have tables as far as there is room', () => {
    const problem = wide(1, 400_000, { takes: [1, 2, 3, 4, 5] });
    const stock = [1, 2, 3, 4, 5].map((left) => ({ component: `c${left}`, left }));
    expect(tableOf({ ...problem, stock }, [1])!.fewestTaken).toHaveLength(3);
  });
});
