/** Tables of what came or was counted: read as spreadsheets write them, every line that can't be entered named with its mend. */
import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { enterStock } from '#bench/book/movements.ts';
import { toStockCsv } from '#bench/export/stockCsv.ts';
import { frameIn } from '#bench/models/frame.ts';
import type { TableSheet } from '#bench/models/stock/tableSheet.ts';
import { readTable, type ReadTable } from '#bench/stock/table.ts';
import { stockNow } from '#bench/stock/stockNow.ts';
import { thingsOf } from '#bench/stock/things.ts';
import { TableView } from '#bench/views/stock/TableView.tsx';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { catalogue as demo, frame, openShop, type Shop } from '../shop.ts';

const catalogue: Catalogue = {
  ...demo,
  supplies: {
    'agate-6': {
      keep: null,
      sold: {
        ...{ by: 'strand', holds: 67, estimated: true, priceMinor: 420 },
        ...{ supplier: 'Ferrand Glass', number: 'FG-6' },
      },
    },
  },
};
const things = thingsOf(catalogue, 'en');
let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
});
afterEach(() => shop.close());

const read = (text: string): ReadTable => readTable(text, things, stockNow(shop.book, catalogue), 'received');
const rows = (text: string) => {
  const table = read(text);
  if ('problem' in table) throw new Error(JSON.stringify(table.problem));
  return table;
};
const entries = (text: string) =>
  rows(text).good.map(({ line, entry }) => [line, entry.thing, entry.kind, entry.amount]);

describe('what a spreadsheet writes', () => {
  it.each([
    ['commas', 'thing,amount,unit\nagate-6,3,strand\njet-6,12,\n'],
    ['semicolons', 'thing;amount;unit\nagate-6;3;strand\njet-6;12;\n'],
    [
      'tabs, a mark at its head and its own line ends',
      '\ufeffthing\tamount\tunit\r\nagate-6\t3\tstrand\r\njet-6\t12\t\r\n',
    ],
    ['quotes', '"thing","amount","unit"\r\n"agate-6","3","strand"\r\n"jet-6","12",""\r\n'],
    ['columns of her own', 'shelf,amount,thing,unit\nx,3,AGATE-6,Strands\n,12,jet-6,pcs\n'],
    ['German headings', 'Kurzname;Menge;Einheit\nagate-6;3;Stränge\njet-6;12;Stück\n'],
    ['the supplier’s numbers', 'number,amount,unit\nfg-6,3,strand\nS173,12,\n'],
  ])('with %s', (_, text) => {
    expect(entries(text)).toEqual([
      [2, 'agate-6', 'received', 201],
      [3, 'jet-6', 'received', 12],
    ]);
  });

  it('also with lines within a cell, empty lines, and an apostrophe before what could be a formula', () => {
    const { good } = rows(`thing,amount,note\n\nagate-6,4,"two\nlines, one ""lot"""\njet-6,5,'=1+1\n`);
    expect(good.map(({ entry }) => entry.note)).toEqual(['two\nlines, one "lot"', '=1+1']);
  });

  it('is our own table again, once its amounts are filled in', () => {
    const out = toStockCsv(things, stockNow(shop.book, catalogue), 'GBP');
    expect(rows(out)).toMatchObject({ good: [], bad: [], skipped: things.length });
    const filled = out.replace('"agate-6","counted",""', '"agate-6","counted","64"');
    expect(entries(filled)).toEqual([[expect.any(Number), 'agate-6', 'counted', 64]]);
  });
});

it('names every line that can’t be entered, and how to mend it, in both languages', () => {
  enterStock(shop.book, { at: frame.now, who: 'machine' }, [
    { thing: 'jet-6', kind: 'counted', amount: 5, entered: '5', note: '', seen: null },
  ]);
  const text = [
    'thing,number,kind,amount,unit,note',
    'agat-6,,,3,,',
    ',,,3,,',
    'agate-6,S173,,3,,',
    'agate-6,,eaten,3,,',
    'agate-6,,,some,,',
    'agate-6,,,1.5,,',
    'agate-6,,,3,dozen,',
    'jet-6,,broken,6,,',
    'jet-6,,broken,5,,',
    'jet-6,,sold,1,,',
    'agate-8,,counted,7,,',
    'agate-8,,counted,8,,',
    `agate-6,,,3,,${'x'.repeat(201)}`,
    'agate-6,,,,,',
  ].join('\n');
  const { good, bad, skipped } = rows(text);
  expect(good.map(({ line, after }) => [line, after])).toEqual([
    [10, 0],
    [12, 7],
  ]);
  expect(skipped).toBe(1);
  expect(bad.map(({ line, problem }) => [line, problem.code])).toEqual([
    [2, 'row-unknown'],
    [3, 'row-unnamed'],
    [4, 'row-differs'],
    [5, 'row-kind'],
    [6, 'amount-unreadable'],
    [7, 'amount-not-whole'],
    [8, 'unit-unknown'],
    [9, 'not-there'],
    [11, 'not-there'],
    [13, 'row-twice'],
    [14, 'note-too-long'],
  ]);
  const sheet: TableSheet = {
    ...{ text, problem: null, seen: 1, done: null },
    kind: 'received',
    rows: { good, bad, skipped },
  };
  const page = renderToString(<TableView sheet={sheet} frame={frame} />);
  expect(page).toContain('Is it “agate-6”?');
  expect(page).toContain('11 lines can’t be entered');
  expect(page).toContain('Enter the 2 good lines, leave the others');
  expect(page).toContain('value="good"');
  const german = renderToString(<TableView sheet={sheet} frame={frameIn('de', frame)} />);
  expect(german).toContain('Ist es „agate-6“?');
  expect(german).toContain('Die 2 guten Zeilen eintragen, die anderen lassen');
});

it.each([
  ['', 'table-empty'],
  [' \n ', 'table-empty'],
  ['name,amount\nx,3', 'heading-missing'],
  ['thing,name\nx,3', 'heading-missing'],
  ['thing,amount,menge\nx,3,4', 'heading-twice'],
  ['thing,amount\n"agate-6,3\njet-6,4', 'table-broken'],
  [`thing,amount\n${'jet-6,1\n'.repeat(5001)}`, 'table-too-large'],
])('says why %j is no table', (text, code) => {
  expect(read(text)).toMatchObject({ problem: { code } });
});

it('reads any text without falling over', () => {
  let tables = 0;
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
      const table = read(`thing,amount\n${text}`);
      if (!('problem' in table)) tables += 1;
    }),
  );
  expect(tables).toBeGreaterThan(10);
});
