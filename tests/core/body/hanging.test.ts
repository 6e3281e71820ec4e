import { createRequire } from 'node:module';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { hang } from '#core/body/hanging.ts';

/** odex 2 (Hairer's ODEX): it ships TypeScript that our settings don't pass, so only its face is typed here. */
type Solver = {
  absoluteTolerance: number;
  relativeTolerance: number;
  solve(f: (s: number, y: number[]) => number[], from: number, start: number[], to: number): { y: number[] };
};
const { Solver: Odex } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => Solver };

/**
 * Half of a hanging strand, integrated along its own length from the middle:
 * the level pull stays, the upright pull grows by the weight passed.
 */
function integrate(levelPull: number, half: number, pendant: number): { x: number; y: number } {
  const solver = new Odex(2);
  solver.absoluteTolerance = 1e-11;
  solver.relativeTolerance = 1e-11;
  const slope = (s: number) => {
    const upright = pendant / 2 + s;
    const pull = Math.hypot(levelPull, upright);
    return [levelPull / pull, upright / pull];
  };
  const [x = NaN, y = NaN] = solver.solve(slope, 0, [0, 0], half).y;
  return { x, y };
}

/** The level pull that brings the end over the point, by shooting. */
function shoot(length: number, span: number, pendant: number) {
  let low = 1e-9;
  let high = 1e7;
  for (let n = 0; n < 70; n += 1) {
    const middle = Math.sqrt(low * high);
    if (integrate(middle, length / 2, pendant).x < span / 2) low = middle;
    else high = middle;
  }
  const level = Math.sqrt(low * high);
  return {
    level,
    sag: integrate(level, length / 2, pendant).y,
    pull: Math.hypot(level, pendant / 2 + length / 2),
  };
}

describe('a hanging strand, against the integrated differential equation (odex)', () => {
  const strands = [130, 160, 230, 340, 700, 1500].flatMap((length) =>
    [0, 5, 80, 600, 5000].map((pendant) => ({ length, pendant })),
  );
  it.each(strands)(
    '$length mm over 120 mm with a pendant of $pendant mm of strand',
    ({ length, pendant }) => {
      const ours = hang(length, 120, pendant);
      const judge = shoot(length, 120, pendant);
      expect(ours?.hMm ?? NaN).toBeCloseTo(judge.level, 4);
      expect(ours?.sagMm ?? NaN).toBeCloseTo(judge.sag, 5);
      expect((ours?.pullMm ?? NaN) / judge.pull).toBeCloseTo(1, 7);
    },
  );
});

const span = fc.double({ min: 20, max: 400, noNaN: true });
const over = fc.double({ min: 1.0001, max: 20, noNaN: true });
const pendant = fc.double({ min: 0, max: 20_000, noNaN: true });

/** Hang what must hang. */
function sure(length: number, wide: number, weight: number) {
  const found = hang(length, wide, weight);
  if (found === null) throw new Error('it should hang');
  return found;
}

