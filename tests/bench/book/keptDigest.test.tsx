/** What she enters of an order, and of stock, has a digest: whatever a disk changes in it is told, and no later write hides it. */
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import { render } from 'preact-render-to-string';
import { backUp, restore } from '#bench/book/backup.ts';
import { change, type Change } from '#bench/book/change.ts';
import { checkBackup, HarmedBackup } from '#bench/book/checkBackup.ts';
import { findEntry, history } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import type { InvoiceContent } from '#bench/book/invoiceContent.ts';
import { unkept } from '#bench/book/keptDigest.ts';
import { enterStock, strikeLine } from '#bench/book/movements.ts';
import { openBook, type Book } from '#bench/book/open.ts';
import { keepTime } from '#bench/book/place.ts';
import { receive } from '#bench/book/receive.ts';
import { allOrders } from '#bench/book/search.ts';
import { checkWhole } from '#bench/book/wholeCheck.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { toCsv } from '#bench/export/csv.ts';
import { readChange } from '#bench/intake/changeForm.ts';
import { orderDetail } from '#bench/models/orderDetail.ts';
import { filterOf, orderList } from '#bench/models/orderList.ts';
import { OrderListView } from '#bench/views/OrderListView.tsx';
import { OrderView } from '#bench/views/OrderView.tsx';
import { ORDER_STATES } from '#words/benchCodes.ts';
import { readCsv } from '../export/readCsv.ts';
import { catalogue, frame, orderFor } from '../shop.ts';

const AT = '2026-11-25T19:00:00.000Z';
const FIGURE = { minor: 6450, currency: 'GBP' };
const MOMENT = { at: AT, who: 'machine' } as const;
const [one, other] = [
  orderFor(catalogue, 'weir-light', 165.1, { name: 'Wren Teasel' }),
  orderFor(catalogue, 'weir-light', 165.1, { name: 'Zebedee Quill' }),
];
let folder: string;
let book: Book;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kept-'));
  book = openBook(join(folder, 'orders.sqlite'));
  receive(
    book,
    [one, other].map((document) => ({
      document,
      way: 'desk',
      at: AT,
      now: pieceNow(catalogue, 'weir-light'),
    })),
  );
});
afterEach(() => {
  book.db.close();
  rmSync(folder, { recursive: true });
});

const make = (wanted: Change, { number } = one): unknown =>
  change(book, number, findEntry(book, number)?.version ?? 0, AT, wanted, FIGURE);
const paid: Change = {
  kind: 'payment',
  entered: { kind: 'paid', minor: 2000, currency: 'GBP', day: '2026-11-25', way: 'cash' },
  really: false,
};
const parcel = { carrier: 'Heron Post', tracking: 'HP 12', sentOn: '2026-11-25' };

const content: InvoiceContent = {
  version: 1,
  lang: 'en',
  seller: { shop: 'S', name: 'M', address: [], taxNumber: null },
  buyer: { name: 'Wren Teasel', address: [] },
  orderedOn: '2026-11-25',
  issuedOn: '2026-11-25',
  items: [],
  currency: 'GBP',
  totalMinor: 6450,
  tax: { text: 't', hundredths: null, minor: null },
  payments: [],
  openMinor: 0,
  reason: '',
};

/** All that an order may have: so that every table holds something of it. */
function fill(): void {
  make({ kind: 'state', state: 'agreed' });
  make({ kind: 'due', on: '2026-12-20' });
  make({ kind: 'note', text: 'Porch box' });
  make(paid);
  make({ kind: 'parcel', parcel });
  make({ kind: 'address', delivery: { by: 'collection' } });
  keepTime(book, { save: 'first', at: AT, seconds: 90, numbers: [one.number] });
  make({ kind: 'invoice', prefix: '2026-', content });
}

const altered = (): string[] => [...unkept(book, 'order', [one.number, other.number])];

