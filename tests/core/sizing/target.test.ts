import { describe, expect, test } from 'vitest';
import { neckBase } from '#core/body/neckBase.ts';
import type { Choice, Measure } from '#core/design/choice.ts';
import { askedOf, choiceProblem, targetOf } from '#core/sizing/target.ts';
import type { PieceKind } from '#core/design/design.ts';
import { rules } from '../designs.ts';

type Of = Measure['of'];

function choice(of: Of, mm: number, over: Partial<Choice> = {}): Choice {
  return { measure: { of, mm }, sit: 'easy', hand: 'left', pick: 'best', quantity: 1, ...over };
}

const MEASURED: readonly [PieceKind, Of, least: number, most: number][] = [
  ['bracelet', 'wrist', 80, 300],
  ['anklet', 'ankle', 110, 400],
  ['collar', 'neck', 180, 650],
  ['necklace', 'neck', 180, 650],
  ['necklace', 'length', 200, 3000],
];

describe.each(MEASURED)('a %s by %s', (kind, of, least, most) => {
  test('from the least to the most that can be meant, both included', () => {
    expect(choiceProblem(kind, choice(of, least))).toBeNull();
    expect(choiceProblem(kind, choice(of, most))).toBeNull();
    for (const mm of [least - 0.1, most + 0.1]) {
      expect(choiceProblem(kind, choice(of, mm))).toEqual({
        code: 'measure-absurd',
        mm,
        leastMm: least,
        mostMm: most,
      });
    }
  });

  test('what is asked comes back from what is fitted', () => {
    for (const sit of ['snug', 'easy', 'loose'] as const) {
      const fitted = targetOf(rules, kind, of, least + 10, sit);
      expect(askedOf(rules, kind, of, fitted, sit)).toBeCloseTo(least + 10, 9);
    }
  });
});

test('each kind is sized by its own measures only', () => {
  const kinds = ['bracelet', 'anklet', 'collar', 'necklace'] as const;
  const taken = kinds.map((kind) =>
    (['wrist', 'ankle', 'neck', 'length'] as const).filter(
      (of) => choiceProblem(kind, choice(of, 250)) === null,
    ),
  );
  expect(taken).toEqual([['wrist'], ['ankle'], ['neck'], ['neck', 'length']]);
});

test('one to a thousand pieces', () => {
  for (const quantity of [1, 1000]) {
    expect(choiceProblem('bracelet', choice('wrist', 165, { quantity }))).toBeNull();
  }
  for (const [quantity, shown] of [
    [0, 0],
    [1001, 1001],
    [2.5, 2.5],
    [NaN, 0],
    [Infinity, 0],
  ] as const) {
    expect(choiceProblem('bracelet', choice('wrist', 165, { quantity }))).toEqual({
      code: 'quantity',
      quantity: shown,
    });
  }
});

test.each<[unknown, object]>([
  [undefined, { code: 'choice', field: 'measure' }],
  [null, { code: 'choice', field: 'measure' }],
  [
    { ...choice('wrist', 165), measure: 165 },
    { code: 'choice', field: 'measure' },
  ],
  [
    { ...choice('wrist', 165), sit: undefined },
    { code: 'choice', field: 'sit' },
  ],
  [
    { ...choice('wrist', 165), hand: 'right hand' },
    { code: 'choice', field: 'hand' },
  ],
  [
    { ...choice('wrist', 165), pick: '' },
    { code: 'choice', field: 'pick' },
  ],
  [choice(7 as never, 165), { code: 'choice', field: 'measure' }],
  [choice('length', 165), { code: 'measure-wrong-kind', of: 'length', kind: 'bracelet' }],
  [choice('wrist', '165' as never), { code: 'measure-not-positive', mm: 0 }],
  [choice('wrist', NaN), { code: 'measure-not-positive', mm: 0 }],
  [choice('wrist', -1), { code: 'measure-not-positive', mm: -1 }],
  [choice('wrist', 0), { code: 'measure-not-positive', mm: 0 }],
  [choice('wrist', Infinity), { code: 'measure-absurd', mm: Number.MAX_VALUE, leastMm: 80, mostMm: 300 }],
])('%j is no choice, and why', (asked, problem) => {
  expect(choiceProblem('bracelet', asked as Choice)).toEqual(problem);
});

test.each(['snug', 'easy', 'loose'] as const)('every hand and pick is taken at a %s sit', (sit) => {
  for (const hand of ['left', 'right'] as const)
    for (const pick of ['best', 'below', 'above'] as const)
      expect(choiceProblem('bracelet', choice('wrist', 165, { sit, hand, pick }))).toBeNull();
});

describe('what a sit adds', () => {
  test('to a girth, giving the inside girth; to the foot of the neck, giving the length; to a length nothing', () => {
    expect(targetOf(rules, 'bracelet', 'wrist', 165, 'loose')).toBe(190);
    expect(targetOf(rules, 'collar', 'neck', 350, 'snug')).toBe(358);
    expect(targetOf(rules, 'necklace', 'neck', 350, 'loose')).toBe(neckBase(350).mm + 90);
    expect(targetOf(rules, 'necklace', 'length', 450, 'loose')).toBe(450);
    expect(askedOf(rules, 'necklace', 'length', 450, 'loose')).toBe(450);
    expect(askedOf(rules, 'bracelet', 'wrist', 190, 'loose')).toBe(165);
  });

  test('nothing where the shop’s rule is no number', () => {
    const broken = {
      ...rules,
      easeMm: { ...rules.easeMm, bracelet: { snug: NaN, easy: Infinity, loose: 25 } },
    };
    expect(targetOf(broken, 'bracelet', 'wrist', 165, 'snug')).toBe(165);
    expect(targetOf(broken, 'bracelet', 'wrist', 165, 'easy')).toBe(165);
    expect(askedOf(broken, 'bracelet', 'wrist', 165, 'snug')).toBe(165);
  });
});
