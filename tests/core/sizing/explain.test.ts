import { describe, expect, test } from 'vitest';
import { explainPiece, type Explained, type Measurement } from '#core/sizing/explain.ts';
import type { Explanation } from '#core/solver/explain.ts';
import type { Design } from '#core/design/design.ts';
import { focalBracelet } from '../designs.ts';
import { ENDS_MM, plain, run } from './plain.ts';

const sixes = plain([{ sections: [run('run', 'b6', [50, 40, 60])] }]);
const lengths = (mm: number, over: Partial<Measurement> = {}): Measurement => ({
  of: 'length',
  mm,
  sdMm: 1,
  estimates: null,
  ...over,
});

function told(piece: Design, found: Measurement, strand = 0): readonly Explanation[] {
  const explained = explainPiece(piece, strand, found);
  if (explained.status !== 'explained') throw new Error(explained.problem.code);
  return explained.explanations;
}

describe('refused with its reason', () => {
  const refused = (mm: number): Explained => ({
    status: 'refused',
    problem: { code: 'measure-not-positive', mm },
  });

  test.each<[string, Partial<Measurement>, number]>([
    ['no length', { mm: 0 }, 0],
    ['less than none', { mm: -3 }, -3],
    ['an endless one', { mm: Infinity }, 0],
    ['no number', { mm: NaN }, 0],
    ['a spread below none', { sdMm: -0.1 }, 300],
    ['an endless spread', { sdMm: Infinity }, 300],
    ['too few counts', { estimates: [] }, 300],
    [
      'too many counts',
      {
        estimates: [
          { count: 1, sd: 1 },
          { count: 1, sd: 1 },
        ],
      },
      300,
    ],
    ['half a repeat', { estimates: [{ count: 1.5, sd: 1 }] }, 300],
    ['less than no repeat', { estimates: [{ count: -1, sd: 1 }] }, 300],
    ['more repeats than a section may have', { estimates: [{ count: 1001, sd: 1 }] }, 300],
    ['a count surer than sure', { estimates: [{ count: 50, sd: -1 }] }, 300],
    ['a count that is none', { estimates: [{ count: 50, sd: 101 }] }, 300],
  ])('%s', (_, over, mm) => {
    expect(explainPiece(sixes, 0, lengths(300, over))).toEqual(refused(mm));
  });

  test('one count of several that is none', () => {
    const two = plain([{ sections: [run('run', 'b6', [50, 40, 60]), run('few', 'b3', [2, 0, 4])] }]);
    const estimates = [
      { count: 50, sd: 1 },
      { count: 2.5, sd: 1 },
    ];
    expect(explainPiece(two, 0, lengths(300, { estimates }))).toEqual(refused(300));
  });

  test('a strand that isn’t there', () => {
    expect(explainPiece(sixes, 1, lengths(300))).toEqual(refused(300));
  });

  test('a design with a fault, and it is the fault that is named', () => {
    expect(explainPiece({ ...sixes, components: {} }, 0, lengths(300))).toMatchObject({
      status: 'refused',
      problem: {
        code: 'design',
        problems: expect.arrayContaining([
          {
            code: 'unknown-component',
            at: expect.any(String) as string,
            component: expect.any(String) as string,
          },
        ]) as object[],
      },
    });
  });

  test('counting so loose that the search would not end', () => {
    const many = plain([
      {
        sections: Array.from({ length: 12 }, (_, at) =>
          run(`s${at}`, at % 2 === 0 ? 'b6' : 'b8', [40, 0, 80]),
        ),
      },
    ]);
    const estimates = many.strands[0]!.sections.map(() => ({ count: 500, sd: 100 }));
    expect(explainPiece(many, 0, lengths(30_000, { estimates }))).toEqual({
      status: 'refused',
      problem: { code: 'search-limit' },
    });
  });
});

describe('taken', () => {
  test('the bounds themselves', () => {
    expect(told(sixes, lengths(ENDS_MM + 300, { sdMm: 0 }))[0]).toMatchObject({ counts: [50], offMm: 0 });
    const sure = [{ count: 0, sd: 0 }];
    expect(told(sixes, lengths(ENDS_MM, { estimates: sure }))).toMatchObject([{ counts: [0], share: 1 }]);
    const most = [{ count: 1000, sd: 0 }];
    expect(told(sixes, lengths(ENDS_MM + 6000, { estimates: most }))).toMatchObject([{ counts: [1000] }]);
    const loose = [{ count: 50, sd: 100 }];
    expect(told(sixes, lengths(ENDS_MM + 420, { estimates: loose }))[0]).toMatchObject({ counts: [70] });
  });

  test('ten explanations at the most', () => {
    expect(told(sixes, lengths(ENDS_MM + 300, { sdMm: 20 }))).toHaveLength(10);
  });

  test('at a glance a count is off by 15 %, by one at least, and a focal by nothing', () => {
    // 50 at a glance: a standard deviation of 7.5, so up to 30 either way; 20 more are told, 40 more aren't.
    expect(told(sixes, lengths(ENDS_MM + 420))[0]).toMatchObject({ counts: [70], offMm: 0 });
    expect(told(sixes, lengths(ENDS_MM + 540))[0]).toMatchObject({ counts: [80] });
    // 5 at a glance: 0.75, so one is taken, and four either way.
    const few = plain([{ sections: [run('few', 'b20', [5, 5, 5])] }]);
    expect(told(few, lengths(ENDS_MM + 180))[0]).toMatchObject({ counts: [9] });
    expect(told(few, lengths(ENDS_MM + 220))[0]).toMatchObject({ counts: [9] });
    for (const { counts } of told(focalBracelet, lengths(400))) expect(counts[0]).toBe(1);
  });

  test('by girth as by length', () => {
    const girth = told(focalBracelet, { of: 'girth', mm: 170, sdMm: 1, estimates: null });
    const length = told(focalBracelet, { of: 'length', mm: 170, sdMm: 1, estimates: null });
    expect(Math.abs(girth[0]!.measuresMm - 170)).toBeLessThan(3);
    // A loop is longer than its inside is round, so the same figure as a length means fewer beads.
    const beads = ([first]: readonly Explanation[]): number =>
      first!.counts.reduce((sum, count) => sum + count, 0);
    expect(beads(length)).toBeLessThan(beads(girth));
  });

  test('of several strands the one that is asked about', () => {
    const two = plain([
      { sections: [run('sixes', 'b6', [50, 40, 60])] },
      { sections: [run('eights', 'b8', [40, 30, 50])] },
    ]);
    expect(told(two, lengths(ENDS_MM + 328), 1)[0]).toMatchObject({ counts: [41], offMm: 0 });
  });
});
