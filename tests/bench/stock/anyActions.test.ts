/** Whatever is done at the bench, stock stays what its lines and the orders’ states say. */
import fc from 'fast-check';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { findEntry } from '#bench/book/entry.ts';
import { enterStock, movementsOf } from '#bench/book/movements.ts';
import type { OrderState } from '#words/benchCodes.ts';
import { BEAD, MANY, MOMENT, openTrays, type Trays } from './trays.ts';

let shop: Trays;
beforeEach(() => {
  shop = openTrays();
});
afterEach(() => shop.close());

type Step =
  | { readonly do: 'set'; readonly order: number; readonly to: OrderState }
  | { readonly do: 'enter'; readonly kind: 'received' | 'counted' | 'broken'; readonly amount: number };

it('whatever is done at the bench, stock is its lines: what orders that are strung took, and nothing else', () => {
  const step: fc.Arbitrary<Step> = fc.oneof(
    fc.record({
      do: fc.constant('set' as const),
      order: fc.nat(2),
      to: fc.constantFrom<OrderState>('new', 'agreed', 'strung', 'sent', 'cancelled'),
    }),
    fc.record({
      do: fc.constant('enter' as const),
      kind: fc.constantFrom('received' as const, 'counted' as const, 'broken' as const),
      amount: fc.integer({ min: 1, max: 200 }),
    }),
  );
  const isStrung = (state: OrderState): boolean => state === 'strung' || state === 'sent';
  let reserved = 0;
  let taken = 0;
  fc.assert(
    fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
      shop.close();
      shop = openTrays();
      const { book, take, set, count, figures } = shop;
      count(BEAD, 150);
      const orders = [take(), take({ quantity: 2 }), take()];
      const own = new Map<string, boolean>();
      let entered = 150;
      for (const one of steps) {
        if (one.do === 'set') {
          const number = orders[one.order]!;
          set(number, one.to);
          if (one.to !== 'cancelled') own.set(number, isStrung(one.to));
        } else {
          const have = figures(BEAD)[0] ?? 0;
          const outcome = enterStock(book, MOMENT, [
            { thing: BEAD, kind: one.kind, amount: one.amount, entered: '', note: '', seen: null },
          ]);
          const refused = one.kind === 'broken' && one.amount > have;
          expect(outcome.outcome).toBe(refused ? 'not-there' : 'done');
          if (one.kind === 'received') entered += one.amount;
          if (one.kind === 'counted') entered += one.amount - have;
          if (one.kind === 'broken' && !refused) entered -= one.amount;
        }
        // By the states alone, apart from the lines.
        const sumOf = (wanted: (number: string) => boolean): number =>
          orders.filter(wanted).reduce((sum, number) => sum + MANY * (number === orders[1] ? 2 : 1), 0);
        const out = sumOf((number) => own.get(number) === true);
        const kept = sumOf((number) => findEntry(book, number)!.state === 'agreed');
        const lines = movementsOf(book, BEAD, 1000).reduce((sum, { amount }) => sum + amount, 0);
        expect(figures(BEAD)).toEqual([entered - out, kept, entered - out - kept]);
        expect(lines).toBe(entered - out);
        reserved += Number(kept > 0);
        taken += Number(out > 0);
      }
    }),
    { numRuns: 40 },
  );
  expect(Math.min(reserved, taken)).toBeGreaterThan(10);
});