/** Past the checks of the tables, as a disk would. */
function spoil(sql: string): void {
  book.db.exec('PRAGMA ignore_check_constraints = ON; PRAGMA foreign_keys = OFF');
  expect(book.db.prepare(sql).run().changes).toBeGreaterThan(0);
  book.db.exec('PRAGMA ignore_check_constraints = OFF; PRAGMA foreign_keys = ON');
}

it.each([
  `UPDATE orders SET state = 'strung' WHERE number = '${one.number}'`,
  `UPDATE orders SET due_on = NULL WHERE number = '${one.number}'`,
  `UPDATE orders SET due_on = '2026-12-21' WHERE number = '${one.number}'`,
  `UPDATE orders SET agreed_minor = agreed_minor + 64 WHERE number = '${one.number}'`,
  `UPDATE orders SET agreed_currency = 'GBQ' WHERE number = '${one.number}'`,
  `UPDATE orders SET delivery = '{"by":"unsaid"}' WHERE number = '${one.number}'`,
  `UPDATE orders SET received_at = replace(received_at, '2026', '2027') WHERE number = '${one.number}'`,
  `UPDATE payment SET minor = minor - 1`,
  `UPDATE payment SET struck_at = '${AT}'`,
  `UPDATE payment SET minor = 2000.0, day = '2026-11-26'`,
  `DELETE FROM payment`,
  `UPDATE event SET text = 'Porch boy' WHERE kind = 'note'`,
  `UPDATE event SET kind = 'reason' WHERE kind = 'note'`,
  `DELETE FROM event WHERE kind = 'note'`,
  `UPDATE parcel SET tracking = 'HP 13'`,
  `UPDATE board_time SET seconds = 91`,
  `UPDATE invoice SET content = replace(content, '6450', '6451')`,
  `UPDATE invoice SET issued_at = '2025'`,
])('tells of %s, of that order alone, and of no other', (sql) => {
  fill();
  expect(altered()).toEqual([]);
  spoil(sql);
  expect(altered()).toEqual([one.number]);
});

it('any change that she makes leaves all as it was kept', async () => {
  const changes: fc.Arbitrary<Change> = fc.oneof(
    fc.constantFrom(...ORDER_STATES).map((state): Change => ({ kind: 'state', state, reason: 'so' })),
    fc.constant<Change>({ kind: 'due', on: '2026-12-20' }),
    fc
      .string({ minLength: 1, maxLength: 30, unit: 'binary' })
      .map((text): Change => ({ kind: 'note', text })),
    fc.constant(paid),
    fc.integer({ min: 1, max: 6 }).map((id): Change => ({ kind: 'strike', id, reason: 'twice' })),
    fc.constant<Change>({ kind: 'parcel', parcel }),
    fc.constant<Change>({ kind: 'message', message: 'agreed' }),
  );
  fc.assert(
    fc.property(fc.array(changes, { maxLength: 6 }), fc.boolean(), (all, erases) => {
      for (const wanted of all) make(wanted);
      if (erases) erase(book, [other.number], AT);
      expect(altered()).toEqual([]);
    }),
    { numRuns: 20 },
  );
  expect(await checkWhole(book.file)).toMatchObject({ orders: [], kept: [], stock: [], structure: [] });
});

