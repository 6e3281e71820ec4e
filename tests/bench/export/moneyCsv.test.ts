/** Money of a month as a table. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { change, type Change } from '#bench/book/change.ts';
import { findEntry } from '#bench/book/entry.ts';
import { moneyMonths, moneyOfMonth } from '#bench/book/moneyMonths.ts';
import { paymentsOf } from '#bench/book/payments.ts';
import { receive } from '#bench/book/receive.ts';
import { allOrders } from '#bench/book/search.ts';
import { toCsv } from '#bench/export/csv.ts';
import { toExport } from '#bench/export/json.ts';
import { toMoneyCsv } from '#bench/export/moneyCsv.ts';
import type { InvoiceContent } from '#bench/book/invoiceContent.ts';
import type { PaymentKind } from '#words/benchCodes.ts';
import { sample } from '../../order/orders.ts';
import { catalogue, openShop, type Shop } from '../shop.ts';
import { readCsv } from './readCsv.ts';

const AT = '2026-11-25T19:00:00.000Z';
const { number } = sample;
let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
  receive(shop.book, [{ document: sample, way: 'desk', at: AT, now: null }]);
  make({ kind: 'state', state: 'agreed' });
});
afterEach(() => shop.close());

const make = (wanted: Change, at = AT): void => {
  const { version = 0 } = findEntry(shop.book, number) ?? {};
  expect(change(shop.book, number, version, at, wanted, { minor: 6450, currency: 'GBP' })).toBe('done');
};
const move = (kind: PaymentKind, minor: number, day: string): void =>
  make({ kind: 'payment', entered: { kind, minor, currency: 'GBP', day, way: 'cash' }, really: false });
const content: InvoiceContent = {
  version: 1,
  lang: 'en',
  seller: { shop: 'S', name: 'M', address: [], taxNumber: null },
  buyer: { name: '=cmd', address: [] },
  orderedOn: '2026-11-25',
  issuedOn: '2026-12-02',
  items: [],
  currency: 'GBP',
  totalMinor: 6450,
  tax: { text: 't', hundredths: 2000, minor: 1075 },
  payments: [],
  openMinor: 0,
  reason: '',
};
const table = (month: string): Record<string, string | undefined>[] => {
  const { payments, invoices } = moneyOfMonth(shop.book, month);
  const [head = [], ...rows] = readCsv(toMoneyCsv(payments, invoices));
  return rows.map((row) => Object.fromEntries(head.map((name, at) => [name, row[at]])));
};

it('has a line for what came, went back and was invoiced in that month, by day, what went back below nothing', () => {
  move('paid', 6450, '2026-11-30');
  move('refunded', 2050, '2026-12-05');
  const december = '2026-12-02T10:00:00.000Z';
  make({ kind: 'invoice', prefix: '2026-', content }, december);
  make({ kind: 'credit-note', prefix: '2026-', corrects: '2026-0001', reason: 'slip' }, december);
  expect(moneyMonths(shop.book)).toEqual(['2026-12', '2026-11']);
  expect(table('2026-11').map(({ kind, sum }) => [kind, sum])).toEqual([['paid', '64.50']]);
  expect(table('2026-12').map(({ kind, day, sum, tax, invoice }) => [kind, day, sum, tax, invoice])).toEqual([
    ['invoice', '2026-12-02', '64.50', '10.75', '2026-0001'],
    ['credit-note', '2026-12-02', '-64.50', '-10.75', '2026-0002'],
    ['refunded', '2026-12-05', '-20.50', '', ''],
  ]);
  expect(table('2026-12')[0]).toMatchObject({
    name: "'=cmd",
    tax_percent: '20',
    currency: 'GBP',
    order: number,
  });
  expect(table('2027-01')).toEqual([]);
});

it('says which lines were struck out', () => {
  move('paid', 6450, '2026-11-30');
  make({ kind: 'strike', id: 1, reason: 'twice' });
  expect(table('2026-11')).toMatchObject([{ kind: 'paid', struck_out: AT }]);
});

it('stands with each order in its own lists too', () => {
  move('paid', 6450, '2026-11-20');
  move('refunded', 450, '2026-11-21');
  const [head = [], row = []] = readCsv(toCsv(allOrders(shop.book), (of) => paymentsOf(shop.book, of)));
  const line = Object.fromEntries(head.map((name, at) => [name, row[at]]));
  expect(line).toMatchObject({ agreed: '64.50', agreed_currency: 'GBP', paid: '60.00' });
  const [exported] = toExport(shop.book, allOrders(shop.book));
  expect(exported?.payments).toMatchObject([
    { id: 1, kind: 'paid', minor: 6450 },
    { id: 2, kind: 'refunded', minor: 450 },
  ]);
  expect(exported).toMatchObject({ agreed: { minor: 6450 }, parcels: [], invoices: [] });
});
