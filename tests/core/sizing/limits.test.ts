import { describe, expect, test } from 'vitest';
import { range, type Range } from '#core/sizing/range.ts';
import type { Limits, SectionAt } from '#core/sizing/sizing.ts';
import { size } from '#core/sizing/size.ts';
import type { Design } from '#core/design/design.ts';
import { withEnds } from '#core/design/swap.ts';
import { section } from '../designs.ts';
import { asking, ENDS_MM, plain, run, within } from './plain.ts';

function known(piece: Design, toleranceMm = 1): Extract<Range, { status: 'known' }> {
  const found = range(piece, within(toleranceMm));
  if (found.status === 'refused') throw new Error(found.problem.code);
  return found;
}

/** Sections of one strand. */
const on = (strand: number, ...sections: readonly string[]): SectionAt[] =>
  sections.map((id) => ({ strand, section: id }));

const limitsOf = (piece: Design): Limits => known(piece).limits;

describe('what ends the sizes of a piece', () => {
  test('the sections that may change, each at its own end', () => {
    const piece = plain([
      {
        sections: [
          run('run', 'b6', [20, 10, 30]),
          run('still', 'b3', [4, 4, 4]),
          run('few', 'b2', [1, 0, 5]),
        ],
      },
    ]);
    expect(limitsOf(piece)).toEqual({
      leastMm: ENDS_MM + 60 + 12,
      mostMm: ENDS_MM + 180 + 12 + 10,
      leastAskedMm: ENDS_MM + 60 + 12,
      mostAskedMm: ENDS_MM + 180 + 12 + 10,
      leastBinds: on(0, 'run', 'few'),
      mostBinds: on(0, 'run', 'few'),
      mostStock: [],
    });
  });

  test('the stock, where one more repeat would need more of a component than is left', () => {
    const sections = [run('run', 'b6', [20, 10, 30]), run('few', 'b2', [1, 0, 5])];
    // 25 sixes: the run stops short, the few go on to their most.
    expect(limitsOf(plain([{ sections }], { b6: 25, b2: 9 }))).toMatchObject({
      mostMm: ENDS_MM + 150 + 10,
      mostBinds: on(0, 'few'),
      mostStock: ['b6'],
    });
    // 30 sixes are just enough: what ends it is the range.
    expect(limitsOf(plain([{ sections }], { b6: 30, b2: 5 }))).toMatchObject({
      mostMm: ENDS_MM + 180 + 10,
      mostBinds: on(0, 'run', 'few'),
      mostStock: [],
    });
  });

  test('of a repeat’s components the one that runs out, and not one that has just enough for one more', () => {
    const pair = section(
      'pair',
      [
        { component: 'b6', count: 1 },
        { component: 'b8', count: 1 },
      ],
      [10, 5, 20],
    );
    expect(limitsOf(plain([{ sections: [pair] }], { b6: 12, b8: 13 }))).toMatchObject({
      mostMm: ENDS_MM + 12 * 14,
      mostBinds: [],
      mostStock: ['b6'],
    });
  });

  test('not one that only a section at its most would run out of', () => {
    const piece = plain(
      [
        {
          sections: [
            section('fours', [{ component: 'b6', count: 4 }], [2, 0, 2]),
            section(
              'pairs',
              [
                { component: 'b6', count: 1 },
                { component: 'b3', count: 1 },
              ],
              [4, 0, 10],
            ),
          ],
          mirrored: false,
        },
      ],
      { b6: 15, b3: 5 },
    );
    // Thirteen sixes are in it: two are left, enough for two more pairs.
    expect(limitsOf(piece)).toMatchObject({
      mostMm: ENDS_MM + 48 + 45,
      mostBinds: on(0, 'fours'),
      mostStock: ['b3'],
    });
  });

  test('a remainder that is no whole repeat has run out too', () => {
    const pairs = plain([{ sections: [run('run', 'b6', [10, 5, 15])], mirrored: true }], { b6: 25 });
    // Twelve pairs take 24; the odd one is of no use.
    expect(limitsOf(pairs)).toMatchObject({ mostMm: ENDS_MM + 144, mostStock: ['b6'], mostBinds: [] });
  });

  test('of several strands the one that must be longest, and the one that can be least long', () => {
    const piece = plain([
      { sections: [run('sixes', 'b6', [45, 40, 60])] },
      { sections: [run('eights', 'b8', [40, 38, 43])] },
    ]);
    expect(limitsOf(piece)).toMatchObject({
      leastMm: ENDS_MM + 304,
      mostMm: ENDS_MM + 344,
      leastBinds: on(1, 'eights'),
      mostBinds: on(1, 'eights'),
    });
    const crossed = plain([
      { sections: [run('sixes', 'b6', [45, 40, 55])] },
      { sections: [run('eights', 'b8', [40, 38, 50])] },
    ]);
    expect(limitsOf(crossed)).toMatchObject({
      leastMm: ENDS_MM + 304,
      mostMm: ENDS_MM + 330,
      leastBinds: on(1, 'eights'),
      mostBinds: on(0, 'sixes'),
    });
  });

  test('sections of the same id by the strand that they stand on', () => {
    const piece = plain([
      { sections: [run('run', 'b6', [45, 40, 60])] },
      { sections: [run('run', 'b8', [40, 38, 43])] },
    ]);
    expect(limitsOf(piece)).toMatchObject({ leastBinds: on(1, 'run'), mostBinds: on(1, 'run') });
  });

  test('strands that share a stock end where it doesn’t reach for all of them', () => {
    const piece = plain(
      [{ sections: [run('one', 'b6', [45, 40, 60])] }, { sections: [run('other', 'b6', [45, 42, 60])] }],
      { b6: 95 },
    );
    // 47 for the one, 48 for the other.
    expect(limitsOf(piece)).toMatchObject({
      leastMm: ENDS_MM + 252,
      mostMm: ENDS_MM + 282,
      mostBinds: [],
      mostStock: ['b6'],
    });
  });
});

