/** The verifier's own look at a loop: a sound one passes, each damage is named. */
import { describe, expect, test } from 'vitest';
import { solveLoop, type Part } from '#core/geometry/loop.ts';
import { leastDistanceMm, verifyLoop } from '#core/verify/loop.ts';

const ball = (mm: number): Part => ({ alongMm: mm, acrossMm: mm, roundingMm: mm / 2 });
const many = (count: number, part: Part): Part[] => new Array<Part>(count).fill(part);

describe('a loop', () => {
  const parts = [ball(20), ...many(30, ball(5)), { alongMm: 12, acrossMm: 6, roundingMm: 1 }];
  const loop = solveLoop(parts);

  test('passes a sound loop', () => expect(verifyLoop(parts, loop)).toEqual([]));

  test.each([
    ['radius', { ...loop, radiusMm: loop.radiusMm + 1e-4 }, 'inside-cylinder'],
    ['girth', { ...loop, insideGirthMm: loop.insideGirthMm + 1e-4 }, 'girth'],
    ['slack', { ...loop, slackMm: loop.slackMm + 1e-4 }, 'slack'],
    ['count', { ...loop, spots: loop.spots.slice(1) }, 'count'],
    ['no number', damaged({ placeRad: NaN }), 'not-a-number'],
    ['place', damaged({ placeRad: loop.spots[15]!.placeRad + 1e-4 }), 'not-touching'],
    ['axis', damaged({ axisRad: loop.spots[15]!.axisRad + 1e-4 }), 'axis-askew'],
    ['turn', damaged({ turnRad: loop.spots[15]!.turnRad + 1e-4 }), 'turn'],
    ['gap', damaged({ gapMm: loop.spots[15]!.gapMm + 1e-4 }), 'slack'],
    ['off', damaged({ radiusMm: loop.spots[15]!.radiusMm + 1e-4 }), 'off-cylinder'],
    ['in', damaged({ radiusMm: loop.spots[15]!.radiusMm - 1e-4 }), 'inside-cylinder'],
    ['lifted', damaged({ lifted: true }), 'chord-bent'],
    ['dent', dented(), 'corner-inwards'],
    ['way round', { ...loop, spots: loop.spots.toReversed() }, 'not-closed'],
  ])('finds damage to %s', (_, broken, code) => {
    expect(verifyLoop(parts, broken).map((fault) => fault.code)).toContain(code);
  });

  test('a loop that does not close is passed over', () => {
    expect(verifyLoop(parts, { ...loop, closes: false, spots: [] })).toEqual([]);
  });

  test('parts of no length have no spot', () => {
    const flat = { alongMm: 0, acrossMm: 5, roundingMm: 0 };
    expect(verifyLoop([flat, ...parts, flat], loop)).toEqual([]);
    expect(verifyLoop([flat, ...parts.slice(1)], loop)).toEqual([{ code: 'count', at: -1, by: 1 }]);
  });

  test('what is wrong of the loop as a whole is at no part', () => {
    const faults = verifyLoop(parts, {
      ...loop,
      insideGirthMm: loop.insideGirthMm + 1,
      slackMm: loop.slackMm + 2,
    });
    expect(faults.map(({ code, at }) => ({ code, at }))).toEqual([
      { code: 'girth', at: -1 },
      { code: 'slack', at: -1 },
    ]);
    expect(faults.map(({ by }) => Math.round(by))).toEqual([1, 2]);
  });

  /** One spot pressed in so far that its neighbours stand out beside it. */
  function dented(): typeof loop {
    return damaged({ radiusMm: loop.spots[15]!.radiusMm - 2, lifted: true });
  }

  function damaged(by: object): typeof loop {
    return { ...loop, spots: loop.spots.map((spot, at) => (at === 15 ? { ...spot, ...by } : spot)) };
  }
});

test('neighbours: balls keep their distance at any turn, tubes open on their rims', () => {
  expect(leastDistanceMm(ball(8), ball(4), 0.7)).toBeCloseTo(6, 12);
  const tube = { alongMm: 10, acrossMm: 6, roundingMm: 0 };
  expect(leastDistanceMm(tube, tube, 0)).toBe(10);
  expect(leastDistanceMm(tube, tube, 0.4)).toBeCloseTo(10 * Math.cos(0.2) + 6 * Math.sin(0.2), 12);
});

test('neighbours: rounding beyond the outline is cut back to it, along as across', () => {
  const wide = (alongMm: number, acrossMm: number): Part => ({ alongMm, acrossMm, roundingMm: 50 });
  expect(leastDistanceMm(wide(8, 8), ball(4), 0.7)).toBeCloseTo(6, 12);
  // A disc of 2 mm by 10 keeps a rim of half its thickness, a rod of 10 mm by 2 one of half its width.
  for (const [alongMm, acrossMm] of [
    [2, 10],
    [10, 2],
  ] as const) {
    const cut: Part = { alongMm, acrossMm, roundingMm: 1 };
    const [flat, rim] = [alongMm - 2, acrossMm - 2];
    const apart = flat * Math.cos(0.3) + rim * Math.sin(0.3) + 2;
    expect(leastDistanceMm(wide(alongMm, acrossMm), cut, 0.6)).toBeCloseTo(apart, 12);
  }
});
