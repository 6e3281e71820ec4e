/**
 * How much work closing a loop takes, in sweeps over the strand: a figure that
 * is the same on every machine, where a time is not. A change that reaches the
 * same radius only later shows here.
 */
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { girthByRelaxing } from '#core/verify/girth.ts';
import { closeTaut } from '#core/geometry/close.ts';
import { solveLoop, type Part } from '#core/geometry/loop.ts';
import { loadTaut, newTaut, outlinesOf, type Taut } from '#core/geometry/taut.ts';
import { verifyLoop } from '#core/verify/loop.ts';

const swept = vi.hoisted(() => ({ times: 0 }));

vi.mock('#core/geometry/taut.ts', async (original) => {
  const taut = await original<typeof import('#core/geometry/taut.ts')>();
  const sweep: typeof taut.sweep = (...given) => {
    swept.times += 1;
    taut.sweep(...given);
  };
  return { ...taut, sweep };
});

beforeEach(() => {
  swept.times = 0;
});

const part = (alongMm: number, acrossMm: number, roundingMm = 0): Part => ({ alongMm, acrossMm, roundingMm });
const ball = (mm: number): Part => part(mm, mm, mm / 2);
const many = (count: number, ...parts: Part[]): Part[] => Array.from({ length: count }, () => parts).flat();

/** The strand, loaded to be closed. */
function loaded(parts: readonly Part[]): Taut {
  const taut = newTaut(parts.length);
  loadTaut(taut, outlinesOf(parts), Int32Array.from(parts.keys()), parts.length);
  return taut;
}

describe('strands as one meets them take few sweeps', () => {
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
    expect(verifyLoop(parts, solveLoop(parts))).toEqual([]);
    expect(swept.times).toBeLessThanOrEqual(most);
  });

  test('from a guess no more, and fewer where less will do', () => {
    const parts = [ball(24), ...many(36, ball(4))];
    const { radiusMm } = solveLoop(parts);
    const sweepsFor = (startMm: number, stillMm: number): number => {
      swept.times = 0;
      expect(closeTaut(loaded(parts), startMm, stillMm)).toBeCloseTo(radiusMm, stillMm > 1e-9 ? 5 : 11);
      return swept.times;
    };
    expect(sweepsFor(200, 1e-12)).toBeLessThanOrEqual(7);
    expect(sweepsFor(1, 1e-12)).toBeLessThanOrEqual(7);
    expect(sweepsFor(0, 1e-12)).toBeLessThanOrEqual(6);
    expect(sweepsFor(24, 1e-6)).toBeLessThanOrEqual(5);
    expect(sweepsFor(0, 1e-3)).toBeLessThanOrEqual(4);
    expect(sweepsFor(radiusMm, 1e-6)).toBeLessThanOrEqual(2);
  });
});

test.each([
  ['a focal, tubes and balls', [ball(20), ...many(12, part(12, 4), ball(3))]],
  ['a rod, tubes, balls and discs', [part(30, 8), ...many(5, part(12, 6), ball(3), part(1, 9))]],
])('%s: where less will do, it is right to a hundredth of that', (_, parts) => {
  const { radiusMm } = solveLoop(parts);
  for (const stillMm of [1e-6, 1e-3, 0.02]) {
    for (const startMm of [0, radiusMm, radiusMm + 1]) {
      const found = closeTaut(loaded(parts), startMm, stillMm);
      expect(Math.abs(found - radiusMm)).toBeLessThanOrEqual(stillMm / 100);
    }
  }
});

/** A share more than now is somebody else's sine; more is a worse way. */
const MORE = 1.05;

describe('odd strands that swing to and fro take many, and come out as another way of reckoning has it', () => {
  test.each<[string, number, Part[]]>([
    ['two tubes and a barrel', 170, [part(12.3, 3.8), part(12.6, 5.3, 2.65), part(12.3, 3.8)]],
    ['two tubes and a wide one', 4585, [part(20.6, 9.9), part(20.6, 9.9), part(19, 26, 9.5)]],
    ['three rods and a wide one', 177, [...many(3, part(25.1, 1.9, 0.475)), part(12.9, 20, 6.45)]],
    ['two tubes and discs', 289, [...many(2, part(9.7, 13)), ...many(3, part(0.9, 24.7))]],
    ['discs and barrels in turn', 83, many(2, part(0.5, 18), part(25.3, 12.3, 6.15))],
    ['two barrels and a rod', 222, [...many(2, part(14.1, 19.5, 7.05)), part(11.8, 1)]],
    ['two rods and two blocks', 183, [part(4.8, 2.2), ...many(2, part(29.4, 27.7)), part(4.8, 2.2)]],
    ['two drums and a barrel', 313, [...many(2, part(10.2, 6.1, 1.525)), part(3.3, 8.9, 1.65)]],
    ['a block and three rods', 220, [part(24.7, 25.3), ...many(3, part(11, 1.4, 0.7))]],
    ['two blocks and discs', 201, [...many(2, part(16.4, 14.2)), ...many(5, part(0.5, 3.3, 0.125))]],
  ])('%s', (_, most, parts) => {
    const loop = solveLoop(parts);
    expect(Math.abs(loop.insideGirthMm - girthByRelaxing(parts))).toBeLessThan(1e-4);
    expect(verifyLoop(parts, loop)).toEqual([]);
    expect(swept.times).toBeLessThanOrEqual(MORE * most);
  });

  test('and a rod that would have to cross the axis is given up in time', () => {
    expect(solveLoop([part(60, 1), ball(2), ball(2)]).closes).toBe(false);
    expect(swept.times).toBeLessThanOrEqual(MORE * 12_267);
  });

  test('one too wide for the rest is given up at once', () => {
    expect(solveLoop([part(5, 90), ...many(3, ball(5))]).closes).toBe(false);
    expect(solveLoop([part(4, 30), ...many(10, part(2, 2))]).closes).toBe(false);
    expect(swept.times).toBeLessThanOrEqual(28);
  });

  test.each<[string, Part[]]>([
    ['two tubes and a wide barrel', [part(19.5, 27.1, 9.75), ...many(2, part(24.8, 11.1))]],
    ['two tubes and a wide disc', [...many(2, part(14.5, 8.2)), part(3.2, 13.5, 0.8)]],
    // Of these the angle adds up once by chance, with the turns still on the move.
    ['two rods and a tube', [...many(2, part(26.1, 0.9, 0.45)), part(13.7, 5)]],
    ['a barrel between two rods', [part(29.6, 1.8, 0.9), part(12.4, 8.5, 4.25), part(29.6, 1.8, 0.9)]],
  ])('%s never come to rest, and are refused rather than answered by half', (_, parts) => {
    expect(solveLoop(parts).closes).toBe(false);
    expect(girthByRelaxing(parts)).toBeGreaterThan(10);
    expect(swept.times).toBeLessThanOrEqual(13_000);
  });
});