test('a stock too small for even the smallest names what is short, not what just reaches', () => {
  const sections = [run('six', 'b6', [5, 5, 9]), run('eight', 'b8', [5, 5, 9])];
  expect(range(plain([{ sections }], { b6: 5, b8: 4 }), within(1))).toEqual({
    status: 'refused',
    problem: { code: 'stock', component: 'b8', have: 4, need: 5 },
  });
});

describe('the sizes between', () => {
  test('one interval for each length, where a bead is longer than both tolerances', () => {
    const piece = plain([{ sections: [run('run', 'b20', [11, 10, 12])] }]);
    expect(known(piece, 4).intervals).toEqual([
      { fromMm: 224, toMm: 232 },
      { fromMm: 244, toMm: 252 },
      { fromMm: 264, toMm: 272 },
    ]);
    // Ten either way meet; the pieces are never further than that from a size between.
    expect(known(piece, 10).intervals).toEqual([{ fromMm: 218, toMm: 278 }]);
  });

  test('a chain fills what its length reaches', () => {
    const chained = withEnds(plain([{ sections: [run('run', 'b20', [11, 10, 12])] }]), { extenderMm: 5 });
    expect(known(chained, 4).intervals).toEqual([
      { fromMm: 224, toMm: 237 },
      { fromMm: 244, toMm: 257 },
      { fromMm: 264, toMm: 277 },
    ]);
  });

  test('of several strands what all of them meet', () => {
    const piece = plain([
      { sections: [run('twenties', 'b20', [11, 10, 12])] },
      { sections: [run('eights', 'b8', [28, 26, 30])] },
    ]);
    // Eights: 208, 216, 224, 232, 240; twenties: 200, 220, 240; each give or take 3.
    expect(known(piece, 3).intervals).toEqual([
      { fromMm: ENDS_MM + 217, toMm: ENDS_MM + 219 },
      { fromMm: ENDS_MM + 221, toMm: ENDS_MM + 223 },
      { fromMm: ENDS_MM + 237, toMm: ENDS_MM + 243 },
    ]);
  });

  test('as necks: what the sit adds taken off, and the foot of the neck turned back into its girth', () => {
    const { body, intervals } = known(plain([{ sections: [run('run', 'b20', [20, 20, 20])] }]));
    expect(intervals).toEqual([{ fromMm: 427, toMm: 429 }]);
    for (const sit of ['snug', 'easy', 'loose'] as const) {
      const [{ fromMm, toMm }] = body[sit] as [{ fromMm: number; toMm: number }];
      const piece = plain([{ sections: [run('run', 'b20', [20, 20, 20])] }]);
      const asked = (mm: number): string =>
        size(piece, within(1), 4800, asking(0, { measure: { of: 'neck', mm }, sit })).status;
      expect([asked(fromMm - 0.1), asked(fromMm + 0.1), asked(toMm - 0.1), asked(toMm + 0.1)]).toEqual([
        'outside',
        'fits',
        'fits',
        'outside',
      ]);
    }
  });
});
