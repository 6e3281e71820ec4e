/** Strands on which the kernel's shortcuts for runs of one bead must not be taken. */
import { describe, expect, test } from 'vitest';
import { girthByRelaxing } from '#core/verify/girth.ts';
import { solveLoop } from '#core/geometry/loop.ts';
import type { Part } from '#core/geometry/part.ts';
import { verifyLoop } from '#core/verify/loop.ts';

/** Six long and rounded alike, so that any two neighbours are as far apart; only their widths differ. */
const wide = (acrossMm: number): Part => ({ alongMm: 6, acrossMm, roundingMm: 3 });

const strand = (widths: readonly number[], times: number): Part[] =>
  Array.from({ length: times }, () => widths.map(wide)).flat();

describe.each([
  ['one wide among three narrow', strand([6, 6, 6, 7], 6)],
  ['two wide among two narrow', strand([6, 6, 6.5, 6.5], 6)],
  ['three widths', strand([6, 7, 6.5, 6, 6], 5)],
  ['growing', strand([6, 6.2, 6.4, 6.6, 6.8, 7], 4)],
  ['growing and shrinking', strand([6, 6.3, 6.6, 6.3], 6)],
])('equal distances, %s', (_, parts) => {
  test('come out as another way of reckoning has it', () => {
    const loop = solveLoop(parts);
    expect(loop.closes).toBe(true);
    expect(Math.abs(loop.insideGirthMm - girthByRelaxing(parts))).toBeLessThan(1e-3);
    expect(verifyLoop(parts, loop)).toEqual([]);
  });
});

test.each([
  ['longer than wide', { alongMm: 8, acrossMm: 5 }],
  ['wider than long', { alongMm: 4, acrossMm: 9 }],
])('a rounding beyond half of what it rounds is taken for the half: %s', (_, outline) => {
  const half = Math.min(outline.alongMm, outline.acrossMm) / 2;
  const parts = (roundingMm: number): Part[] =>
    Array.from({ length: 20 }, () => ({ ...outline, roundingMm }));
  const careless = solveLoop(parts(half + 3));
  expect(careless.closes).toBe(true);
  expect(careless).toEqual(solveLoop(parts(half)));
  expect(verifyLoop(parts(half + 3), careless)).toEqual([]);
});
