/** Keys of drawings that are kept, so that nothing is drawn only to learn its name. */
import { randomBytes } from 'node:crypto';
import { appendFileSync, existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, it, vi } from 'vitest';
import { CACHE } from '#ui/pictures/cache.ts';
import { MADE_BY } from '#ui/pictures/drawnKeys.ts';

const program = randomBytes(8).toString('hex');
const file = join(CACHE, `drawn-${program}.txt`);
afterEach(() => {
  vi.unstubAllEnvs();
  vi.resetModules();
  rmSync(file, { force: true });
});

/** As another process has it. */
const anew = async () => {
  vi.resetModules();
  return (await import('#ui/pictures/drawnKeys.ts')).drawnKey;
};
const KEY = '0123456789abcdef';

it('are drawn once for a program, whatever process asks', async () => {
  vi.stubEnv(MADE_BY, program);
  const draw = vi.fn(() => KEY);
  expect((await anew())('a bead', draw)).toBe(KEY);
  expect((await anew())('a bead', draw)).toBe(KEY);
  expect(draw).toHaveBeenCalledTimes(1);
  expect((await anew())('another bead', () => 'fedcba9876543210')).toBe('fedcba9876543210');
});

it('are drawn where a line was cut off, and where nobody says by which program', async () => {
  vi.stubEnv(MADE_BY, program);
  (await anew())('a bead', () => KEY);
  const [of = ''] = readFileSync(file, 'utf8').split(' ');
  rmSync(file);
  appendFileSync(file, `${of} ${KEY.slice(0, 9)}`);
  const draw = vi.fn(() => KEY);
  expect((await anew())('a bead', draw)).toBe(KEY);
  expect(draw).toHaveBeenCalledTimes(1);
  vi.stubEnv(MADE_BY, undefined);
  rmSync(file);
  (await anew())('a bead', draw);
  expect(draw).toHaveBeenCalledTimes(2);
  expect(existsSync(file)).toBe(false);
});