describe('properties', () => {
  it('the strand it answers is as long as the one asked', () => {
    fc.assert(
      fc.property(span, over, pendant, (wide, times, weight) => {
        const { hMm, u0, u1 } = sure(wide * times, wide, weight);
        const half = 2 * hMm * Math.cosh((u0 + u1) / 2) * Math.sinh((u1 - u0) / 2);
        expect(half / ((wide * times) / 2)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('scales: twice the lengths sag twice as far', () => {
    fc.assert(
      fc.property(span, over, pendant, (wide, times, weight) => {
        const one = sure(wide * times, wide, weight);
        const two = sure(2 * wide * times, 2 * wide, 2 * weight);
        expect(two.sagMm / one.sagMm).toBeCloseTo(2, 7);
        expect(two.pullMm / one.pullMm).toBeCloseTo(2, 7);
      }),
    );
  });

  it('a longer strand or a heavier pendant never hangs higher', () => {
    fc.assert(
      fc.property(
        span,
        over,
        pendant,
        fc.double({ min: 1, max: 3, noNaN: true }),
        (wide, times, weight, more) => {
          const { sagMm } = sure(wide * times, wide, weight);
          expect(sure(wide * times * more, wide, weight).sagMm).toBeGreaterThanOrEqual(sagMm - 1e-7);
          expect(sure(wide * times, wide, weight * more).sagMm).toBeGreaterThanOrEqual(sagMm - 1e-7);
        },
      ),
    );
  });

  it('no strand sags below the V of its own length, nor pulls less than half its weight', () => {
    fc.assert(
      fc.property(span, over, pendant, (wide, times, weight) => {
        const length = wide * times;
        const { sagMm, pullMm } = sure(length, wide, weight);
        expect(sagMm).toBeLessThanOrEqual(Math.sqrt(length ** 2 - wide ** 2) / 2 + 1e-7);
        expect(pullMm).toBeGreaterThanOrEqual((length + weight) / 2 - 1e-7);
      }),
    );
  });

  it('any figures at all: an answer or null, never NaN, never a throw', () => {
    let hung = 0;
    const any = fc.oneof(fc.double(), fc.integer({ min: -10, max: 1000 }));
    fc.assert(
      fc.property(any, any, any, (length, wide, weight) => {
        const found = hang(length, wide, weight);
        if (found !== null) hung += 1;
        for (const figure of Object.values(found ?? {})) expect(figure).not.toBeNaN();
      }),
      { numRuns: 2000 },
    );
    expect(hung).toBeGreaterThan(100);
  });

  it.each([
    [100, 100, 0],
    [90, 100, 0],
    [100, 0, 0],
    [100, -5, 0],
    [200, 100, -1],
    [NaN, 100, 0],
    [Infinity, 100, 0],
    [200, NaN, 0],
    [200, 100, NaN],
  ])('%f over %f with %f does not hang', (length, wide, weight) => {
    expect(hang(length, wide, weight)).toBeNull();
  });
});

describe('finding the level pull takes few steps', () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it.each([
    [130, 120, 0, 6],
    [130, 120, 80, 6],
    [160, 120, 5, 7],
    [230, 120, 600, 6],
    [700, 120, 0, 7],
    [1500, 120, 5000, 6],
    [2000, 20, 0, 6],
    [120.001, 120, 0, 11],
    [121, 120, 20_000, 13],
    [400, 20, 1e6, 17],
    [1e6, 1e-3, 0, 6],
  ])('%s mm over %s mm with %s mm of pendant', (length, wide, weight, most) => {
    // Each step takes this logarithm once.
    const steps = vi.spyOn(Math, 'log1p');
    sure(length, wide, weight);
    expect(steps.mock.calls.length).toBeGreaterThan(2);
    expect(steps.mock.calls.length).toBeLessThanOrEqual(most);
  });
});

describe('what weighs next to nothing beside its pendant', () => {
  it('hangs in two straight lines', () => {
    const { sagMm, u0, u1, hMm } = sure(200, 120, Infinity);
    // The triangle 60, 80, 100.
    expect(sagMm).toBeCloseTo(80, 12);
    expect(Math.sinh(u0)).toBeCloseTo(80 / 60, 12);
    expect(u1).toBe(u0);
    expect(hMm).toBe(Infinity);
  });

  it('nearly so from a thousand million times its weight on, and hardly otherwise just before', () => {
    const [before, beyond] = [sure(200, 120, 199e9), sure(200, 120, 201e9)];
    expect(beyond.hMm).toBe(Infinity);
    expect(before.hMm).toBeLessThan(Infinity);
    expect(before.sagMm).toBeCloseTo(beyond.sagMm, 4);
  });
});

describe('a strand is a micrometre to a kilometre', () => {
  it.each([
    [2, 1e-3, true],
    [2, 0.99e-3, false],
    [1e6, 100, true],
    [1.0001e6, 100, false],
    [100, 100, false],
    [100, 100.1, false],
  ])('%s mm over %s mm', (length, wide, hangs) => {
    expect(hang(length, wide, 0) !== null).toBe(hangs);
  });

  it('and no pendant pulls upwards', () => {
    expect(hang(200, 120, -1)).toBeNull();
    expect(hang(200, 120, NaN)).toBeNull();
  });
});
