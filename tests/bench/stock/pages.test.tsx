/** The pages of stock as she reads them, in both languages, and their forms. */
import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { enterStock, movementsOf, type StockEntry } from '#bench/book/movements.ts';
import { readCounts, readStockForm } from '#bench/intake/stockForm.ts';
import { countSheet } from '#bench/models/stock/countSheet.ts';
import { frameIn } from '#bench/models/frame.ts';
import { stockList } from '#bench/models/stock/stockList.ts';
import { thingSheet } from '#bench/models/stock/thingSheet.ts';
import { stockNow } from '#bench/stock/stockNow.ts';
import { thingsOf } from '#bench/stock/things.ts';
import { CountView } from '#bench/views/stock/CountView.tsx';
import { StockListView } from '#bench/views/stock/StockListView.tsx';
import { ThingView } from '#bench/views/stock/ThingView.tsx';
import { toLinesCsv, toStockCsv } from '#bench/export/stockCsv.ts';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Sold } from '#catalogue/model/supply.ts';
import { readCsv } from '../export/readCsv.ts';
import { catalogue as demo, frame, openShop, type Shop } from '../shop.ts';

const SOLD: Sold = {
  ...{ by: 'strand', holds: 67, estimated: true, priceMinor: 420 },
  ...{ supplier: 'Ferrand Glass', number: '=FG-1' },
};
const catalogue: Catalogue = {
  ...demo,
  supplies: { 'agate-6': { keep: 50, sold: SOLD }, 'wire/soft-19': { keep: 2000, sold: null } },
};
const german = frameIn('de', frame);
let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
});
afterEach(() => shop.close());

const things = (lang: 'en' | 'de' = 'en') => thingsOf(catalogue, lang);
const thing = (key: string) => things().find((one) => one.key === key)!;
const now = () => stockNow(shop.book, catalogue);
const enter = (key: string, kind: StockEntry['kind'], amount: number, note = '') =>
  enterStock(
    shop.book,
    { at: frame.now, who: 'visit' },
    [{ thing: key, kind, amount, entered: String(amount), note, seen: null }],
    (one) => thing(one).inFile,
  );
const list = (query = '') => stockList(shop.book, now(), things(), new URLSearchParams(query), frame);
const sheetOf = (key: string, typed: Parameters<typeof thingSheet>[3] = { attempt: null, done: false }) =>
  thingSheet(shop.book, now(), thing(key), typed);

it('lists what there is, what runs low and what has to be counted again', () => {
  enter('agate-6', 'counted', 49);
  enter('agate-8', 'counted', 120);
  expect(list('show=low').rows.map(({ thing: { key } }) => key)).toEqual(['agate-6']);
  expect(list('q=agate+6').rows.map(({ thing: { key } }) => key)).toEqual(['agate-6']);
  expect(list('q=nothing+of+that').rows).toEqual([]);
  const page = renderToString(<StockListView list={list()} stock={now()} frame={frame} />);
  expect(page).toContain('runs low');
  const { toBegin, byHand, toWrite } = list().files;
  expect(toBegin.map(({ key }) => key)).toEqual(['agate-10', 'moonstone-6']);
  expect(byHand).toEqual([]);
  // Of agate of eight the file says what was counted.
  expect(toWrite.map(({ thing: { key }, free }) => [key, free])).toEqual([['agate-6', 49]]);
  expect(renderToString(<StockListView list={list()} stock={now()} frame={german} />)).toContain(
    'geht zur Neige',
  );
});

it('goes from tray to tray, A2 before A10', () => {
  const trays = things().map(({ tray }) => tray);
  const known = trays.filter((tray) => tray !== null);
  expect(known).toEqual(known.toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true })));
  expect(trays.slice(known.length).every((tray) => tray === null)).toBe(true);
});

it('shows what came and went of a thing, what was there after each, and takes back what she entered', () => {
  enter('agate-6', 'counted', 100);
  enter('agate-6', 'broken', 4, 'cracked at the hole');
  const { lines, lastId } = sheetOf('agate-6');
  expect(lines.map(({ line, after, strikable }) => [line.amount, after, strikable])).toEqual([
    [-4, 96, true],
    [100, 100, true],
  ]);
  const page = renderToString(<ThingView sheet={sheetOf('agate-6')} frame={frame} />);
  expect(page).toContain('cracked at the hole');
  expect(page).toContain('from elsewhere');
  expect(page).toContain(`name="seen" value="${lastId}"`);
  expect(page).toContain('by the strand of about 67 pieces, £4.20');
  expect(page).toContain('aria-label="Take back: Broken or lost -4"');
  expect(renderToString(<ThingView sheet={sheetOf('agate-6')} frame={german} />)).toContain(
    'als Strang zu etwa 67 Stück',
  );
});

it('keeps what was typed where it could not be entered', () => {
  const form = new URLSearchParams({ kind: 'sold', amount: '1.5', unit: 'piece', note: 'fair', seen: '0' });
  const read = readStockForm(form, thing('agate-6'));
  expect(read).toEqual({ problem: { code: 'amount-not-whole', text: '1.5' } });
  const attempt = { form, problem: { code: 'amount-not-whole', text: '1.5' } } as const;
  const page = renderToString(
    <ThingView sheet={sheetOf('agate-6', { attempt, done: false })} frame={frame} />,
  );
  expect(page).toContain('role="alert"');
  expect(page).toContain('name="amount" value="1.5"');
  expect(page).toMatch(/<option value="sold" selected/);
  expect(page).toContain('name="note" value="fair"');
});

