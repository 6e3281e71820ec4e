import { describe, expect, test } from 'vitest';
import { neckBase } from '#core/body/neckBase.ts';
import { verifySizing } from '#core/verify/sizing.ts';
import type { Choice } from '#core/design/choice.ts';
import { explainPiece } from '#core/sizing/explain.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import type { Sizing } from '#core/sizing/sizing.ts';
import type { Rules } from '#core/design/rules.ts';
import { describe as describePiece } from '#core/sizing/usual.ts';
import type { Design } from '#core/design/design.ts';
import {
  ball,
  design,
  focalBracelet,
  necklace,
  rules,
  section,
  stocked,
  strand,
  strict,
  tubeBracelet,
} from '../designs.ts';

type Of = Choice['measure']['of'];

function ask(of: Of, mm: number, over: Partial<Choice> = {}): Choice {
  return { measure: { of, mm }, sit: 'easy', hand: 'left', pick: 'best', quantity: 1, ...over };
}

const sized = (piece: Design, choice: Choice, by: Rules = rules): Sizing => size(piece, by, 4800, choice);

describe('targets', () => {
  test('a bracelet: the girth with what the sit adds', () => {
    for (const [sit, mm] of [
      ['snug', 171],
      ['easy', 178],
      ['loose', 190],
    ] as const) {
      const sizing = sized(focalBracelet, ask('wrist', 165, { sit }));
      expect(sizing).toMatchObject({ fitted: 'girth', targetMm: mm, toleranceMm: 3, status: 'fits' });
    }
  });

  test('a necklace for a neck: the expected neck base with what the sit adds', () => {
    const sizing = sized(necklace, ask('neck', 350));
    expect(sizing).toMatchObject({ fitted: 'length', targetMm: neckBase(350).mm + 40 });
  });

  test('a necklace by its length', () => {
    expect(sized(necklace, ask('length', 444.5))).toMatchObject({ fitted: 'length', targetMm: 444.5 });
  });
});

describe('refused', () => {
  test.each<[string, Choice, object]>([
    ['nothing', ask('wrist', 0), { code: 'measure-not-positive', mm: 0 }],
    ['less than nothing', ask('wrist', -5), { code: 'measure-not-positive', mm: -5 }],
    ['no number', ask('wrist', NaN), { code: 'measure-not-positive', mm: 0 }],
    ['inches taken for millimetres', ask('wrist', 6.5), { code: 'measure-absurd', leastMm: 80, mostMm: 300 }],
    ['endless', ask('wrist', Infinity), { code: 'measure-absurd' }],
    ['a neck for a bracelet', ask('neck', 350), { code: 'measure-wrong-kind', of: 'neck', kind: 'bracelet' }],
    ['a length for a bracelet', ask('length', 180), { code: 'measure-wrong-kind' }],
    ['no pieces', ask('wrist', 165, { quantity: 0 }), { code: 'quantity', quantity: 0 }],
    ['half a piece', ask('wrist', 165, { quantity: 1.5 }), { code: 'quantity', quantity: 1.5 }],
    ['too many', ask('wrist', 165, { quantity: 1001 }), { code: 'quantity' }],
    ['an unknown sit', ask('wrist', 165, { sit: 'tight' as 'snug' }), { code: 'choice', field: 'sit' }],
    ['an unknown hand', ask('wrist', 165, { hand: 'both' as 'left' }), { code: 'choice', field: 'hand' }],
    ['an unknown pick', ask('wrist', 165, { pick: 'worst' as 'best' }), { code: 'choice', field: 'pick' }],
    ['no measure', { ...ask('wrist', 165), measure: null as never }, { code: 'choice', field: 'measure' }],
  ])('%s', (_, choice, problem) => {
    expect(sized(focalBracelet, choice)).toMatchObject({ status: 'refused', problem });
  });

  test('a design with a fault', () => {
    const broken = { ...focalBracelet, components: {} };
    expect(sized(broken, ask('wrist', 165))).toMatchObject({
      status: 'refused',
      problem: { code: 'design' },
    });
    expect(range(broken, rules)).toMatchObject({ status: 'refused', problem: { code: 'design' } });
  });

  test('a stock that does not reach for the smallest piece', () => {
    const scarce = stocked(focalBracelet, { six: 5 });
    expect(sized(scarce, ask('wrist', 165))).toMatchObject({
      status: 'refused',
      problem: { code: 'stock', component: 'six', have: 5, need: 6 },
    });
    expect(range(scarce, rules)).toMatchObject({ problem: { code: 'stock', component: 'six' } });
  });
});

