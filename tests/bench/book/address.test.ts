/** A buyer's address in the book: found while it is there, and gone once erased. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { findEntry } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { openBook } from '#bench/book/open.ts';
import { receive } from '#bench/book/receive.ts';
import { search } from '#bench/book/search.ts';
import { posted, sample } from '../../order/orders.ts';

const AT = '2026-11-25T19:00:00.000Z';

it('is found by whose door it is, by postcode and town, and erased to the last byte', () => {
  const folder = mkdtempSync(join(tmpdir(), 'address-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const book = openBook(join(folder, 'orders.sqlite'));
  onTestFinished(() => book.db.close());
  const found = (text: string) =>
    search(book, { text, state: 'all', today: '2026-11-25', page: 0 }).entries.map(
      ({ document }) => document.number,
    );
  receive(book, [
    { document: posted, way: 'desk', at: AT, now: null },
    { document: { ...sample, number: 'K7M-4PX-9RC' }, way: 'desk', at: AT, now: null },
  ]);
  for (const text of ['solveig', '24999', 'stapelmunde']) expect(found(text)).toEqual([posted.number]);

  expect(erase(book, [posted.number], AT)).toBe(1);
  for (const text of ['solveig', '24999', 'stapelmunde']) expect(found(text)).toEqual([]);
  const kept = findEntry(book, posted.number)?.document;
  expect(kept).toMatchObject({ delivery: { by: 'unsaid' }, shown: { postageMinor: 820 } });
  const bytes = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'latin1'));
  for (const word of ['Solveig', 'Hinterhaus', '24999']) expect(bytes.join('')).not.toContain(word);
});
