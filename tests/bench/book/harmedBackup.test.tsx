/** A backup in which some orders are harmed: all else comes back, they are named first, and nothing of them is lost. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { backUp, restore } from '#bench/book/backup.ts';
import { checkBackup, HarmedBackup, markOf, type Harm } from '#bench/book/checkBackup.ts';
import { change } from '#bench/book/change.ts';
import { findEntry, history, remainsOf } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { openBook, type Book } from '#bench/book/open.ts';
import { paymentsOf } from '#bench/book/payments.ts';
import { receive } from '#bench/book/receive.ts';
import { replaceBook } from '#bench/book/replace.ts';
import { allOrders, countByState, search } from '#bench/book/search.ts';
import { HarmedView } from '#bench/views/HarmedView.tsx';
import type { OrderDocument } from '#order/document.ts';
import { makeNumber } from '#order/number.ts';
import { posted } from '../../order/orders.ts';
import { frame, randomByte } from '../shop.ts';

const AT = '2026-11-25T19:00:00.000Z';
let folder: string;
let book: Book;
let documents: readonly OrderDocument[];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'harmed-'));
  book = openBook(join(folder, 'orders.sqlite'));
  documents = Array.from({ length: 4 }, () => ({ ...posted, number: makeNumber(randomByte) }));
  receive(
    book,
    documents.map((document) => ({ document, way: 'desk', at: AT, now: null })),
  );
  for (const { number } of documents) {
    change(book, number, 1, AT, { kind: 'state', state: 'agreed' }, { minor: 6450, currency: 'GBP' });
    change(book, number, 2, AT, { kind: 'note', text: `note of ${number}` });
    const entered = { kind: 'paid', minor: 6450, currency: 'GBP', day: '2026-11-25', way: 'cash' } as const;
    change(book, number, 3, AT, { kind: 'payment', entered, really: false });
  }
});
afterEach(() => {
  book.db.close();
  rmSync(folder, { recursive: true });
});

/** Ways in which a disk, or a hand, harms one order; some the table itself would refuse. */
const HARMS: Readonly<Record<string, { readonly set: string; readonly as: keyof Harm }>> = {
  'no JSON': { set: `document = replace(document, '{"', '{#')`, as: 'unreadable' },
  'no order': { set: `document = replace(document, 'claspwise-order', 'claspwise-ordes')`, as: 'unreadable' },
  'another buyer': { set: `document = replace(document, 'Solveig', 'Solveih')`, as: 'altered' },
  'a number spoilt within': {
    set: `document = replace(document, '"quantity":', '"quantitz":')`,
    as: 'unreadable',
  },
  'no state': { set: `state = 'agreee'`, as: 'unreadable' },
  'no way': { set: `way = 'desj'`, as: 'unreadable' },
  'no address': { set: `delivery = '{"by":"pigeon"}'`, as: 'unreadable' },
  'address no JSON': { set: `delivery = '{'`, as: 'unreadable' },
};

/** A backup in which orders, by their place, are harmed so. */
function harmed(harms: ReadonlyMap<number, string>): string {
  const file = join(folder, `backup-${Math.random()}.sqlite`);
  backUp(book, file);
  const db = new DatabaseSync(file);
  db.exec('PRAGMA ignore_check_constraints = ON');
  for (const [at, name] of harms) {
    const sql = `UPDATE orders SET ${HARMS[name]?.set} WHERE number = ?`;
    expect(db.prepare(sql).run(documents[at]?.number ?? '').changes).toBe(1);
  }
  db.close();
  return file;
}

const told = (file: string): Harm => {
  try {
    checkBackup(file);
  } catch (error) {
    if (error instanceof HarmedBackup) return error.harm;
    throw error;
  }
  return { unreadable: [], altered: [] };
};

const numberAt = (at: number): string => documents[at]?.number ?? '';
const seen = () => documents.map(({ number }) => findEntryOrNull(number));
const findEntryOrNull = (number: string) => {
  try {
    return findEntry(book, number);
  } catch {
    return null;
  }
};