describe('outside and near', () => {
  test('beyond the largest: the limits, what ends them, the piece at the limit', () => {
    const sizing = sized(focalBracelet, ask('wrist', 260));
    expect(sizing).toMatchObject({ status: 'outside', side: 'above' });
    if (sizing.status !== 'outside') return;
    expect(sizing.nearest.counts).toEqual([[1, 7, 10, 4]]);
    expect(sizing.limits.mostMm).toBeCloseTo(sizing.nearest.insideGirthMm, 5);
    expect(sizing.limits.mostAskedMm).toBeCloseTo(sizing.limits.mostMm - 13, 9);
    const all = ['pairs', 'run', 'filler'].map((id) => ({ strand: 0, section: id }));
    expect(sizing.limits.mostBinds).toEqual(all);
    expect(sizing.limits.leastBinds).toEqual(all);
    expect(sizing.limits.mostStock).toEqual([]);
  });

  test('short of the smallest', () => {
    expect(sized(tubeBracelet, ask('wrist', 90))).toMatchObject({
      status: 'outside',
      side: 'below',
      nearest: { counts: [[5, 0]] },
    });
  });

  test('where the stock ends it, that is said, and what would help', () => {
    const sizing = sized(stocked(tubeBracelet, { three: 6 }), ask('wrist', 240));
    expect(sizing).toMatchObject({ status: 'outside', limits: { mostStock: ['three'] } });
    expect(sizing).toMatchObject({
      help: expect.arrayContaining([{ code: 'more-stock', component: 'three', count: 4 }]),
    });
  });

  test('the stock is shared by the pieces of an order', () => {
    const one = sized(stocked(tubeBracelet, { three: 12 }), ask('wrist', 240));
    const two = sized(stocked(tubeBracelet, { three: 12 }), ask('wrist', 240, { quantity: 2 }));
    expect(one.status).toBe('fits');
    expect(two).toMatchObject({ status: 'outside', limits: { mostStock: ['three'] } });
  });

  test('near: below and above, and the pick among them', () => {
    const near = sized(necklace, ask('length', 443), strict);
    expect(near).toMatchObject({ status: 'near', below: { fittedMm: 442 }, above: { fittedMm: 446 } });
    expect(verifySizing(necklace, near)).toEqual([]);
    for (const [pick, mm] of [
      ['below', 442],
      ['above', 446],
    ] as const) {
      expect(sized(necklace, ask('length', 443, { pick }), strict)).toMatchObject({
        chosen: { fittedMm: mm },
      });
    }
  });

  test('one more bead a side would do: it is named, with how near it comes', () => {
    const sizing = sized(tubeBracelet, ask('wrist', 250), {
      ...rules,
      toleranceMm: { ...rules.toleranceMm, bracelet: 0.5 },
    });
    expect(sizing).toMatchObject({ status: 'outside' });
    if (sizing.status !== 'outside') return;
    expect(sizing.help).toContainEqual({
      code: 'add-component',
      strand: 0,
      component: 'three',
      count: 1,
      sides: 2,
      offMm: expect.closeTo(-0.368, 3),
    });
    expect(sizing.help).toContainEqual({
      code: 'widen-section',
      strand: 0,
      section: 'filler',
      repeats: 1,
      offMm: expect.closeTo(-0.368, 3),
    });
  });
});

