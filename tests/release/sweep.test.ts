/** Old releases go: first their names, at last their files. */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { pointTo } from '#catalogue/released/place.ts';
import { writeRecord } from '#release/record.ts';
import { clearSwept, noteInUse, sweepOld } from '#release/sweep.ts';
import { releases } from '#release/takeBack.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sweep-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const idOf = (day: number): string => `2026040${day}-100000-000`;

function release(day: number): void {
  const there = join(folder, idOf(day));
  mkdirSync(join(there, 'client'), { recursive: true });
  writeFileSync(join(there, 'catalogue.json'), '{}');
  writeFileSync(join(there, 'client/index.html'), `day ${day}`);
  const madeAt = `2026-04-0${day}T10:00:00.000Z`;
  writeRecord(there, { id: idOf(day), code: 'c', content: String(day), madeAt, pieces: 0, photographs: {} });
}

it('keeps the last five, the one that is served and the one that a running server has loaded', () => {
  for (let day = 1; day <= 9; day += 1) release(day);
  pointTo(idOf(2), folder);
  noteInUse(folder, idOf(3));
  sweepOld(folder);
  const kept = [9, 8, 7, 6, 5, 3, 2].map(idOf);
  expect(releases(folder).map(({ id }) => id)).toEqual(kept);
  expect(existsSync(join(folder, '.swept', idOf(1), 'client/index.html'))).toBe(true);
  clearSwept(folder);
  expect(readdirSync(folder).filter((name) => /^2026|swept/.test(name))).toEqual([...kept].sort());
});

it('also where one of that name was swept and not cleared away before', () => {
  for (let round = 0; round < 2; round += 1) {
    for (let day = 1; day <= 6; day += 1) release(day);
    pointTo(idOf(6), folder);
    sweepOld(folder);
  }
  expect(releases(folder).map(({ id }) => id)).toEqual([6, 5, 4, 3, 2].map(idOf));
});
