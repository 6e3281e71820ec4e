/** Months of a year, against sums added up by hand from the core's own figures. */
import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { change } from '#bench/book/change.ts';
import { erase } from '#bench/book/erase.ts';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { monthsOf } from '#bench/models/months.ts';
import { MonthsView } from '#bench/views/MonthsView.tsx';
import { costsOf } from '#core/sizing/price/costs.ts';
import type { OrderDocument } from '#order/document.ts';
import { weekWords } from '#words/words.ts';
import { inZone } from '#tests/support/zone.ts';
import { catalogue, frame, openShop, orderFor, type Shop } from '../shop.ts';

let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
});
afterEach(() => shop.close());

function take(document: OrderDocument, at: string): OrderDocument {
  receive(shop.book, [{ document, way: 'desk', at, now: pieceNow(catalogue, document.piece.id) }]);
  return document;
}
const set = (number: string, version: number, state: 'sent' | 'strung' | 'cancelled', at: string): void => {
  expect(change(shop.book, number, version, at, { kind: 'state', state, reason: 'a slip' })).toBe('done');
};
const costs = ({ piece: { id }, shown }: OrderDocument) =>
  costsOf(catalogue.pieces.find((piece) => piece.id === id)!.design, shown.counts, catalogue.shop.rules);

it('adds up what came in, what was sent, and what an hour of it earned', () => {
  const one = take({ ...orderFor(catalogue, 'banked-fire', 165), quantity: 2 }, '2026-09-30T10:00:00.000Z');
  const two = take(orderFor(catalogue, 'weir-light', 165), '2026-10-02T10:00:00.000Z');
  const off = take(orderFor(catalogue, 'weir-light', 170), '2026-10-05T10:00:00.000Z');
  set(one.number, 1, 'sent', '2026-10-20T10:00:00.000Z');
  // Sent by mistake, taken back, and sent in the next month: the last time counts, and counts once.
  set(two.number, 1, 'sent', '2026-10-21T10:00:00.000Z');
  set(two.number, 2, 'strung', '2026-10-21T11:00:00.000Z');
  set(two.number, 3, 'sent', '2026-11-03T10:00:00.000Z');
  set(off.number, 1, 'cancelled', '2026-10-06T10:00:00.000Z');
  const { months, all, unknown } = monthsOf(shop.book, catalogue, '2026');
  expect(unknown).toEqual([]);
  expect(months.map(({ month }) => month)).toEqual(['2026-11', '2026-10', '2026-09']);
  const [november, october, september] = months;
  expect(september?.received).toMatchObject({ orders: 1, pieces: 2, priceMinor: 2 * one.shown.priceMinor });
  expect(september).toMatchObject({ sent: { orders: 0 }, perHourMinor: null });
  const { beadsMinor, findingsMinor, wireMinor, packingMinor, minutes } = costs(one);
  const left = 2 * (one.shown.priceMinor - beadsMinor - findingsMinor - wireMinor - packingMinor);
  expect(october).toMatchObject({
    received: { orders: 2 },
    cancelled: 1,
    sent: { orders: 1, pieces: 2, leftMinor: left, minutes: 2 * minutes },
    perHourMinor: Math.round(left / ((2 * minutes) / 60)),
  });
  expect(november?.sent).toMatchObject({ orders: 1, priceMinor: two.shown.priceMinor });
  expect(all).toMatchObject({ received: { orders: 3, pieces: 4 }, sent: { orders: 2 } });
});

it('goes by the calendar on the maker’s wall: an order of her New Year’s Eve is one of the old year', async () => {
  const order = take(orderFor(catalogue, 'banked-fire', 165), '2027-01-01T03:30:00.000Z');
  set(order.number, 1, 'sent', '2027-02-01T02:00:00.000Z');
  const old = await inZone('America/New_York', () => monthsOf(shop.book, catalogue, '2026'));
  expect(old.months).toMatchObject([{ month: '2026-12', received: { orders: 1 }, sent: { orders: 0 } }]);
  const next = await inZone('America/New_York', () => monthsOf(shop.book, catalogue, '2027'));
  expect(next).toMatchObject({ years: ['2026'], months: [{ month: '2027-01', sent: { orders: 1 } }] });
});

it('keeps to the year, stays the same when a buyer is erased, and names what it can’t reckon', () => {
  const order = take(orderFor(catalogue, 'banked-fire', 165), '2025-12-30T10:00:00.000Z');
  set(order.number, 1, 'sent', '2026-01-04T10:00:00.000Z');
  const before = monthsOf(shop.book, catalogue, '2026');
  expect(before).toMatchObject({ years: ['2025'], months: [{ month: '2026-01', received: { orders: 0 } }] });
  expect(monthsOf(shop.book, catalogue, '2025').months).toMatchObject([
    { month: '2025-12', sent: { orders: 0 } },
  ]);
  erase(shop.book, [order.number], '2026-02-01T10:00:00.000Z');
  expect(monthsOf(shop.book, catalogue, '2026')).toEqual(before);
  const odd = orderFor(catalogue, 'banked-fire', 165);
  take({ ...odd, shown: { ...odd.shown, counts: [[9999]] } }, '2026-03-01T10:00:00.000Z');
  const months = monthsOf(shop.book, catalogue, '2026');
  expect(months.unknown).toEqual([odd.number]);
  const page = renderToString(<MonthsView months={months} frame={frame} words={weekWords('en')} />);
  for (const said of [
    'January 2026',
    'An estimate, and no bookkeeping',
    '1 order can’t be reckoned',
    '?year=2025',
  ])
    expect(page).toContain(said);
  const none = monthsOf(shop.book, catalogue, '2019');
  expect(renderToString(<MonthsView months={none} frame={frame} words={weekWords('en')} />)).toContain(
    'Nothing in the book for 2019.',
  );
});
