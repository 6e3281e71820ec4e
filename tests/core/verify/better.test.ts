/** The verifier's own search: what it must find, and what it must not. */
import { describe, expect, test } from 'vitest';
import { betterChoice, type Wanted } from '#core/verify/better.ts';
import { lengthOf } from '#core/verify/candidate.ts';
import { strung as strungOf } from '#core/verify/parts.ts';
import { offMm } from '#core/verify/strand.ts';
import type { Design } from '#core/design/design.ts';
import { ball, design, section, strand, stocked } from '../designs.ts';

const one = (id: string) => [{ component: id, count: 1 }];
/**
 * Balls of 5 and 2.3 mm in sections of their own: no two choices that differ by
 * fewer than 23 repeats measure the same.
 */
const necklace = (most: number, strands = 1, threesMm = 2.3): Design => {
  const strung = (id: string) =>
    strand(
      id,
      [section('fives', one('five'), [10, 0, most]), section('threes', one('three'), [10, 0, most])],
      false,
    );
  const beads = [ball('five', 5), ball('three', threesMm)];
  return design(
    'necklace',
    Array.from({ length: strands }, (_, at) => strung(`s${at}`)),
    beads,
    {
      lie: strands === 1 ? 'single' : 'side-by-side',
    },
  );
};

const asking = (targetsMm: readonly number[], pieces = 1): Wanted => ({
  fitted: 'length',
  targetsMm,
  toleranceMm: 0.05,
  pieces,
});
const target = (counts: readonly [number, number], piece = necklace(20)): number =>
  lengthOf(piece, strungOf(piece.strands[0]!, counts), 0);

describe.each([
  ['every choice', 20],
  // 501 × 501 choices are more than are written out: tried near the answer, two sections at a time.
  ['choices near the answer', 500],
])('of one strand, %s', (_, most) => {
  const piece = necklace(most);

  test('a repeat more of either section, and of both at once', () => {
    for (const better of [
      [11, 10],
      [10, 11],
      [12, 8],
      [9, 12],
    ] as const) {
      const wanted = target(better);
      const found = betterChoice(piece, [[10, 10]], asking([wanted]));
      // Any that is nearer will do: the verifier shows that the answer isn't the best.
      const offMm = (counts: readonly number[]): number =>
        Math.abs(target(counts as [number, number], piece) - wanted);
      expect(offMm(found![0]!)).toBeLessThan(offMm([10, 10]));
    }
  });

  test('nothing where the answer is met and changes nothing', () => {
    expect(betterChoice(piece, [[10, 10]], asking([target([10, 10])]))).toBe(null);
  });

  test('the one that changes less', () => {
    // Half as long each: two fewer of these are as long as one more of those.
    const even = necklace(most, 1, 2.5);
    expect(betterChoice(even, [[11, 8]], asking([target([11, 8], even)]))).toEqual([[10, 10]]);
  });

  test('within the range of its sections only', () => {
    const narrow = necklace(10);
    expect(betterChoice(narrow, [[10, 10]], asking([target([11, 10])]))).toBe(null);
  });
});

describe('out of a stock', () => {
  const wanted = asking([target([11, 10])]);
  const fives = (found: readonly (readonly number[])[] | null): number =>
    (found ?? []).reduce((sum, counts) => sum + counts[0]!, 0);

  test('only as far as it goes, for all pieces together', () => {
    const tried = (five: number, pieces = 1) =>
      betterChoice(stocked(necklace(20), { five }), [[10, 10]], { ...wanted, pieces });
    for (const [five, pieces, most] of [
      [10, 1, 10],
      [3, 1, 3],
      [21, 2, 10],
      [19, 2, 9],
    ] as const) {
      expect(fives(tried(five, pieces)), `${five} for ${pieces}`).toBeLessThanOrEqual(most);
    }
    expect(betterChoice(stocked(necklace(20), { five: 10, three: 10 }), [[10, 10]], wanted)).toBe(null);
    expect(fives(betterChoice(stocked(necklace(20), { five: 11, three: 10 }), [[10, 10]], wanted))).toBe(11);
    expect(
      betterChoice(stocked(necklace(20), { five: 21, three: 20 }), [[10, 10]], { ...wanted, pieces: 2 }),
    ).toBe(null);
  });

  test('of two strands: the odd bead is worth more to the one that needs it', () => {
    const piece = stocked(necklace(12, 2), { five: 21, three: 20 });
    const both = asking([target([11, 10]), target([10, 10])]);
    const found = betterChoice(
      piece,
      [
        [10, 10],
        [11, 10],
      ],
      both,
    );
    expect(fives(found)).toBeLessThanOrEqual(21);
    expect(
      betterChoice(
        piece,
        [
          [11, 10],
          [10, 10],
        ],
        both,
      ),
    ).toBe(null);
  });

  test('findings are taken out of it first', () => {
    const tried = (crimp: number) => betterChoice(stocked(necklace(20), { crimp }), [[10, 10]], wanted);
    expect(tried(2)).not.toBe(null);
    expect(tried(1)).toBe(null);
  });
});

