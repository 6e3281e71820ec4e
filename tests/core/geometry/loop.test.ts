import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_LOOP_PARTS, solveLoop, type Part } from '#core/geometry/loop.ts';
import { verifyLoop } from '#core/verify/loop.ts';

const ball = (mm: number): Part => ({ alongMm: mm, acrossMm: mm, roundingMm: mm / 2 });
const sharp = (alongMm: number, acrossMm: number, roundingMm = 0): Part => ({
  alongMm,
  acrossMm,
  roundingMm,
});
const many = (count: number, part: Part): Part[] => new Array<Part>(count).fill(part);

/** Beads as one meets them: 1 to 14 mm either way, from sharp to round. */
const part: fc.Arbitrary<Part> = fc
  .record({
    alongMm: fc.integer({ min: 10, max: 140 }),
    acrossMm: fc.integer({ min: 10, max: 140 }),
    round: fc.constantFrom(0, 0.3, 1),
  })
  .map(({ alongMm, acrossMm, round }) => ({
    alongMm: alongMm / 10,
    acrossMm: acrossMm / 10,
    roundingMm: (round * Math.min(alongMm, acrossMm)) / 20,
  }));
/** All of them close. */
const strand = fc.array(part, { minLength: 12, maxLength: 50 });

describe('symmetries', () => {
  test('scaling every length scales the loop', () => {
    fc.assert(
      fc.property(strand, fc.constantFrom(0.25, 3, 25.4), (parts, scale) => {
        const scaled = parts.map(({ alongMm, acrossMm, roundingMm }) => ({
          alongMm: alongMm * scale,
          acrossMm: acrossMm * scale,
          roundingMm: roundingMm * scale,
        }));
        const [one, other] = [solveLoop(parts), solveLoop(scaled)];
        expect([one.closes, other.closes]).toEqual([true, true]);
        expect(other.insideGirthMm / scale).toBeCloseTo(one.insideGirthMm, 7);
        expect(other.slackMm / scale).toBeCloseTo(one.slackMm, 7);
      }),
    );
  });

  test('neither the way round nor the first part matters', () => {
    fc.assert(
      fc.property(strand, fc.nat(), (parts, turn) => {
        const first = turn % parts.length;
        const turned = [...parts.slice(first), ...parts.slice(0, first)];
        const girth = solveLoop(parts).insideGirthMm;
        expect(girth).toBeGreaterThan(0);
        expect(solveLoop(turned).insideGirthMm).toBeCloseTo(girth, 8);
        expect(solveLoop(parts.toReversed()).insideGirthMm).toBeCloseTo(girth, 8);
      }),
    );
  });

  test('spots come in the order of the parts, from the first one on', () => {
    fc.assert(
      fc.property(strand, (parts) => {
        const { spots } = solveLoop(parts);
        expect(spots).toHaveLength(parts.length);
        expect(spots[0]!.placeRad).toBe(0);
        for (let at = 1; at < spots.length; at += 1) {
          expect(spots[at]!.placeRad).toBeGreaterThanOrEqual(spots[at - 1]!.placeRad - 1e-9);
        }
      }),
    );
  });

  test('every loop lies as its definition says', () => {
    fc.assert(
      fc.property(strand, (parts) => {
        const loop = solveLoop(parts);
        expect(loop.closes).toBe(true);
        expect(verifyLoop(parts, loop)).toEqual([]);
      }),
    );
  });

  test('longer and longer the same strand grows', () => {
    fc.assert(
      fc.property(part, fc.integer({ min: 12, max: 80 }), (one, count) => {
        const [less, more] = [solveLoop(many(count, one)), solveLoop(many(count + 1, one))];
        expect(more.insideGirthMm).toBeGreaterThan(less.insideGirthMm);
      }),
    );
  });
});

