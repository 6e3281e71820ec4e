/** The loop against formulas that stand in any handbook, and figures worked out elsewhere. */
import { describe, expect, test } from 'vitest';
import { solveLoop, type Part } from '#core/geometry/loop.ts';

const ball = (mm: number): Part => ({ alongMm: mm, acrossMm: mm, roundingMm: mm / 2 });
const tube = (alongMm: number, acrossMm: number): Part => ({ alongMm, acrossMm, roundingMm: 0 });
const many = (count: number, part: Part): Part[] => new Array<Part>(count).fill(part);

const COUNTS = [3, 4, 5, 6, 8, 12, 17, 24, 30, 60, 151, 1000];

/** Relative, as far as double precision lets a sum of a thousand parts be. */
const RELATIVE = 1e-9;

function expectRelative(value: number, wanted: number): void {
  expect(Math.abs(value / wanted - 1)).toBeLessThan(RELATIVE);
}

describe('regular polygon relations (any handbook of geometry): side = 2 R sin(π/n), apothem = R cos(π/n)', () => {
  test.each(COUNTS)('%i equal balls: centres on a regular polygon', (count) => {
    const { radiusMm } = solveLoop(many(count, ball(8)));
    expectRelative(radiusMm, 4 * (1 / Math.sin(Math.PI / count) - 1));
  });

  test.each(COUNTS)(
    '%i equal sharp tubes: inner faces are a polygon round the cylinder, whatever their width',
    (count) => {
      for (const across of [0.5, 4, 9]) {
        const { radiusMm } = solveLoop(many(count, tube(10, across)));
        expectRelative(radiusMm, 5 / Math.tan(Math.PI / count));
      }
    },
  );
});

test.each([
  // n, d, inner circumference 2π(d/(2 sin(π/n)) − d/2): worked out apart from this project
  [24, 8, 167.416668214],
  [30, 6, 161.479852283],
  // exact: six touching circles leave room for a seventh
  [6, 10, 31.415926536],
])('%i touching balls of %d mm are %d mm round inside', (count, diameter, girth) => {
  expect(solveLoop(many(count, ball(diameter))).insideGirthMm).toBeCloseTo(girth, 6);
});

test('a lone large ball: the open belt round a circle and a point (belt length, any handbook of machine elements)', () => {
  const tiny = 0.02;
  for (const [radius, count] of [
    [15, 7000],
    [10, 6000],
    [6, 7500],
  ] as const) {
    const { radiusMm, lengthMm } = solveLoop([ball(2 * radius), ...many(count, ball(tiny))]);
    // The belt's line runs through the tiny beads' centres, half of one off the cylinder.
    const drum = radiusMm + tiny / 2;
    const far = radiusMm + radius;
    const belt = 2 * Math.sqrt(far ** 2 - drum ** 2) + 2 * drum * (Math.PI - Math.acos(drum / far));
    expect(Math.abs(belt - lengthMm)).toBeLessThan(1e-4);
  }
});

test('very many, very thin beads: the inside girth is the length', () => {
  const { insideGirthMm, lengthMm } = solveLoop(many(5000, tube(0.04, 0.0002)));
  expect(Math.abs(insideGirthMm / lengthMm - 1)).toBeLessThan(1e-5);
});

describe('slack', () => {
  test.each([
    [12, 16],
    [24, 8],
  ])(
    '%i balls of %d mm: the chord between two hole mouths on the axes that turn by 2π/n',
    (count, diameter) => {
      const half = Math.PI / count;
      const mouths = count * diameter * (1 - Math.cos(half));
      expectRelative(solveLoop(many(count, ball(diameter))).slackMm, mouths);
    },
  );

  test('16 mm beads need several millimetres, seed beads next to none (common practice, no source)', () => {
    expect(solveLoop(many(12, ball(16))).slackMm).toBeGreaterThan(4);
    expect(solveLoop(many(90, ball(2))).slackMm).toBeLessThan(0.3);
  });
});
