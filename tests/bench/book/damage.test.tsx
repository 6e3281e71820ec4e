/** Damage inside a document: found when it is read, named, and nobody else's order suffers. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { render } from 'preact-render-to-string';
import { change } from '#bench/book/change.ts';
import { findEntry, findReadable, remainsOf } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { openBook, type Book } from '#bench/book/open.ts';
import { receive } from '#bench/book/receive.ts';
import { allEntries, allOrders, search, unreadableNumbers } from '#bench/book/search.ts';
import { findSnapshot } from '#bench/book/snapshot.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { toCsv } from '#bench/export/csv.ts';
import { toExport } from '#bench/export/json.ts';
import { readText } from '#bench/intake/readText.ts';
import { filterOf, orderList } from '#bench/models/orderList.ts';
import { orderDetail } from '#bench/models/orderDetail.ts';
import { OrderListView } from '#bench/views/OrderListView.tsx';
import { OrderView } from '#bench/views/OrderView.tsx';
import { readCsv } from '../export/readCsv.ts';
import { catalogue, frame, orderFor } from '../shop.ts';

const AT = '2026-11-25T19:00:00.000Z';
const [whole, hit] = [
  orderFor(catalogue, 'weir-light', 165.1, { name: 'Wren Teasel' }),
  orderFor(catalogue, 'weir-light', 165.1, { name: 'Zebedee Quill' }),
];
let folder: string;
let book: Book;
const take = (document: typeof whole) =>
  receive(book, [{ document, way: 'desk', at: AT, now: pieceNow(catalogue, 'weir-light') }])[0]?.outcome;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'damage-'));
  book = openBook(join(folder, 'orders.sqlite'));
  take(whole);
  take(hit);
});
afterEach(() => {
  book.db.close();
  rmSync(folder, { recursive: true });
});

const all = filterOf(new URLSearchParams('state=all'), '2026-11-25');

/** Changes bytes of the second order's document, past the checks of the table as a disk would. */
function flip(from: string, to: string, column = 'document'): void {
  book.db.exec('PRAGMA ignore_check_constraints = ON');
  const changed = book.db
    .prepare(`UPDATE orders SET ${column} = replace(${column}, ?, ?) WHERE number = ?`)
    .run(from, to, hit.number);
  book.db.exec('PRAGMA ignore_check_constraints = OFF');
  expect(changed.changes).toBe(1);
}

describe('a flipped bit that leaves an order', () => {
  beforeEach(() => flip('Zebedee', 'Zebedue'));

  it('is told in the list and on its page, and the other order is not accused', () => {
    expect(findEntry(book, hit.number)).toMatchObject({ damaged: true });
    expect(findEntry(book, whole.number)).toMatchObject({ damaged: false });
    const list = render(<OrderListView list={orderList(book, catalogue, all, frame)} frame={frame} />);
    expect(list.split('>damaged<')).toHaveLength(2);
    const page = (number: string) =>
      render(<OrderView detail={orderDetail(book, catalogue, number, frame)!} frame={frame} />);
    expect(page(hit.number)).toContain(frame.words.order.damaged);
    expect(page(whole.number)).not.toContain(frame.words.order.damaged);
  });

  it('is mended by taking the same order in again, and by no other', () => {
    expect(take({ ...hit, quantity: 3 })).toBe('number-taken');
    expect(findEntry(book, hit.number)?.damaged).toBe(true);
    expect(take(hit)).toBe('same');
    expect(findEntry(book, hit.number)).toMatchObject({ damaged: false, document: hit });
  });
});

describe.each([
  ['no JSON', '{"', '{#'],
  ['no order', '"claspwise-order"', '"claspwise-ordes"'],
  ['another number', hit.number, whole.number],
])('a flipped bit that leaves %s', (_, from, to) => {
  beforeEach(() => flip(from, to));

  it('takes neither list nor search nor the other order down, and is named with what is left', () => {
    const list = orderList(book, catalogue, all, frame);
    expect(list.rows.map(({ entry }) => entry.document.number)).toEqual([whole.number]);
    expect(list.unreadable).toEqual([{ number: hit.number, receivedAt: AT, state: 'new', erasedAt: null }]);
    expect(render(<OrderListView list={list} frame={frame} />)).toContain(`/bench/orders/${hit.number}/`);
    expect(search(book, { ...all, text: 'Wren' }).entries).toHaveLength(1);
    expect(allEntries(book)).toHaveLength(1);
    expect(unreadableNumbers(book)).toEqual([hit.number]);
    expect(() => findEntry(book, hit.number)).toThrow('order-damaged');
    expect(findReadable(book, hit.number)).toBe(null);
    expect(remainsOf(book, hit.number)).toContain('Zebedee');
  });

  it('stands in the lists for other programs with what is left, and is refused by name where they are taken in', () => {
    const csv = readCsv(toCsv(allOrders(book)));
    expect(csv.map((row) => [row[0], row.at(-1)])).toEqual([
      ['number', 'damage'],
      [whole.number, ''],
      [hit.number, 'unreadable'],
    ]);
    const json = toExport(book, allOrders(book));
    expect(json).toMatchObject([
      { damage: '', document: whole },
      { damage: 'unreadable', number: hit.number, state: 'new', history: [{ kind: 'received' }] },
    ]);
    expect(json[1]?.document).toBe(remainsOf(book, hit.number));
    expect(readText(JSON.stringify(json)).map(({ ok }) => ok)).toEqual([true, false]);
  });

  it('is changed by nothing but taking it in again, or erasing', () => {
    expect(() => change(book, hit.number, 1, AT, { kind: 'state', state: 'sent' })).toThrow('order-damaged');
    expect(take(hit)).toBe('same');
    expect(findEntry(book, hit.number)?.document).toEqual(hit);
    flip(from, to);
    expect(erase(book, [hit.number], AT).count).toBe(1);
    expect(remainsOf(book, hit.number)).toBe('{}');
    expect(orderList(book, catalogue, all, frame).unreadable).toEqual([]);
  });
});

it('a damaged copy of the piece counts as none', () => {
  const id = findEntry(book, hit.number)?.snapshotId ?? 0;
  expect(findSnapshot(book, id)?.piece).toBe('weir-light');
  book.db.exec(`UPDATE snapshot SET content = replace(content, 'weir', 'wear')`);
  expect(findSnapshot(book, id)).toBe(null);
});
