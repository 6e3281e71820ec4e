/** What careless or ill-meant hands make of sound data. */
import type { Random } from '#tests/core/random.ts';

const NASTY: readonly unknown[] = [
  null,
  undefined,
  '',
  'x',
  '12',
  true,
  [],
  {},
  NaN,
  Infinity,
  -Infinity,
  -1,
  0,
  0.5,
  1e-12,
  1e9,
  1e308,
  -0,
  2 ** 53,
  '__proto__',
  'constructor',
  { length: 3 },
  [null],
  [[]],
  { toString: null },
];

/** Replaces one value somewhere in a tree, drops it, or makes a number powers of ten larger or smaller. */
export function damage(of: Random, value: unknown, depth = 0): unknown {
  const keys = typeof value === 'object' && value !== null ? Object.keys(value) : [];
  if (keys.length === 0 || (depth > 0 && of.next() < 0.12)) return of.pick(NASTY);
  const key = of.pick(keys);
  const copy: object = Array.isArray(value) ? [...(value as unknown[])] : { ...(value as object) };
  const inner = (copy as Record<string, unknown>)[key];
  const chance = of.next();
  if (chance < 0.05) delete (copy as Record<string, unknown>)[key];
  else if (chance < 0.1 && typeof inner === 'number')
    (copy as Record<string, unknown>)[key] = inner * 10 ** of.whole(-6, 6);
  else (copy as Record<string, unknown>)[key] = damage(of, inner, depth + 1);
  return copy;
}