it('reads only forms that it sends', () => {
  const read = (fields: Record<string, string>, key = 'agate-6') =>
    readStockForm(new URLSearchParams(fields), thing(key));
  expect(read({ kind: 'received', amount: '2', unit: 'strand', seen: '0' })).toMatchObject({
    entry: { thing: 'agate-6', kind: 'received', amount: 134, entered: '2 strand', seen: 0 },
  });
  expect(read({ kind: 'received', amount: '2', unit: 'strand' })).toBeNull();
  expect(read({ kind: 'counted', amount: '0', unit: 'piece', seen: '7' })).toMatchObject({
    entry: { kind: 'counted', amount: 0, seen: 7 },
  });
  expect(read({ kind: 'counted', amount: '9', unit: 'piece' })).toBeNull();
  expect(read({ kind: 'strung', amount: '9', unit: 'piece' })).toBeNull();
  expect(read({ kind: 'put-aside', amount: '9', unit: 'm' })).toBeNull();
  expect(read({ kind: 'put-aside', amount: '42', unit: 'cm', seen: '0' }, 'wire/soft-19')).toMatchObject({
    entry: { kind: 'put-aside', amount: 420 },
  });
  expect(read({ kind: 'strike', line: 'x' })).toBeNull();
  expect(read({ kind: 'offcut-gone', mm: '420' })).toBeNull();
  expect(read({ kind: 'sold', amount: '1', note: 'x'.repeat(201) })).toMatchObject({
    problem: { code: 'note-too-long' },
  });
});

it('enters a form that is sent twice once', () => {
  enter('agate-6', 'counted', 100);
  const form = new URLSearchParams({
    ...{ kind: 'received', amount: '2', unit: 'strand' },
    seen: String(now().balance('agate-6')?.lastId),
  });
  const read = readStockForm(form, thing('agate-6'));
  if (read === null || !('entry' in read)) throw new Error('not read');
  const send = () => enterStock(shop.book, { at: frame.now, who: 'visit' }, [read.entry], () => null).outcome;
  expect([send(), send()]).toEqual(['done', 'changed-meanwhile']);
  expect(now().balance('agate-6')?.amount).toBe(234);
});

it('counts a whole tray on one sheet: what is empty stays, what is wrong is named, and nothing typed is lost', () => {
  enter('agate-6', 'counted', 100);
  enter('wire/soft-19', 'received', 9144);
  enter('wire/soft-19', 'put-aside', 400);
  const sheet = countSheet(now(), things(), new URLSearchParams({ tray: 'E1' }), null);
  expect(sheet.rows.map(({ thing: { key }, there }) => [key, there])).toEqual([
    ['agate-10', 64],
    ['agate-6', 100],
    ['agate-8', 120],
  ]);
  const wire = countSheet(now(), things(), new URLSearchParams(), null).rows.find(
    ({ thing: { key } }) => key === 'wire/soft-19',
  );
  expect(wire?.there).toBe(8744);
  const form = new URLSearchParams({
    'amount:agate-6': '2',
    'unit:agate-6': 'strand',
    'seen:agate-6': String(movementsOf(shop.book, 'agate-6')[0]!.id),
    'amount:agate-8': 'many',
    'seen:agate-8': '0',
    'amount:agate-10': '',
    'seen:agate-10': '0',
  });
  const { entries, problems } = readCounts(form, things());
  expect(entries).toMatchObject([{ thing: 'agate-6', kind: 'counted', amount: 134 }]);
  expect(problems).toEqual({ 'agate-8': { code: 'amount-unreadable', text: 'many' } });
  const again = countSheet(now(), things(), new URLSearchParams({ tray: 'E1' }), { form, problems });
  const page = renderToString(<CountView sheet={again} frame={frame} />);
  expect(page).toContain('name="amount:agate-6" value="2"');
  expect(page).toMatch(/name="amount:agate-8" value="many"[^>]*aria-invalid="true"/);
  expect(renderToString(<CountView sheet={again} frame={german} />)).toContain('keine Zahl');
});

it('goes out as tables that spreadsheets run no formula of', () => {
  enter('agate-6', 'counted', 100, '=1+1');
  enter('agate-6', 'sold', 1);
  const [head, ...rows] = readCsv(toStockCsv(things(), now(), 'GBP'));
  const agate = rows.find(([key]) => key === 'agate-6')!;
  const cell = (name: string): string | undefined => agate[head!.indexOf(name)];
  expect([cell('there'), cell('free'), cell('amount'), cell('buy_below'), cell('supplier_number')]).toEqual([
    ...['99', '99', '', '50', "'=FG-1"],
  ]);
  expect(rows).toHaveLength(things().length);
  const lines = readCsv(toLinesCsv(movementsOf(shop.book, 'agate-6').toReversed()));
  expect(lines.map((line) => [line[2], line[3], line.at(-1)])).toEqual([
    ['kind', 'amount', 'note'],
    ['counted', '100', "'=1+1"],
    ['sold', '-1', ''],
  ]);
});