describe('what was changed on the disk', () => {
  beforeEach(() => {
    fill();
    spoil('UPDATE payment SET minor = minor + 8');
  });

  it('is told in list, order, exports and by the check of the whole book', async () => {
    const all = filterOf(new URLSearchParams('state=all'), '2026-11-25');
    const list = render(<OrderListView list={orderList(book, catalogue, all, frame)} frame={frame} />);
    expect(list.split('>damaged<')).toHaveLength(2);
    const page = (number: string) =>
      render(<OrderView detail={orderDetail(book, catalogue, number, frame)!} frame={frame} />);
    expect(page(one.number)).toContain(frame.words.keep.altered);
    expect(page(other.number)).not.toContain(frame.words.keep.altered);
    const rows = readCsv(toCsv(allOrders(book)));
    const damage = new Map(rows.map((row) => [row[0], row.at(-1)]));
    expect([damage.get(one.number), damage.get(other.number)]).toEqual(['altered', '']);
    expect(await checkWhole(book.file)).toMatchObject({ orders: [], kept: [one.number] });
  });

  it('is hidden by no later change, neither of hers nor by erasing', () => {
    make({ kind: 'note', text: 'and more' });
    keepTime(book, { save: 'second', at: AT, seconds: 30, numbers: [one.number] });
    erase(book, [one.number], AT);
    expect(altered()).toEqual([one.number]);
  });

  it('is right again once she says so, which her history keeps', () => {
    const form = new URLSearchParams({ version: '1', kind: 'looked-over' });
    const read = readChange(form, { currency: 'GBP', now: AT, invoice: () => null });
    expect(read).toMatchObject({ change: { kind: 'looked-over' } });
    expect(make({ kind: 'looked-over' })).toBe('done');
    expect(altered()).toEqual([]);
    expect(history(book, one.number).at(-1)).toEqual({ at: AT, kind: 'looked-over', text: '' });
    const page = render(
      <OrderView detail={orderDetail(book, catalogue, one.number, frame)!} frame={frame} />,
    );
    expect(page).toContain(frame.words.order.events.lookedOver);
  });

  it('goes into a backup as it is, is named before that is restored, and told of after', () => {
    const file = join(folder, 'backup.sqlite');
    backUp(book, file);
    expect(() => checkBackup(file)).toThrow(HarmedBackup);
    try {
      restore(book, file);
    } catch (error) {
      expect(error instanceof HarmedBackup ? error.harm : error).toEqual({
        unreadable: [],
        altered: [one.number],
      });
    }
  });
});

describe('stock', () => {
  const enter = (kind: 'received' | 'counted' | 'broken', amount: number, thing = 'agate-6') =>
    enterStock(book, MOMENT, [{ thing, kind, amount, entered: '', note: '', seen: null }]);
  const things = (): string[] => [...unkept(book, 'stock', ['agate-6', 'wire/soft-19'])];
  beforeEach(() => {
    enter('received', 40);
    enter('received', 5000, 'wire/soft-19');
    enter('broken', 2);
  });

  it('is what was entered, whatever is struck', async () => {
    expect(strikeLine(book, MOMENT, 1, 'twice')).toBe('not-there');
    expect(strikeLine(book, MOMENT, 3, 'slip')).toBe('done');
    expect(things()).toEqual([]);
    expect((await checkWhole(book.file)).stock).toEqual([]);
  });

  it.each([
    'UPDATE movement SET amount = amount + 1 WHERE id = 1',
    `UPDATE movement SET note = 'x' WHERE id = 3`,
    'DELETE FROM movement WHERE id = 3',
    `UPDATE movement SET at = '2027' WHERE id = 1`,
  ])('tells of %s until that thing is counted again', async (sql) => {
    spoil(sql);
    expect(things()).toEqual(['agate-6']);
    expect((await checkWhole(book.file)).stock).toEqual(['agate-6']);
    enter('received', 10);
    expect(things()).toEqual(['agate-6']);
    enter('counted', 47);
    expect(things()).toEqual([]);
  });
});

/** Made by the program of version 4: five orders, of which one is agreed and partly paid, one strung, one sent and erased. */
const SAMPLE_4 = new URL('../../fixtures/books/v4.sqlite', import.meta.url).pathname;

it('takes what a book of before holds for right, and tells of what changes after', async () => {
  const file = join(folder, 'old.sqlite');
  copyFileSync(SAMPLE_4, file);
  const before = new DatabaseSync(file);
  before.exec('UPDATE payment SET minor = minor + 8');
  before.close();
  const old = openBook(file);
  onTestFinished(() => old.db.close());
  expect(await checkWhole(file)).toMatchObject({ orders: [], kept: [], structure: [] });
  old.db.exec('UPDATE payment SET minor = minor + 8');
  expect((await checkWhole(file)).kept).toHaveLength(1);
});