describe.each(Object.keys(HARMS))('an order with %s', (name) => {
  const as = HARMS[name]?.as ?? 'altered';

  it('is named before anything is changed, and then all else comes back', () => {
    const file = harmed(new Map([[1, name]]));
    const before = seen();
    erase(book, [numberAt(0), numberAt(1)], AT);
    const harm = told(file);
    expect(harm).toEqual({ unreadable: [], altered: [], [as]: [numberAt(1)] });
    expect(() => restore(book, file)).toThrow(HarmedBackup);
    expect(() => restore(book, file, markOf({ unreadable: [numberAt(0)], altered: [] }))).toThrow(
      HarmedBackup,
    );
    expect(findEntry(book, numberAt(0))?.erasedAt).toBe(AT);

    expect(restore(book, file, markOf(harm))).toBe(4);
    expect(seen().filter((_, at) => at !== 1)).toEqual(before.filter((_, at) => at !== 1));
    expect(remainsOf(book, numberAt(1))).toContain('claspwise-orde');
    expect(paymentsOf(book, numberAt(1))).toHaveLength(1);
    expect(history(book, numberAt(1)).map(({ text }) => text)).toContain(`note of ${numberAt(1)}`);
    const { entries, unreadable } = allOrders(book);
    expect(unreadable.map(({ number }) => number)).toEqual(as === 'unreadable' ? [numberAt(1)] : []);
    expect(entries.filter(({ damaged }) => damaged).map(({ document }) => document.number)).toEqual(
      as === 'altered' ? [numberAt(1)] : [],
    );
    // Whatever she looks for, it isn't missing.
    const list = search(book, { text: '', state: 'agreed', today: '2026-11-25', page: 0 });
    expect(list.total).toBe(4);
    expect(Object.values(countByState(book)).reduce((sum, count) => sum + count)).toBe(
      name === 'no state' ? 3 : 4,
    );
    expect(book.db.prepare('PRAGMA ignore_check_constraints').get()?.ignore_check_constraints).toBe(0);
  });

  it('comes with the others where the book itself can’t be used', () => {
    const file = harmed(new Map([[1, name]]));
    const lost = join(folder, 'lost.sqlite');
    expect(() => replaceBook(lost, file, AT)).toThrow(HarmedBackup);
    expect(replaceBook(lost, file, AT, markOf(told(file)))).toMatchObject({ count: 4, aside: null });
    const other = openBook(lost);
    const { entries, unreadable } = allOrders(other);
    other.db.close();
    expect(entries.length + unreadable.length).toBe(4);
  });
});

it('any orders harmed in any way: the others are as they were, and the backup of that can be restored too', () => {
  const some = fc.uniqueArray(
    fc.tuple(fc.integer({ min: 0, max: 3 }), fc.constantFrom(...Object.keys(HARMS))),
    {
      selector: ([at]) => at,
      minLength: 1,
    },
  );
  fc.assert(
    fc.property(some, (harms) => {
      const before = seen();
      const clean = harmed(new Map());
      const file = harmed(new Map(harms));
      const mark = markOf(told(file));
      expect(restore(book, file, mark)).toBe(4);
      const untouched = (_: unknown, at: number): boolean => !harms.some(([one]) => one === at);
      expect(seen().filter(untouched)).toEqual(before.filter(untouched));
      const again = harmed(new Map());
      expect(markOf(told(again))).toBe(mark);
      expect(restore(book, again, mark)).toBe(4);
      expect(restore(book, clean)).toBe(4);
      expect(seen()).toEqual(before);
    }),
    { numRuns: 6 },
  );
});

it('an order that was erased when it couldn’t be read is nothing to be told of', () => {
  restore(book, harmed(new Map([[2, 'no JSON']])), markOf({ unreadable: [numberAt(2)], altered: [] }));
  expect(erase(book, [numberAt(2)], AT).count).toBe(1);
  const file = harmed(new Map());
  expect(restore(book, file)).toBe(4);
  expect(allOrders(book).unreadable).toMatchObject([{ number: numberAt(2), erasedAt: AT }]);
});

it('the page names each, says what becomes of them, and asks for the file once more', () => {
  const harm = { unreadable: ['TX2-FYF-HTW'], altered: ['<script>'] };
  const html = render(<HarmedView frame={frame} harm={harm} />);
  expect(html).toContain('<li>TX2-FYF-HTW</li>');
  expect(html).not.toContain('<script>');
  expect(html).toContain(`name="told" value="${markOf(harm)}"`);
  expect(html).toContain('type="file"');
});
