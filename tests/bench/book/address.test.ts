/** A buyer's address in the book: found while it is there, and gone once erased. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUp, restore } from '#bench/book/backup.ts';
import { HarmedBackup } from '#bench/book/checkBackup.ts';
import { change } from '#bench/book/change.ts';
import { findEntry, history } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { openBook, type Book } from '#bench/book/open.ts';
import { receive } from '#bench/book/receive.ts';
import { search } from '#bench/book/search.ts';
import type { Delivery, OrderDocument } from '#order/document.ts';
import { posted, sample } from '../../order/orders.ts';

const AT = '2026-11-25T19:00:00.000Z';

let book: Book;
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'address-'));
  book = openBook(join(folder, 'orders.sqlite'));
});
afterEach(() => {
  book.db.close();
  rmSync(folder, { recursive: true });
});

const take = (...documents: readonly OrderDocument[]) =>
  receive(
    book,
    documents.map((document) => ({ document, way: 'desk', at: AT, now: null })),
  );
const found = (text: string) =>
  search(book, { text, state: 'all', today: '2026-11-25', page: 0 }).entries.map(
    ({ document }) => document.number,
  );
const WORDS = ['solveig', '24999', 'stapelmunde'];

it('is found by whose door it is, by postcode and town, and erased to the last byte', () => {
  take(posted, { ...sample, number: 'K7M-4PX-9RC' });
  for (const text of WORDS) expect(found(text)).toEqual([posted.number]);

  expect(erase(book, [posted.number], AT).count).toBe(1);
  for (const text of WORDS) expect(found(text)).toEqual([]);
  const kept = findEntry(book, posted.number)?.document;
  expect(kept).toMatchObject({ delivery: { by: 'unsaid' }, shown: { postageMinor: 820 } });
  const bytes = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'latin1'));
  for (const word of ['Solveig', 'Hinterhaus', '24999']) expect(bytes.join('')).not.toContain(word);
});

describe('written down later', () => {
  const enter = (delivery: Delivery, version = 1) =>
    change(book, sample.number, version, AT, { kind: 'address', delivery });

  it('is where the order goes, with a line of history; the document stays as it came', () => {
    take(sample);
    expect(enter(posted.delivery)).toBe('done');
    expect(findEntry(book, sample.number)).toMatchObject({
      version: 2,
      document: { delivery: posted.delivery },
    });
    expect(history(book, sample.number).map(({ kind }) => kind)).toEqual(['received', 'address']);
    for (const text of WORDS) expect(found(text)).toEqual([sample.number]);
    // The same order sent once more is still the same.
    expect(take(sample)[0]?.outcome).toBe('same');
    expect(enter({ by: 'collection' }, 2)).toBe('done');
    expect(findEntry(book, sample.number)?.document.delivery).toEqual({ by: 'collection' });
  });

  it('comes back out of a backup, and only an address that is one', () => {
    take(sample);
    enter(posted.delivery);
    const file = join(folder, 'backup.sqlite');
    backUp(book, file);
    expect(restore(book, file)).toBe(1);
    expect(findEntry(book, sample.number)?.document.delivery).toEqual(posted.delivery);
    const db = new DatabaseSync(file);
    db.exec(`UPDATE orders SET delivery = '{"by":"pigeon"}'`);
    db.close();
    expect(() => restore(book, file)).toThrow(HarmedBackup);
    expect(findEntry(book, sample.number)?.document.delivery).toEqual(posted.delivery);
  });

  it('is refused where it lacks what every address has, and once the buyer is erased', () => {
    take(sample);
    if (posted.delivery.by !== 'post') throw new Error('the sample is posted');
    const { to } = posted.delivery;
    for (const part of ['name', 'line1', 'country'] as const) {
      expect(enter({ by: 'post', to: { ...to, [part]: '' } })).toEqual({ code: 'address-incomplete' });
    }
    expect(enter({ by: 'post', to: { ...to, town: 'x'.repeat(101) } })).toEqual({
      code: 'address-incomplete',
    });
    expect(history(book, sample.number)).toHaveLength(1);
    expect(enter(posted.delivery)).toBe('done');
    erase(book, [sample.number], AT);
    expect(findEntry(book, sample.number)?.document.delivery).toEqual({ by: 'unsaid' });
    expect(enter(posted.delivery, 3)).toEqual({ code: 'buyer-erased' });
    const bytes = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'latin1'));
    expect(bytes.join('')).not.toContain('Hinterhaus');
  });
});
