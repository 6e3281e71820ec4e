/** Lengths compared on the body: each line ends at its own lowest point, and no words stand on others. */
import { describe, expect, test } from 'vitest';
import { lieOf } from '#core/body/lie.ts';
import type { WornLie } from '#draw/layout/worn.ts';
import { bodyBox } from '#draw/drawings/body.ts';
import { paintCompared } from '#draw/drawings/compared.ts';
import { sampleFigure } from '../worn.ts';

const figure = sampleFigure();

function hung(lengthMm: number): WornLie {
  const found = lieOf({ lengthMm, gPerMm: 0.08, pendantG: 0, pendantMiddleMm: 0, acrossMm: 7 }, figure);
  if (found.status === 'too-short') throw new Error(`${lengthMm} mm is too short`);
  return found;
}

const PAIRS = [
  [406, 508],
  [508, 406],
  [457, 460],
  [400, 401],
] as const;

describe.each(PAIRS)('%i and %i mm', (one, other) => {
  const lies = [hung(one), hung(other)];
  const box = bodyBox(figure, 'female', lies);
  const painted = paintCompared(
    lies.map((lie, at) => ({ lie, lines: [`${at}`, 'a & b'] })),
    box,
  );
  const size = Number(/font-size="([\d.]+)"/.exec(painted)?.[1]);
  const texts = [...painted.matchAll(/<text x="([-\d.]+)" y="([-\d.]+)">([^<]*)</g)].map(
    ([, x, y, words]) => ({
      x: Number(x),
      y: Number(y),
      words,
    }),
  );

  test('say all their words, within the picture and left of the scale of drops', () => {
    expect(texts.map(({ words }) => words).sort()).toEqual(['0', '1', 'a &amp; b', 'a &amp; b']);
    for (const { x, y } of texts) {
      expect(x).toBeLessThan(box.x + box.width - 2 * size);
      expect(x).toBeGreaterThan(0);
      expect(y).toBeLessThan(box.y + box.height);
    }
  });

  test('none on another, each below its own line', () => {
    const heights = texts.map(({ y }) => y).sort((a, b) => a - b);
    const gaps = heights.slice(1).map((y, at) => y - (heights[at] ?? 0));
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(size);
    for (const [at, lie] of lies.entries()) {
      const mine = texts.find(({ words }) => words === `${at}`);
      expect((mine?.y ?? 0) - lie.dropMm).toBeGreaterThan(size * 0.9);
    }
  });

  test('the leaders begin at the lowest points that core gives', () => {
    const leaders = [...painted.matchAll(/d="M0 ([-\d.]+)H/g)].map(([, y]) => Number(y));
    const drops = lies.map(({ dropMm }) => dropMm).sort((a, b) => a - b);
    expect(leaders.length).toBe(2);
    for (const [at, drop] of drops.entries()) expect(leaders[at]).toBeCloseTo(drop, 1);
  });
});

test('without any there is nothing', () => {
  expect(paintCompared([], bodyBox(figure, 'female', []))).toBe('');
});