describe('what lies on a chord', () => {
  const loop = solveLoop([ball(24), ...many(36, ball(4))]);

  test('beads beside a large one are lifted off the wrist, those opposite lie on it', () => {
    expect(loop.spots[0]!.lifted).toBe(false);
    expect(loop.spots[1]!.lifted).toBe(true);
    expect(loop.spots.at(-1)!.lifted).toBe(true);
    expect(loop.spots[18]!.lifted).toBe(false);
  });

  test('the rule of thumb, length less π diameters of the small beads, is far off', () => {
    expect(loop.lengthMm - 4 * Math.PI - loop.insideGirthMm).toBeGreaterThan(9);
  });
});

describe('no loop', () => {
  test.each([
    ['nothing', []],
    ['two balls', many(2, ball(8))],
    ['a negative length', [...many(20, ball(4)), { alongMm: -1, acrossMm: 2, roundingMm: 0 }]],
    ['no number', [...many(20, ball(4)), { alongMm: NaN, acrossMm: 2, roundingMm: 0 }]],
    ['no width', [...many(20, ball(4)), { alongMm: 2, acrossMm: 0, roundingMm: 0 }]],
    ['endless', [...many(20, ball(4)), { alongMm: Infinity, acrossMm: 2, roundingMm: 0 }]],
    ['eleven metres in one', [...many(20, ball(4)), { alongMm: 11_000, acrossMm: 2, roundingMm: 0 }]],
    ['too many', many(MOST_LOOP_PARTS + 1, ball(2))],
    ['one wide one and three thin tubes', [sharp(19.7, 24.9, 9.85), ...many(3, sharp(3, 1))]],
    ['a disc among tubes', [sharp(6, 1.9), sharp(1.5, 12), sharp(6, 1.9), sharp(6, 1.9)]],
    ['a wide one among tubes', [sharp(8.7, 2), sharp(16.5, 30), sharp(8.7, 2), sharp(8.7, 2)]],
    ['two tubes and a shorter', [sharp(13, 8, 4), sharp(13, 8, 4), sharp(3.7, 8.8)]],
    ['discs and a ball', [sharp(5, 28), sharp(20, 25, 10), sharp(5, 28)]],
    ['two discs and a wider', [sharp(2, 7), sharp(2, 7), sharp(4.7, 19.9)]],
    ['three that would overlap', [sharp(8, 11.2, 2), sharp(4, 18, 1), sharp(4, 18, 1)]],
  ])('%s', (_, parts) => {
    const loop = solveLoop(parts);
    expect(loop.closes).toBe(false);
    expect(loop.insideGirthMm).toBe(0);
    expect(loop.spots).toEqual([]);
  });

  test('a part of no length is passed over', () => {
    const parts = many(30, ball(6));
    const flat = { alongMm: 0, acrossMm: 5, roundingMm: 0 };
    expect(solveLoop([...parts, flat]).insideGirthMm).toBe(solveLoop(parts).insideGirthMm);
    expect(solveLoop([...parts, flat]).spots).toHaveLength(30);
  });

  test('rounding beyond the outline is cut back to it', () => {
    const parts = many(30, { alongMm: 6, acrossMm: 6, roundingMm: 50 });
    expect(solveLoop(parts).insideGirthMm).toBe(solveLoop(many(30, ball(6))).insideGirthMm);
  });
});

test('what holds a part that is none, or too many, has no length either', () => {
  const some = many(20, ball(8));
  const thin = sharp(1, 2, 0.5);
  for (const parts of [
    [...some, sharp(10_001, 5)],
    [...some, sharp(5, 10_001)],
    many(MOST_LOOP_PARTS + 1, thin),
  ]) {
    expect(solveLoop(parts)).toMatchObject({ closes: false, lengthMm: 0 });
  }
  expect(solveLoop(many(MOST_LOOP_PARTS, thin))).toMatchObject({ closes: true, lengthMm: MOST_LOOP_PARTS });
  expect(solveLoop([ball(8), ball(8)])).toMatchObject({ closes: false, lengthMm: 16 });
});
