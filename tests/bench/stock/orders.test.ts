/** What orders do to the trays: an agreed one reserves, a strung one takes, and one that goes back gives back. */
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUp, restore } from '#bench/book/backup.ts';
import { findEntry } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import {
  allMovements,
  balances,
  enterStock,
  movementsOf,
  strikeLine,
  takenBy,
} from '#bench/book/movements.ts';
import { takeWithoutOrder } from '#bench/book/orderStock.ts';
import { receive } from '#bench/book/receive.ts';
import { changeOrder } from '#bench/changeOrder.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { describedOf } from '#bench/check/sizedBefore.ts';
import { gather } from '#bench/models/gather.ts';
import { orderDetail } from '#bench/models/orderDetail.ts';
import { weekPlan } from '#bench/models/week.ts';
import { takesOfPiece } from '#bench/stock/takes.ts';
import { tally } from '#core/design/tally.ts';
import { stringing } from '#core/instructions/stringing.ts';
import { RESTRING } from '#words/benchCodes.ts';
import { catalogue, frame, orderFor, readyOrder } from '../shop.ts';
import { BEAD, design, MANY, MOMENT, openTrays, PIECE, type Trays } from './trays.ts';

const WIRE = `wire/${design.wire.id}`;

let shop: Trays;
beforeEach(() => {
  shop = openTrays();
});
afterEach(() => shop.close());

const take: Trays['take'] = (...of) => shop.take(...of);
const set: Trays['set'] = (...of) => shop.set(...of);
const count: Trays['count'] = (...of) => shop.count(...of);
const figures: Trays['figures'] = (thing) => shop.figures(thing);

