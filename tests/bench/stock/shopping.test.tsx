/** The shopping list: what lacks, in the units that things are sold in, and what came of it. */
import { renderToString } from 'preact-render-to-string';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { enterStock } from '#bench/book/movements.ts';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { readCame } from '#bench/intake/stockForm.ts';
import { frameIn } from '#bench/models/frame.ts';
import { shoppingSheet } from '#bench/models/stock/shoppingSheet.ts';
import { shoppingOf, type NeedFor } from '#bench/stock/shopping.ts';
import { stockNow } from '#bench/stock/stockNow.ts';
import { thingsOf, type Thing } from '#bench/stock/things.ts';
import { ShoppingView } from '#bench/views/stock/ShoppingView.tsx';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Sold } from '#catalogue/model/supply.ts';
import { tally } from '#core/design/tally.ts';
import { usualCounts } from '#core/design/usualCounts.ts';
import { catalogue as demo, frame as demoFrame, openShop, orderFor, type Shop } from '../shop.ts';

const sold = (more: Partial<Sold> = {}): Sold => ({
  ...{ by: 'strand', holds: 50, estimated: true, priceMinor: 900, supplier: 'Cray Glassworks', number: null },
  ...more,
});
const thing = (more: Partial<Thing> = {}): Thing => ({
  ...{ key: 'bead', id: 'bead', name: 'Bead', number: 'B1', tray: null, wire: false },
  ...{ keep: null, sold: sold(), massG: 1, inFile: null, costMinor: 20 },
  ...more,
});
const needs = (amount: number): ReadonlyMap<string, NeedFor[]> =>
  new Map([['bead', amount === 0 ? [] : [{ of: 'order', id: 'A', amount }]]]);
const bought = (one: Thing, need: number, have: number | null, marks = true, sparePercent = 10) =>
  shoppingOf([one], needs(need), { onHand: () => have }, { marks, sparePercent });
const row = (...of: Parameters<typeof bought>) => bought(...of).suppliers[0]?.rows[0];

describe('how much is bought', () => {
  it.each<[string, Parameters<typeof bought>, object | undefined]>([
    ['nothing where there is enough', [thing(), 22, 22], undefined],
    ['what lacks, and one spare for ten', [thing(), 66, 22], { missing: 44, spare: 4, units: 1 }],
    ['up to the mark', [thing({ keep: 30 }), 22, 22], { missing: 30, spare: 3, units: 1 }],
    ['no mark where she wants none', [thing({ keep: 30 }), 22, 22, false], undefined],
    ['two strands for one bead too many', [thing(), 51, 0], { missing: 51, spare: 5, units: 2 }],
    ['what was strung without being there', [thing(), 0, -4], { missing: 4, spare: 0, units: 1 }],
    ['no spare of a clasp alone', [thing({ sold: sold({ by: 'piece', holds: 1 }) }), 1, 0], { units: 1 }],
    ['pieces where nothing is said', [thing({ sold: null }), 9, 0], { units: 9, priceMinor: 20 }],
    ['whole metres of wire', [thing({ sold: null, wire: true }), 1200, 0], { units: 2, missing: 1200 }],
  ])('%s', (_, of, expected) => {
    if (expected === undefined) expect(row(...of)).toBeUndefined();
    else expect(row(...of)).toMatchObject(expected);
  });

  it('is enough, and with one unit less it would not be', () => {
    fc.assert(
      fc.property(
        fc.record({ need: fc.nat(500), have: fc.integer({ min: -20, max: 400 }), keep: fc.nat(90) }),
        fc.integer({ min: 1, max: 120 }),
        fc.nat(60),
        ({ need, have, keep }, holds, spare) => {
          const one = row(thing({ keep, sold: sold({ holds }) }), need, have, true, spare);
          if (one === undefined) {
            expect(have).toBeGreaterThanOrEqual(need + keep);
            return;
          }
          expect(one.units * holds + have).toBeGreaterThanOrEqual(need + keep + one.spare);
          expect((one.units - 1) * holds).toBeLessThan(one.missing + one.spare);
        },
      ),
    );
  });

  it('stands by supplier with its sums; what nobody counts is told apart', () => {
    const list = shoppingOf(
      [
        thing({ key: 'b', sold: sold({ supplier: 'Hob Lane Stone', priceMinor: 1000 }) }),
        thing({ key: 'a' }),
        thing({ key: 'c', sold: null }),
        thing({ key: 'd' }),
        thing({ key: 'e' }),
      ],
      new Map(['a', 'b', 'c', 'd'].map((key) => [key, [{ of: 'piece', id: 'x', amount: 60 }]])),
      { onHand: (key) => (key === 'd' || key === 'e' ? null : 0) },
      { marks: true, sparePercent: 0 },
    );
    expect(list.suppliers.map(({ name, sumMinor }) => [name, sumMinor])).toEqual([
      ['Cray Glassworks', 1800],
      ['Hob Lane Stone', 2000],
      [null, 1200],
    ]);
    expect(list.sumMinor).toBe(5000);
    expect(list.uncounted).toMatchObject([{ thing: { key: 'd' }, need: 60 }]);
  });
});

