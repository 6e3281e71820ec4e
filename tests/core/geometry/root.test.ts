/** Where something that grows with a length is reached, and in how many questions. */
import { describe, expect, it } from 'vitest';
import { root } from '#core/geometry/root.ts';

describe('a root', () => {
  it.each<[string, (x: number) => number, number, number, number, number]>([
    ['of a line', (x) => x - 3, 0, 10, 3, 3],
    ['at the low end', (x) => x, 0, 5, 0, 3],
    ['at the high end', (x) => x - 5, 0, 5, 5, 3],
    ['cube root of two', (x) => x ** 3 - 2, 0, 5, Math.cbrt(2), 16],
    ['logarithm of a thousand', (x) => Math.exp(x) - 1000, 0, 20, Math.log(1000), 30],
    ['nine times nine', (x) => Math.sqrt(x) - 9, 0, 5000, 81, 12],
    ['steep where it is 0', (x) => Math.cbrt(x - 4), 0, 5000, 4, 35],
    ['flat beyond', (x) => 0.01 - 1 / (x + 1), 0, 5000, 99, 21],
    ['a step', (x) => (x < 3 ? -1 : 1), 0, 10, 3, 41],
    ['a step far up', (x) => (x < 3 ? -1 : 100), 0, 10, 3, 94],
    ['a jump on a slope', (x) => (x < 7 ? x - 20 : x + 400), 0, 5000, 7, 75],
  ])('%s', (_, rising, least, most, at, questions) => {
    let asked = 0;
    const counted = (x: number): number => {
      asked += 1;
      return rising(x);
    };
    expect(Math.abs(root(counted, least, most) - at)).toBeLessThan(1e-9);
    expect(asked).toBeLessThanOrEqual(questions);
  });

  it('of a wide jump is given up after a hundred steps, next to where it is', () => {
    let asked = 0;
    const found = root(
      (x) => {
        asked += 1;
        return x < 1 / 3 ? -1e-9 : 1e9;
      },
      0,
      1e6,
    );
    expect(asked).toBe(102);
    expect(found).toBeCloseTo(1 / 3, -2);
  });
});