/** By the order as it was shown: one piece's beads, worked out apart from the bench. */
const shownOf = (number: string) => {
  const { document } = findEntry(shop.book, number)!;
  const parts = tally(design, document.shown.counts);
  const { candidate, copy } = orderDetail(shop.book, catalogue, number, frame)!.now.checked;
  const { strands } = stringing(copy!.design, copy!.rules, candidate!, document.hand);
  return { parts, wireMm: strands.reduce((sum, { cut }) => sum + Math.ceil(cut.totalMm), 0) };
};
describe('an order', () => {
  it('reserves once agreed, takes once strung, and no more when it is sent', () => {
    count(BEAD, 500);
    count(WIRE, 5000);
    const number = take({ quantity: 3 });
    const { wireMm } = shownOf(number);
    expect(figures(BEAD)).toEqual([500, 0, 500]);
    set(number, 'agreed');
    expect(figures(BEAD)).toEqual([500, 3 * MANY, 500 - 3 * MANY]);
    expect(figures(WIRE)).toEqual([5000, 3 * wireMm, 5000 - 3 * wireMm]);
    expect(shop.now().reservedBy(BEAD)).toEqual([{ number, amount: 3 * MANY }]);
    set(number, 'strung');
    expect(figures(BEAD)).toEqual([500 - 3 * MANY, 0, 500 - 3 * MANY]);
    expect(figures(WIRE)).toEqual([5000 - 3 * wireMm, 0, 5000 - 3 * wireMm]);
    const lines = allMovements(shop.book).length;
    set(number, 'sent');
    expect(allMovements(shop.book)).toHaveLength(lines);
    // What nobody counts isn't taken either.
    expect(new Set(allMovements(shop.book).map(({ thing }) => thing))).toEqual(new Set([BEAD, WIRE]));
  });

  it('gives back what it took where it goes back, and takes it again', () => {
    count(BEAD, 100);
    const number = take();
    set(number, 'sent');
    expect(figures(BEAD)).toEqual([100 - MANY, 0, 100 - MANY]);
    set(number, 'agreed');
    expect(figures(BEAD)).toEqual([100, MANY, 100 - MANY]);
    set(number, 'strung');
    expect(figures(BEAD)).toEqual([100 - MANY, 0, 100 - MANY]);
    expect(movementsOf(shop.book, BEAD).map(({ kind }) => kind)).toEqual([
      'strung',
      'struck',
      'strung',
      'counted',
    ]);
  });

  it('keeps what it took where it is cancelled after it was strung, and frees it where it wasn’t', () => {
    count(BEAD, 100);
    const strung = take();
    set(strung, 'strung');
    set(strung, 'cancelled');
    expect(takenBy(shop.book, strung).get(BEAD)).toBe(MANY);
    set(strung, 'sent');
    expect(takenBy(shop.book, strung).get(BEAD)).toBe(MANY);
    const agreed = take();
    set(agreed, 'agreed');
    set(agreed, 'cancelled');
    expect(figures(BEAD)).toEqual([100 - MANY, 0, 100 - MANY]);
    set(strung, 'cancelled');
    set(strung, 'agreed');
    expect(figures(BEAD)).toEqual([100, MANY, 100 - MANY]);
  });

  it('takes nothing after the fact: strung before the thing was counted, it is strung', () => {
    const number = take();
    set(number, 'strung');
    count(BEAD, 100);
    set(number, 'sent');
    expect(figures(BEAD)).toEqual([100, 0, 100]);
    set(number, 'agreed');
    expect(figures(BEAD)).toEqual([100, MANY, 100 - MANY]);
  });

  it('to restring takes what is new alone, and one for the piece as it lies takes nothing', () => {
    const { crimp, clasp } = design.ends;
    for (const thing of [BEAD, crimp, clasp, WIRE]) count(thing, 5000);
    const restrung = take({ choices: RESTRING }, 'telephone');
    set(restrung, 'agreed');
    expect(figures(BEAD)).toEqual([5000, 0, 5000]);
    expect(figures(clasp)).toEqual([5000, 0, 5000]);
    expect(figures(crimp)).toEqual([5000, 2 * design.strands.length, 5000 - 2 * design.strands.length]);
    expect(figures(WIRE)[1]).toBeGreaterThan(200);
    set(restrung, 'strung');
    expect([...takenBy(shop.book, restrung).keys()].toSorted()).toEqual([crimp, WIRE].toSorted());
    const ready = catalogue.pieces.find(({ status }) => status === 'available')!;
    const document = readyOrder(ready.id);
    receive(shop.book, [{ document, way: 'desk', at: frame.now, now: pieceNow(catalogue, ready.id) }]);
    const lines = allMovements(shop.book).length;
    set(document.number, 'sent');
    expect(allMovements(shop.book)).toHaveLength(lines);
  });

  it('uses an offcut that is long enough, keeps what is left of it if that is long enough, and puts all of it back', () => {
    const number = take();
    const { wireMm } = shownOf(number);
    const enter = (kind: 'received' | 'put-aside', amount: number): void =>
      void enterStock(shop.book, MOMENT, [{ thing: WIRE, kind, amount, entered: '', note: '', seen: null }]);
    enter('received', 9144);
    enter('put-aside', wireMm + 300);
    set(number, 'strung');
    expect(balances(shop.book).get(WIRE)).toMatchObject({ amount: 9144 - wireMm, offcuts: [300] });
    set(number, 'agreed');
    expect(balances(shop.book).get(WIRE)).toMatchObject({ amount: 9144, offcuts: [wireMm + 300] });
    const other = take();
    enter('put-aside', wireMm + 10);
    set(other, 'strung');
    // Ten millimetres are thrown away with it.
    expect(balances(shop.book).get(WIRE)).toMatchObject({
      amount: 9144 - wireMm - 10,
      offcuts: [wireMm + 300],
    });
  });

  it('may leave less than nothing, for strung is strung', () => {
    const number = take();
    set(number, 'agreed');
    count(BEAD, MANY - 4);
    set(number, 'strung');
    expect(figures(BEAD)).toEqual([-4, 0, -4]);
  });
});

