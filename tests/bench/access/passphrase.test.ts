import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { enter } from '#bench/access/enter.ts';
import { hasPassphrase, isPassphrase, removePassphrase, setPassphrase } from '#bench/access/passphrase.ts';
import { beginVisit, endVisit, isVisiting } from '#bench/access/visit.ts';
import { joinBench, type Bench } from '#bench/context/bench.ts';
import { settingsFrom } from '#bench/context/settings.ts';

let folder: string;
let bench: Bench;
let nowMs = 0;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'access-'));
  nowMs = 1_000_000;
  bench = joinBench(settingsFrom({ CLASPWISE_BOOK: join(folder, 'orders.sqlite') }, folder), () => nowMs);
});
afterEach(() => {
  bench.book().db.close();
  rmSync(folder, { recursive: true });
});

const RIGHT = 'osier thimble barge noon';

it('is kept as a hash and told from every other', async () => {
  const book = bench.book();
  expect(hasPassphrase(book)).toBe(false);
  expect(await isPassphrase(book, '')).toBe(false);
  await setPassphrase(book, RIGHT);
  const stored = String(book.db.prepare('SELECT value FROM setting').get()?.value);
  expect(stored).toMatch(/^scrypt:17:8:1:/);
  expect(stored).not.toContain('osier');
  expect(await isPassphrase(book, RIGHT)).toBe(true);
  expect(await isPassphrase(book, `${RIGHT} `)).toBe(false);
  expect(await isPassphrase(book, 'x'.repeat(100_000))).toBe(false);
  removePassphrase(book);
  expect(await isPassphrase(book, RIGHT)).toBe(false);
});

it('is refused where it is short', async () => {
  await expect(setPassphrase(bench.book(), 'short')).rejects.toThrow(RangeError);
});

it('opens a visit with a cookie for this host and TLS only, which time, leaving and a new passphrase end', async () => {
  const book = bench.book();
  await setPassphrase(book, RIGHT);
  const answer = await enter(bench, RIGHT, '192.0.2.7');
  expect(answer).toBeInstanceOf(Response);
  const cookie = (answer as Response).headers.get('set-cookie') ?? '';
  expect(cookie).toMatch(
    /^__Host-bench=[\w-]{43}; Path=\/; Max-Age=43200; Secure; HttpOnly; SameSite=Strict$/,
  );
  const token = /=([\w-]{43})/.exec(cookie)?.[1] ?? '';
  expect(isVisiting(book, token, nowMs)).toBe(true);
  expect(isVisiting(book, token, nowMs + 12 * 3600 * 1000)).toBe(false);
  expect(String(book.db.prepare('SELECT token_hash FROM visit').get()?.token_hash)).not.toContain(token);
  endVisit(book, token);
  expect(isVisiting(book, token, nowMs)).toBe(false);
  const other = beginVisit(book, nowMs);
  await setPassphrase(book, `${RIGHT} two`);
  expect(isVisiting(book, other, nowMs)).toBe(false);
});

it('is tried five times a minute from one address, and no more', async () => {
  for (let tries = 0; tries < 5; tries += 1) {
    expect(await enter(bench, 'guess', '192.0.2.7')).toEqual({ code: 'wrong-passphrase' });
  }
  expect(await enter(bench, RIGHT, '192.0.2.7')).toEqual({ code: 'too-many-tries', seconds: 12 });
  expect(await enter(bench, 'guess', '192.0.2.8')).toEqual({ code: 'wrong-passphrase' });
  nowMs += 12_000;
  expect(await enter(bench, 'guess', '192.0.2.7')).toEqual({ code: 'wrong-passphrase' });
});