describe('several strands', () => {
  const beads = [ball('four', 4), ball('eight', 8), ball('three', 3)];
  const small = strand('small', [section('a', [{ component: 'four', count: 1 }], [20, 10, 30])]);
  const large = strand('large', [
    section('b', [{ component: 'eight', count: 1 }], [10, 6, 14]),
    section('c', [{ component: 'three', count: 1 }], [1, 0, 6], 'filler'),
  ]);
  const two = design('bracelet', [small, large], beads);

  test('side by side share one inside girth, each fitted alone', () => {
    const sizing = sized(two, ask('wrist', 165));
    expect(sizing).toMatchObject({ status: 'fits' });
    if (sizing.status !== 'fits') return;
    for (const index of [0, 1]) {
      const alone = describePiece({ ...two, strands: [two.strands[index]!] }, rules, 4800, [
        sizing.best.counts[index]!,
      ]);
      expect(Math.abs(alone.insideGirthMm - 178)).toBeLessThanOrEqual(3);
    }
    expect(verifySizing(two, sizing)).toEqual([]);
  });

  test('share one stock: what the first takes the second has not', () => {
    const shared = design('bracelet', [small, { ...small, id: 'other' }], beads);
    const sizing = sized(stocked(shared, { four: 84 }), ask('wrist', 165), strict);
    expect(verifySizing(stocked(shared, { four: 84 }), sizing).map(({ code }) => code)).not.toContain(
      'stock',
    );
  });

  test('nested: the outer hangs clear of the inner', () => {
    const nested = design(
      'necklace',
      [
        strand('inner', [section('a', [{ component: 'eight', count: 1 }], [24, 18, 34])]),
        strand('outer', [
          section('b', [{ component: 'eight', count: 1 }], [25, 18, 44]),
          section('c', [{ component: 'three', count: 1 }], [0, 0, 6], 'filler'),
        ]),
      ],
      beads,
      { lie: 'nested', nestGapMm: 12 },
    );
    const sizing = sized(nested, ask('length', 430));
    expect(sizing.status).toBe('fits');
    if (sizing.status !== 'fits') return;
    const [inner, outer] = sizing.best.sequences.map((sequence) => sequence.length);
    expect(outer!).toBeGreaterThan(inner!);
    expect(sizing.best.fittedMm).toBeLessThan(sizing.best.finishedLengthMm);
    // Twenty millimetres lower takes about forty more of length, but for the way round the neck.
    expect(sizing.best.finishedLengthMm - sizing.best.fittedMm).toBeGreaterThan(25);
  });
});

describe('from the finished piece back to its counts', () => {
  test('the right counts come first', () => {
    const counts = [[1, 6, 3, 2]];
    const made = describePiece(focalBracelet, rules, 4800, counts);
    const explained = explainPiece(focalBracelet, 0, {
      of: 'length',
      mm: made.finishedLengthMm,
      sdMm: 0.5,
      estimates: [
        { count: 1, sd: 0 },
        { count: 6, sd: 0.5 },
        { count: 3, sd: 1 },
        { count: 1, sd: 1 },
      ],
    });
    expect(explained.status).toBe('explained');
    if (explained.status !== 'explained') return;
    expect(explained.explanations[0]).toMatchObject({ counts: counts[0], offMm: 0 });
    const shares = explained.explanations.map(({ share }) => share);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
  });

  test('a girth explains as well, at a glance', () => {
    const made = describePiece(tubeBracelet, rules, 4800, [[7, 3]]);
    const explained = explainPiece(tubeBracelet, 0, {
      of: 'girth',
      mm: made.insideGirthMm,
      sdMm: 1,
      estimates: null,
    });
    expect(explained).toMatchObject({ status: 'explained' });
    if (explained.status !== 'explained') return;
    expect(explained.explanations.slice(0, 2).map(({ counts }) => counts)).toContainEqual([7, 3]);
  });

  test('refuses what is no measure', () => {
    const found = { of: 'length', mm: -1, sdMm: 1, estimates: null } as const;
    expect(explainPiece(focalBracelet, 0, found)).toMatchObject({ status: 'refused' });
    expect(explainPiece(focalBracelet, 3, { ...found, mm: 100 })).toMatchObject({ status: 'refused' });
    expect(explainPiece(focalBracelet, 0, { ...found, mm: 100, estimates: [] })).toMatchObject({
      status: 'refused',
    });
  });
});