const PIECE = 'weir-light';
const design = demo.pieces.find(({ id }) => id === PIECE)!.design;
const [BEAD, LISTED] = [...tally(design, usualCounts(design))].toSorted((a, b) => b[1] - a[1])[0]!;
const catalogue: Catalogue = { ...demo, supplies: { [BEAD]: { keep: null, sold: sold() } } };
const frame = demoFrame;
let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
  enter(BEAD, 10);
});
afterEach(() => shop.close());

function enter(key: string, amount: number): void {
  enterStock(shop.book, { at: frame.now, who: 'machine' }, [
    { thing: key, kind: 'counted', amount, entered: String(amount), note: '', seen: null },
  ]);
}
const things = thingsOf(catalogue, 'en');
const sheet = (query = '') =>
  shoppingSheet(
    { book: shop.book, catalogue, things, stock: stockNow(shop.book, catalogue), frame },
    new URLSearchParams(query),
    null,
  );

it('says what five of a piece take, by size, and why where it can’t', () => {
  const five = sheet(`of=open&piece=${PIECE}&many=5&size=`);
  const bead = five.shopping.suppliers[0]?.rows.find(({ thing: { key } }) => key === BEAD);
  expect(bead).toMatchObject({ need: 5 * LISTED, have: 10, missing: 5 * LISTED - 10 });
  expect(five.shopping.uncounted.length).toBeGreaterThan(2);
  const sized = sheet(`of=open&piece=${PIECE}&many=1&size=165+mm`);
  const { counts } = orderFor(catalogue, PIECE, 165).shown;
  expect(sized.shopping.suppliers[0]?.rows[0]?.need).toBe(tally(design, counts).get(BEAD));
  const wrong = sheet(
    `of=open&piece=${PIECE}&many=x&size=&piece=nothing&many=1&size=&piece=${PIECE}&many=1&size=2+mm`,
  );
  expect(wrong.makes.map(({ problem }) => problem)).toEqual(['many', 'no-piece', 'cannot-be-made', null]);
  expect(sheet(`of=open&piece=${PIECE}&many=1&size=wide`).makes[0]?.problem).toBe('size');
});

it('goes by orders, is printed in both languages, and enters what came of it once', () => {
  const document = { ...orderFor(catalogue, PIECE, 165), quantity: 2 };
  receive(shop.book, [{ document, way: 'desk', at: frame.now, now: pieceNow(catalogue, PIECE) }]);
  const list = sheet();
  const stock = stockNow(shop.book, catalogue);
  const page = renderToString(<ShoppingView sheet={list} stock={stock} frame={frame} />);
  expect(page).toContain('Cray Glassworks');
  expect(page).toContain('1 strand');
  expect(page).toContain('£9.00');
  expect(
    sheet('of=agreed')
      .shopping.suppliers.flatMap(({ rows }) => rows)
      .map(({ thing: { key } }) => key),
  ).not.toContain(BEAD);
  const german = renderToString(<ShoppingView sheet={list} stock={stock} frame={frameIn('de', frame)} />);
  expect(german).toContain('1 Strang');
  const seen = String(stock.balance(BEAD)!.lastId);
  const form = new URLSearchParams({ [`came:${BEAD}`]: '1', [`seen:${BEAD}`]: seen });
  const came = readCame(form, things);
  expect(came).toMatchObject({
    entries: [{ thing: BEAD, kind: 'received', amount: 50, entered: '1 strand' }],
  });
  if (came === null || 'problem' in came) throw new Error('not read');
  const moment = { at: frame.now, who: 'machine' } as const;
  expect(enterStock(shop.book, moment, came.entries)).toEqual({ outcome: 'done' });
  // The same list sent once more.
  expect(enterStock(shop.book, moment, came.entries)).toMatchObject({ outcome: 'changed-meanwhile' });
  expect(stockNow(shop.book, catalogue).onHand(BEAD)).toBe(60);
  expect(readCame(new URLSearchParams(), things)).toBeNull();
  expect(
    readCame(new URLSearchParams({ [`came:${BEAD}`]: 'x', [`seen:${BEAD}`]: '1' }), things),
  ).toMatchObject({
    problem: { code: 'amount-unreadable' },
  });
});