describe('what is preferred', () => {
  /** Strands of one section of beads of 1 mm, from none to twenty. */
  const rows = (strands: number, stock: number | null = null, extenderMm = 0): Design => {
    const row = (id: string) => strand(id, [section('row', one('seed'), [10, 0, 20])], false);
    const piece = design(
      'necklace',
      Array.from({ length: strands }, (_, at) => row(`s${at}`)),
      [ball('seed', 1)],
      { lie: strands === 1 ? 'single' : 'side-by-side' },
    );
    const chained = { ...piece, ends: { ...piece.ends, extenderMm } };
    return stock === null ? chained : stocked(chained, { seed: stock });
  };
  const findingsMm = lengthOf(rows(1), strungOf(rows(1).strands[0]!, [0]), 0);
  const wanting = (...beadsMm: number[]): Wanted => asking(beadsMm.map((mm) => findingsMm + mm));

  test('that no strand is far off, before the sum', () => {
    // Twenty beads where both want fourteen: four short each, rather than one eight short.
    const piece = rows(2, 20);
    expect(betterChoice(piece, [[10], [10]], wanting(14, 14))).toBe(null);
    for (const uneven of [14, 12, 11]) {
      const found = betterChoice(piece, [[uneven], [20 - uneven]], wanting(14, 14));
      expect(Math.min(...found!.map(([count]) => count!))).toBeGreaterThan(20 - uneven);
    }
  });

  test('the sum, where the furthest is as far off either way', () => {
    // The first strand ends at twenty and stays five short, whatever the other does.
    const piece = rows(2);
    expect(betterChoice(piece, [[20], [5]], wanting(25, 5))).toBe(null);
    for (const other of [3, 4, 7]) {
      const found = betterChoice(piece, [[20], [other]], wanting(25, 5));
      expect(Math.abs(found![1]![0]! - 5)).toBeLessThan(Math.abs(other - 5));
    }
  });

  test('that no strand is far off, though the sum is the same and less is changed', () => {
    const usual = (id: string, count: number) =>
      strand(id, [section('row', one('seed'), [count, 0, 20])], false);
    const beads = [ball('seed', 1)];
    const piece = stocked(
      design('necklace', [usual('a', 14), usual('b', 6)], beads, { lie: 'side-by-side' }),
      {
        seed: 20,
      },
    );
    const wanted = { ...wanting(14, 14), toleranceMm: 0 };
    const found = betterChoice(piece, [[14], [6]], wanted);
    expect(Math.abs(found![0]![0]! - found![1]![0]!)).toBeLessThan(8);
    expect(betterChoice(piece, [[10], [10]], wanted)).toBe(null);
  });

  /** One strand of a bead of 10 mm or of one a little longer, and of others none. */
  const either = (longerMm: number, strands = 1): Design => {
    const pick = (id: string) =>
      strand(id, [section('ten', one('ten'), [1, 0, 1]), section('longer', one('longer'), [0, 0, 1])], false);
    const lone = (id: string) => strand(id, [section('ten', one('ten'), [1, 1, 1])], false);
    const beads = [ball('ten', 10), ball('longer', longerMm)];
    return design('necklace', [pick('a'), ...(strands === 1 ? [] : [lone('b')])], beads, {
      lie: strands === 1 ? 'single' : 'side-by-side',
    });
  };

  test('what is nearer by more than rounding, which may tell a hundredth wrong', () => {
    expect(betterChoice(either(10.01), [[1, 0]], wanting(10.3))).toBe(null);
    expect(betterChoice(either(10.02), [[1, 0]], wanting(10.3))).toEqual([[0, 1]]);
    // The same of the sum, where another strand is further off and stays so.
    const both = (longerMm: number) => betterChoice(either(longerMm, 2), [[1, 0], [1]], wanting(10.3, 11));
    expect(both(10.01)).toBe(null);
    expect(both(10.02)).toEqual([[0, 1], [1]]);
  });

  test('nothing that is as far off on the other side, though it changes less', () => {
    expect(betterChoice(either(10.6), [[0, 1]], wanting(10.3))).toBe(null);
    expect(betterChoice(either(10.6), [[0, 1]], { ...wanting(10.3), toleranceMm: 0.4 })).toEqual([[1, 0]]);
  });

  test('fewer changes, once all is met; and only then', () => {
    const chained = rows(1, null, 40);
    // The chain makes up for what either leaves.
    expect(betterChoice(chained, [[12]], wanting(30))).toEqual([[10]]);
    expect(betterChoice(chained, [[10]], wanting(30))).toBe(null);
    expect(betterChoice(chained, [[10]], wanting(50))).toBe(null);
    // Beyond the chain's end a bead counts again.
    expect(betterChoice(chained, [[10]], wanting(55))).not.toBe(null);
    expect(betterChoice(chained, [[15]], wanting(55))).toBe(null);
    // Several strands have no chain to count on.
    expect(betterChoice(rows(2, null, 40), [[10], [10]], wanting(15, 15))).not.toBe(null);
    // Nearer outside tolerance is better, though it changes more.
    expect(betterChoice(rows(1), [[10]], wanting(14))).not.toBe(null);
  });

  test('of bracelets, by what they measure inside', () => {
    const bracelet = design(
      'bracelet',
      [strand('only', [section('row', one('five'), [30, 20, 40])], false)],
      [ball('five', 5)],
    );
    const insideMm = (count: number): number => offMm(bracelet, 0, [count], 'girth', 0);
    const girth = (mm: number): Wanted => ({ ...asking([mm]), fitted: 'girth' });
    expect(betterChoice(bracelet, [[30]], girth(insideMm(30)))).toBe(null);
    expect(betterChoice(bracelet, [[30]], girth(insideMm(33)))).not.toBe(null);
    expect(betterChoice(bracelet, [[33]], girth(insideMm(33)))).toBe(null);
  });
});