it('takes what was strung without an order, and each of it can be taken back', () => {
  count(BEAD, 100);
  const copy = pieceNow(catalogue, PIECE)!;
  const candidate = describedOf(copy, orderFor(catalogue, PIECE, 165).shown.counts);
  const takes = takesOfPiece(copy, candidate, 2, 250);
  expect(takeWithoutOrder(shop.book, MOMENT, takes, '2 × Weir Light')).toBe(1);
  expect(figures(BEAD)).toEqual([100 - 2 * MANY, 0, 100 - 2 * MANY]);
  const [line] = movementsOf(shop.book, BEAD);
  expect(line).toMatchObject({ kind: 'strung', number: null, note: '2 × Weir Light' });
  expect(strikeLine(shop.book, MOMENT, line!.id, '')).toBe('done');
  expect(figures(BEAD)).toEqual([100, 0, 100]);
});

it('tells on the pick list which cut comes from which offcut, as stringing then takes it', () => {
  const [first, second] = [take(), take()];
  const { wireMm } = shownOf(first);
  for (const [kind, amount] of [
    ['received', 9144],
    ['put-aside', wireMm + 300],
  ] as const) {
    enterStock(shop.book, MOMENT, [{ thing: WIRE, kind, amount, entered: '', note: '', seen: null }]);
  }
  const order = [first, second].toSorted()[0]!;
  const [wire] = gather(shop.book, catalogue, frame, { of: 'open' }).wires;
  expect(wire?.offcuts).toMatchObject([{ order, cutMm: wireMm, offcutMm: wireMm + 300 }]);
  expect(gather(shop.book, catalogue, frame, { number: second }).wires[0]?.offcuts).toHaveLength(1);
  set(second, 'strung');
  expect(gather(shop.book, catalogue, frame, { number: first }).wires[0]?.offcuts).toEqual([]);
});

describe('what there is for each order', () => {
  it('is not held against the order that it is reserved for, but against the next', () => {
    const first = take();
    const second = take();
    count(BEAD, MANY + 3);
    set(first, 'agreed');
    expect(orderDetail(shop.book, catalogue, first, frame)!.now.checked.differences).toEqual([]);
    expect(
      weekPlan(shop.book, catalogue, frame).orders.map(({ entry, short }) => [
        entry.document.number,
        short.map(({ component, need, missing }) => [component, need, missing]),
      ]),
    ).toEqual(
      [first, second].toSorted().map((number) => [number, number === first ? [] : [[BEAD, MANY, MANY - 3]]]),
    );
    const part = (number: string) =>
      gather(shop.book, catalogue, frame, { number }).parts.find(({ id }) => id === BEAD);
    expect(part(first)).toMatchObject({ stock: MANY + 3, missing: 0 });
    expect(part(second)).toMatchObject({ stock: 3 });
    set(first, 'strung');
    // Strung and sent orders are shown as they were strung, however little is left.
    expect(orderDetail(shop.book, catalogue, first, frame)!.now.checked.differences).toEqual([]);
  });

  it('goes to agreed orders before others, whatever is due first', () => {
    const soon = take();
    const agreed = take();
    count(BEAD, MANY);
    const form = new URLSearchParams({ version: '1', kind: 'due', on: '2026-11-27' });
    changeOrder(shop.book, catalogue, soon, form, frame);
    set(agreed, 'agreed');
    const shortOf = new Map(
      weekPlan(shop.book, catalogue, frame).orders.map(({ entry, short }) => [entry.document.number, short]),
    );
    expect(shortOf.get(agreed)).toEqual([]);
    expect(shortOf.get(soon)).toMatchObject([{ component: BEAD, missing: MANY }]);
  });
});

it('is right for an erased buyer, and once a backup is put back', () => {
  count(BEAD, 200);
  const [strung, agreed] = [take(), take()];
  set(strung, 'strung');
  set(agreed, 'agreed');
  const before = figures(BEAD);
  expect(before).toEqual([200 - MANY, MANY, 200 - 2 * MANY]);
  erase(shop.book, [strung, agreed], frame.now);
  expect(figures(BEAD)).toEqual(before);
  const copy = join(dirname(shop.book.file), 'copy.sqlite');
  backUp(shop.book, copy);
  count(BEAD, 1);
  set(agreed, 'cancelled');
  restore(shop.book, copy);
  expect(figures(BEAD)).toEqual(before);
  set(agreed, 'strung');
  expect(figures(BEAD)).toEqual([200 - 2 * MANY, 0, 200 - 2 * MANY]);
});
