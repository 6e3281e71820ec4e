import { describe, expect, test } from 'vitest';
import { figureOf, type Figure } from '#core/body/figure.ts';
import { lieOf } from '#core/body/lie.ts';
import { turnBetween } from '#draw/layout/along.ts';
import { pictured, placeWorn, unrolled, type WornLie } from '#draw/layout/worn.ts';
import { pieces, usualSequences } from '../designs.ts';

function bodyOf(neckGirthMm: number | null): Figure {
  const found = figureOf({ sex: 'female', neckGirthMm, heightMm: null });
  if (!found.ok) throw new Error(found.problem.code);
  return found.figure;
}

function lie(lengthMm: number, pendantG = 0, neckGirthMm: number | null = null): WornLie {
  const load = { lengthMm, gPerMm: 0.08, pendantG, pendantMiddleMm: pendantG > 0 ? 20 : 0, acrossMm: 7 };
  const found = lieOf(load, bodyOf(neckGirthMm));
  if (found.status === 'too-short') throw new Error(`${lengthMm} mm is too short`);
  return found;
}

const lies = [
  ['on the neck', lie(380)],
  ['at the pit', lie(400)],
  ['on the chest', lie(457)],
  ['with a pendant', lie(445, 9)],
  ['long', lie(800)],
  ['on a wide neck', lie(500, 0, 400)],
] as const;

describe.each(lies)('%s', (_, worn) => {
  test("its lowest point hangs as low as core's drop", () => {
    expect(pictured(worn, 0).yMm).toBeCloseTo(worn.dropMm, 6);
    expect(pictured(worn, 0).xMm).toBeCloseTo(0, 9);
  });

  test('all of it, front and back, is as long as the strand', () => {
    const curve = unrolled(worn);
    expect(curve.lengthMm).toBeCloseTo(worn.frontMm + (Math.PI * worn.spanMm) / 2, 6);
  });

  test('the line is whole where it goes round the neck', () => {
    const half = worn.frontMm / 2;
    for (const side of [-1, 1]) {
      const before = pictured(worn, side * (half - 1e-6));
      const after = pictured(worn, side * (half + 1e-6));
      expect(Math.hypot(before.xMm - after.xMm, before.yMm - after.yMm)).toBeLessThan(1e-3);
      const curve = unrolled(worn);
      const at = curve.lengthMm / 2 + side * half;
      expect(Math.abs(turnBetween(curve.at(at - 1e-6).turnRad, curve.at(at + 1e-6).turnRad))).toBeLessThan(
        1e-3,
      );
    }
  });

  test('a drawn strand has its middle bead at the drop, and both sides alike', () => {
    const [balls] = pieces;
    if (balls === undefined) throw new Error('no piece');
    const [sequence = []] = usualSequences(balls);
    const { front, behind } = placeWorn(sequence, worn);
    const all = [...front, ...behind].toSorted((one, other) => one.index - other.index);
    const middle = all[(all.length - 1) / 2];
    expect(middle?.yMm).toBeCloseTo(worn.dropMm, 2);
    for (const [at, spot] of all.entries()) {
      const mirror = all[all.length - 1 - at];
      expect(Math.abs(spot.xMm + (mirror?.xMm ?? NaN))).toBeLessThan(0.01);
      expect(Math.abs(spot.yMm - (mirror?.yMm ?? NaN))).toBeLessThan(0.01);
    }
  });
});

test('a longer strand never hangs higher in the picture', () => {
  let lowest = -Infinity;
  for (let lengthMm = 375; lengthMm < 1200; lengthMm += 25) {
    const { yMm } = pictured(lie(lengthMm), 0);
    expect(yMm).toBeGreaterThan(lowest);
    lowest = yMm;
  }
});

test('nested strands hang one below the other all the way down', () => {
  const inner = lie(420);
  const outer = lie(480);
  for (let share = 0; share <= 0.7; share += 0.05) {
    const one = pictured(inner, (share * inner.frontMm) / 2);
    // The outer strand's point at the same x, by halving.
    let near = 0;
    let far = outer.frontMm / 2;
    for (let halving = 0; halving < 60; halving += 1) {
      const middle = (near + far) / 2;
      if (pictured(outer, middle).xMm < one.xMm) near = middle;
      else far = middle;
    }
    expect(pictured(outer, near).yMm).toBeGreaterThan(one.yMm);
  }
});
