/** Lines of stock in the book: what adds, what is refused, what takes back, and that the sum is always all there is. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUp, restore } from '#bench/book/backup.ts';
import {
  allMovements,
  balances,
  enterStock,
  movementsOf,
  onReelOf,
  strikeLine,
  type StockEntry,
} from '#bench/book/movements.ts';
import { openBook, type Book } from '#bench/book/open.ts';
import { cutsFrom } from '#bench/book/orderStock.ts';

const MOMENT = { at: '2026-11-25T19:00:00.000Z', who: 'machine' } as const;
let folder: string;
let book: Book;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'stock-'));
  book = openBook(join(folder, 'orders.sqlite'), { busyMs: 50 });
});
afterEach(() => {
  book.db.close();
  rmSync(folder, { recursive: true });
});

const line = (kind: StockEntry['kind'], amount: number, more: Partial<StockEntry> = {}): StockEntry => ({
  ...{ thing: 'agate-6', kind, amount, entered: String(amount), note: '', seen: null },
  ...more,
});
const enter = (...entries: StockEntry[]) => enterStock(book, MOMENT, entries);
const have = (thing = 'agate-6'): number | undefined => balances(book).get(thing)?.amount;

describe('what is entered', () => {
  it('adds up: received, counted, broken, sold', () => {
    expect(have()).toBeUndefined();
    expect(enter(line('received', 64))).toEqual({ outcome: 'done' });
    expect(enter(line('broken', 3), line('sold', 10))).toEqual({ outcome: 'done' });
    expect(have()).toBe(51);
    expect(enter(line('counted', 50))).toEqual({ outcome: 'done' });
    expect(have()).toBe(50);
    expect(movementsOf(book, 'agate-6').map(({ kind, amount }) => [kind, amount])).toEqual([
      ['counted', -1],
      ['sold', -10],
      ['broken', -3],
      ['received', 64],
    ]);
  });

  it('is refused where more is to go than there is, and nothing of the list is entered then', () => {
    enter(line('received', 5));
    const outcome = enter(line('received', 7), line('broken', 13));
    expect(outcome).toEqual({ outcome: 'not-there', thing: 'agate-6', have: 12 });
    expect(have()).toBe(5);
  });

  it('begins with what the file said, where nobody has counted here', () => {
    const inFile = (thing: string): number | null => (thing === 'agate-6' ? 180 : null);
    enterStock(book, MOMENT, [line('received', 64), line('received', 9, { thing: 'jet-4' })], inFile);
    expect([have(), have('jet-4')]).toEqual([244, 9]);
    enterStock(book, MOMENT, [line('received', 1)], inFile);
    expect(have()).toBe(245);
  });

  it('is refused where something moved since she looked', () => {
    enter(line('received', 64));
    const { lastId } = balances(book).get('agate-6')!;
    enter(line('broken', 1));
    expect(enter(line('counted', 60, { seen: lastId }))).toEqual({
      outcome: 'changed-meanwhile',
      thing: 'agate-6',
    });
    expect(have()).toBe(63);
    const now = balances(book).get('agate-6')!.lastId;
    expect(enter(line('counted', 60, { seen: now }))).toEqual({ outcome: 'done' });
  });

  it.each([0, -1, 1.5, Number.NaN, 1e9])('is no amount that no form sends: %s', (amount) => {
    expect(() => enter(line('received', amount))).toThrow(RangeError);
  });

  it('stands in the order in which it was entered, whatever the clock said', () => {
    enterStock(book, { ...MOMENT, at: '2026-11-25T19:00:00.000Z' }, [line('counted', 10)]);
    enterStock(book, { ...MOMENT, at: '2019-01-01T00:00:00.000Z' }, [line('counted', 20)]);
    expect(have()).toBe(20);
    expect(movementsOf(book, 'agate-6').map(({ counted }) => counted)).toEqual([20, 10]);
  });
});

describe('a line entered by mistake', () => {
  it('is taken back once, and stands there still', () => {
    enter(line('counted', 40), line('received', 64));
    const [newest] = movementsOf(book, 'agate-6');
    expect(strikeLine(book, MOMENT, newest!.id, 'wrong tray')).toBe('done');
    expect(have()).toBe(40);
    expect(strikeLine(book, MOMENT, newest!.id, '')).toBe('no-such-line');
    expect(strikeLine(book, MOMENT, 999, '')).toBe('no-such-line');
    const lines = movementsOf(book, 'agate-6');
    expect(lines).toHaveLength(3);
    expect(lines[0]).toMatchObject({ kind: 'struck', amount: -64, strikes: newest!.id, note: 'wrong tray' });
    expect(lines[1]).toMatchObject({ kind: 'received', struckBy: lines[0]!.id });
    expect(strikeLine(book, MOMENT, lines[0]!.id, '')).toBe('no-such-line');
  });

  it('stays where what it brought is gone since', () => {
    enter(line('received', 64), line('sold', 60));
    const received = movementsOf(book, 'agate-6').at(-1)!;
    expect(strikeLine(book, MOMENT, received.id, '')).toBe('not-there');
    expect(have()).toBe(4);
  });
});

describe('wire', () => {
  const wire = { thing: 'wire/soft-19' };
  const there = () => balances(book).get('wire/soft-19')!;

  it('is the reel and what was cut off it and kept; a count is of the reel', () => {
    enter(line('received', 9144, wire), line('put-aside', 420, wire), line('put-aside', 300, wire));
    expect(there()).toMatchObject({ amount: 9144, offcuts: [420, 300] });
    enter(line('counted', 8000, wire));
    expect(there()).toMatchObject({ amount: 8720, offcuts: [420, 300] });
    expect(onReelOf(there())).toBe(8000);
    expect(enter(line('put-aside', 8001, wire))).toMatchObject({ outcome: 'not-there', have: 8000 });
    expect(enter(line('broken', 300, { ...wire, offcut: 300 }))).toEqual({ outcome: 'done' });
    expect(there()).toMatchObject({ amount: 8420, offcuts: [420] });
    expect(enter(line('broken', 300, { ...wire, offcut: 300 }))).toMatchObject({ outcome: 'not-there' });
  });

  it('goes back onto the reel where it was put aside by mistake', () => {
    enter(line('received', 1000, wire), line('put-aside', 400, wire));
    const [aside] = movementsOf(book, 'wire/soft-19');
    expect(strikeLine(book, MOMENT, aside!.id, '')).toBe('done');
    expect(there()).toMatchObject({ amount: 1000, offcuts: [] });
    expect(onReelOf(there())).toBe(1000);
  });

  it('is cut from the shortest offcut that is long enough, the longest cut first, else from the reel', () => {
    expect(cutsFrom([380, 400], [420, 390, 700])).toEqual([
      { cutMm: 400, offcut: 420 },
      { cutMm: 380, offcut: 390 },
    ]);
    expect(cutsFrom([500, 450], [460])).toEqual([
      { cutMm: 500, offcut: null },
      { cutMm: 450, offcut: 460 },
    ]);
    expect(cutsFrom([300], [])).toEqual([{ cutMm: 300, offcut: null }]);
  });
});

type Step =
  | { readonly do: 'enter'; readonly kind: StockEntry['kind']; readonly of: number; readonly amount: number }
  | { readonly do: 'strike'; readonly at: number };

it('whatever is entered and taken back, a thing is the sum of its lines, and only stringing leaves less than nothing', () => {
  const things = ['agate-6', 'jet-4', 'wire/soft-19'];
  const step: fc.Arbitrary<Step> = fc.oneof(
    fc.record({
      do: fc.constant('enter' as const),
      kind: fc.constantFrom<StockEntry['kind']>('received', 'counted', 'broken', 'sold', 'put-aside'),
      of: fc.nat(2),
      amount: fc.integer({ min: 1, max: 40 }),
    }),
    fc.record({ do: fc.constant('strike' as const), at: fc.nat(30) }),
  );
  let struck = 0;
  fc.assert(
    fc.property(fc.array(step, { maxLength: 25 }), (steps) => {
      book.db.exec('PRAGMA foreign_keys = OFF; DELETE FROM movement; PRAGMA foreign_keys = ON');
      for (const one of steps) {
        const before = allMovements(book);
        if (one.do === 'strike') {
          const target = before[one.at % Math.max(1, before.length)];
          if (target !== undefined && strikeLine(book, MOMENT, target.id, '') === 'done') struck += 1;
        } else {
          const thing = one.kind === 'put-aside' ? 'wire/soft-19' : things[one.of]!;
          const outcome = enter(line(one.kind, one.amount, { thing }));
          if (outcome.outcome !== 'done') expect(allMovements(book)).toEqual(before);
        }
        for (const thing of things) {
          const lines = allMovements(book).filter((all) => all.thing === thing);
          const balance = balances(book).get(thing);
          expect(balance?.amount ?? 0).toBe(lines.reduce((sum, { amount }) => sum + amount, 0));
          if (balance === undefined) continue;
          expect(onReelOf(balance)).toBeGreaterThanOrEqual(0);
          const apart = lines.reduce((sum, { offcut, amount }) => sum + (offcut === null ? 0 : amount), 0);
          expect(balance.offcuts.reduce((sum, mm) => sum + mm, 0)).toBe(apart);
        }
      }
    }),
    { numRuns: 150 },
  );
  expect(struck).toBeGreaterThan(50);
});

it('goes along in a backup, and comes back with it', () => {
  enter(line('counted', 40), line('received', 64), line('received', 500, { thing: 'wire/soft-19' }));
  strikeLine(book, MOMENT, 2, '');
  const lines = allMovements(book);
  const copy = join(folder, 'copy.sqlite');
  backUp(book, copy);
  enter(line('sold', 40));
  restore(book, copy);
  expect(allMovements(book)).toEqual(lines);
  expect(have()).toBe(40);
});
