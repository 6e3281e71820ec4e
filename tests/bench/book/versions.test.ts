/** Orders of older versions in the book: kept as they came, read in today's version, known when they come again. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { restore } from '#bench/book/backup.ts';
import { findEntry } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { openBook } from '#bench/book/open.ts';
import { sha256 } from '#bench/book/snapshot.ts';
import { receive } from '#bench/book/receive.ts';
import { sample } from '../../order/orders.ts';

const AT = '2026-11-25T19:00:00.000Z';
const version1 = readFileSync('tests/fixtures/orders/v1-bracelet.json', 'utf8');

it('a version 1 order in a backup stays as it came and is read as version 2', () => {
  const folder = mkdtempSync(join(tmpdir(), 'versions-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = join(folder, 'old.sqlite');
  const old = openBook(file);
  old.db
    .prepare(
      `INSERT INTO orders (number, document, digest, received_at, way, state)
       VALUES (?, ?, ?, ?, 'desk', 'new')`,
    )
    .run(sample.number, version1, sha256(version1), AT);
  old.db.close();

  const book = openBook(join(folder, 'orders.sqlite'));
  onTestFinished(() => book.db.close());
  const outcomeOf = (document: typeof sample) =>
    receive(book, [{ document, way: 'desk', at: AT, now: null }])[0]?.outcome;
  expect(restore(book, file)).toBe(1);
  expect(book.db.prepare('SELECT document FROM orders').get()?.document).toBe(version1);
  expect(findEntry(book, sample.number)?.document).toEqual(sample);
  expect(outcomeOf(sample)).toBe('same');
  expect(outcomeOf({ ...sample, quantity: 2 })).toBe('number-taken');
  expect(erase(book, [sample.number], AT).count).toBe(1);
  expect(findEntry(book, sample.number)?.document.buyer.name).toBe('');
});
