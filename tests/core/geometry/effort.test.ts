/**
 * How much work closing a loop takes, in hulls drawn: a figure that
 * is the same on every machine, where a time is not. A change that reaches the
 * same radius only later shows here.
 */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { girthByRelaxing } from '#core/verify/girth.ts';
import { closeLoop } from '#core/geometry/close.ts';
import { solveLoop, type Part } from '#core/geometry/loop.ts';
import { outlinesOf } from '#core/geometry/junction.ts';
import { loadLoop, newWorkspace, type Workspace } from '#core/geometry/workspace.ts';
import { verifyLoop } from '#core/verify/loop.ts';

const drawn = vi.hoisted(() => ({ hulls: 0 }));

vi.mock('#core/geometry/hull.ts', async (original) => {
  const hull = await original<typeof import('#core/geometry/hull.ts')>();
  const drawHull: typeof hull.drawHull = (...given) => {
    drawn.hulls += 1;
    hull.drawHull(...given);
  };
  return { ...hull, drawHull };
});

beforeEach(() => {
  drawn.hulls = 0;
});

// Where the count is not in the way of what draws hulls, every test here would pass.
afterEach(() => expect(drawn.hulls).toBeGreaterThan(0));

const part = (alongMm: number, acrossMm: number, roundingMm = 0): Part => ({ alongMm, acrossMm, roundingMm });
const ball = (mm: number): Part => part(mm, mm, mm / 2);
const many = (count: number, ...parts: Part[]): Part[] => Array.from({ length: count }, () => parts).flat();

/** The strand, loaded to be closed. */
function loaded(parts: readonly Part[]): Workspace {
  const work = newWorkspace(parts.length);
  loadLoop(work, outlinesOf(parts), Int32Array.from(parts.keys()), parts.length);
  return work;
}

describe('strands as one meets them take few hulls', () => {
  test.each<[string, number, Part[]]>([
    ['balls', 4, many(40, ball(6))],
    ['a focal and balls', 6, [ball(24), ...many(36, ball(4))]],
    ['tubes', 4, many(16, part(10, 5))],
    ['discs', 4, many(60, part(2.5, 8))],
    ['balls and tubes in turn', 5, many(12, ball(8), part(3, 5))],
    ['balls that grow', 5, Array.from({ length: 30 }, (_, at) => ball(3 + at / 5))],
    ['barrels and balls in turn', 5, many(14, part(12, 8, 2), ball(3))],
    ['ten balls', 6, many(10, ball(10))],
    ['a focal, tubes and balls', 11, [ball(20), ...many(12, part(12, 4), ball(3))]],
    ['seven tubes', 7, many(7, part(12, 6))],
  ])('%s', (_, most, parts) => {
    const loop = solveLoop(parts);
    expect(loop.closes).toBe(true);
    expect(verifyLoop(parts, loop)).toEqual([]);
    expect(drawn.hulls).toBeLessThanOrEqual(most);
  });

  test('from a guess no more, and fewer where less will do', () => {
    const parts = [ball(24), ...many(36, ball(4))];
    const { radiusMm } = solveLoop(parts);
    const hullsFor = (startMm: number, stillMm: number): number => {
      drawn.hulls = 0;
      expect(closeLoop(loaded(parts), startMm, stillMm)).toBeCloseTo(radiusMm, stillMm > 1e-9 ? 5 : 11);
      return drawn.hulls;
    };
    expect(hullsFor(200, 1e-12)).toBeLessThanOrEqual(7);
    expect(hullsFor(1, 1e-12)).toBeLessThanOrEqual(7);
    expect(hullsFor(0, 1e-12)).toBeLessThanOrEqual(6);
    expect(hullsFor(24, 1e-6)).toBeLessThanOrEqual(5);
    expect(hullsFor(0, 1e-3)).toBeLessThanOrEqual(4);
    expect(hullsFor(radiusMm, 1e-6)).toBeLessThanOrEqual(2);
  });
});

test.each([
  ['a focal, tubes and balls', [ball(20), ...many(12, part(12, 4), ball(3))]],
  ['a rod, tubes, balls and discs', [part(30, 8), ...many(5, part(12, 6), ball(3), part(1, 9))]],
])('%s: where less will do, it is right to a hundredth of that', (_, parts) => {
  const { radiusMm } = solveLoop(parts);
  for (const stillMm of [1e-6, 1e-3, 0.02]) {
    for (const startMm of [0, radiusMm, radiusMm + 1]) {
      const found = closeLoop(loaded(parts), startMm, stillMm);
      expect(Math.abs(found - radiusMm)).toBeLessThanOrEqual(stillMm / 100);
    }
  }
});

/** A share more than now is somebody else's sine; more is a worse way. */
const MORE = 1.05;

describe('rings that the fixed-point iteration doesn’t settle on come out as another way of reckoning has it', () => {
  test.each<[string, number, Part[]]>([
    ['two tubes and a barrel', 86, [part(12.3, 3.8), part(12.6, 5.3, 2.65), part(12.3, 3.8)]],
    ['two tubes and a wide one', 98, [part(20.6, 9.9), part(20.6, 9.9), part(19, 26, 9.5)]],
    ['three rods and a wide one', 123, [...many(3, part(25.1, 1.9, 0.475)), part(12.9, 20, 6.45)]],
    ['two tubes and discs', 59, [...many(2, part(9.7, 13)), ...many(3, part(0.9, 24.7))]],
    ['discs and barrels in turn', 61, many(2, part(0.5, 18), part(25.3, 12.3, 6.15))],
    ['two barrels and a rod', 104, [...many(2, part(14.1, 19.5, 7.05)), part(11.8, 1)]],
    ['two rods and two blocks', 181, [part(4.8, 2.2), ...many(2, part(29.4, 27.7)), part(4.8, 2.2)]],
    ['two drums and a barrel', 132, [...many(2, part(10.2, 6.1, 1.525)), part(3.3, 8.9, 1.65)]],
    ['a block and three rods', 127, [part(24.7, 25.3), ...many(3, part(11, 1.4, 0.7))]],
    ['two blocks and discs', 56, [...many(2, part(16.4, 14.2)), ...many(5, part(0.5, 3.3, 0.125))]],
    // A chord of these all but crosses the axis.
    ['two tubes and a wide barrel', 128, [part(19.5, 27.1, 9.75), ...many(2, part(24.8, 11.1))]],
    ['two tubes and a wide disc', 97, [...many(2, part(14.5, 8.2)), part(3.2, 13.5, 0.8)]],
    ['two rods and a tube', 93, [...many(2, part(26.1, 0.9, 0.45)), part(13.7, 5)]],
    ['a barrel between two rods', 139, [part(29.6, 1.8, 0.9), part(12.4, 8.5, 4.25), part(29.6, 1.8, 0.9)]],
  ])('%s', (_, most, parts) => {
    const loop = solveLoop(parts);
    expect(Math.abs(loop.insideGirthMm - girthByRelaxing(parts))).toBeLessThan(1e-4);
    expect(verifyLoop(parts, loop)).toEqual([]);
    expect(drawn.hulls).toBeLessThanOrEqual(MORE * most);
  });

  test.each<[string, number, Part[]]>([
    ['at once, where no turns would bring it round', 12, [part(5, 90), ...many(3, ball(5))]],
    ['after a search', 1962, [part(4, 30), ...many(10, part(2, 2))]],
  ])('one too wide for the rest is given up: %s', (_, most, parts) => {
    expect(solveLoop(parts).closes).toBe(false);
    expect(drawn.hulls).toBeLessThanOrEqual(MORE * most);
  });
});
