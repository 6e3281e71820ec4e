/** Trays with a book of orders of one piece, and what an order of it does to them. */
import { expect } from 'vitest';
import { findEntry } from '#bench/book/entry.ts';
import { enterStock } from '#bench/book/movements.ts';
import { receive } from '#bench/book/receive.ts';
import { changeOrder } from '#bench/changeOrder.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { stockNow } from '#bench/stock/stockNow.ts';
import { tally } from '#core/design/tally.ts';
import type { OrderDocument } from '#order/document.ts';
import type { OrderState, OrderWay } from '#words/benchCodes.ts';
import { catalogue, frame, openShop, orderFor } from '../shop.ts';

export const MOMENT = { at: frame.now, who: 'machine' } as const;
export const PIECE = 'weir-light';
export const design = catalogue.pieces.find(({ id }) => id === PIECE)!.design;

/** The bead that a piece takes most of, and how many. */
export const [BEAD, MANY] = [...tally(design, orderFor(catalogue, PIECE, 165).shown.counts)].toSorted(
  (a, b) => b[1] - a[1],
)[0]!;

export function openTrays() {
  const { book, close } = openShop(catalogue);
  const now = () => stockNow(book, catalogue);
  return {
    ...{ book, close, now },
    take(fields: Partial<OrderDocument> = {}, way: OrderWay = 'desk'): string {
      const document = { ...orderFor(catalogue, PIECE, 165), ...fields };
      receive(book, [{ document, way, at: frame.now, now: pieceNow(catalogue, document.piece.id) }]);
      return document.number;
    },
    set(number: string, state: OrderState): void {
      const version = String(findEntry(book, number)!.version);
      const form = new URLSearchParams({ version, kind: 'state', state, reason: 'because' });
      expect(changeOrder(book, catalogue, number, form, frame).outcome).toBe('done');
    },
    count(thing: string, amount: number): void {
      enterStock(book, MOMENT, [{ thing, kind: 'counted', amount, entered: '', note: '', seen: null }]);
    },
    /** There, reserved, free. */
    figures(thing: string) {
      const { onHand, reserved, free } = now();
      return [onHand(thing), reserved(thing), free(thing)];
    },
  };
}

export type Trays = ReturnType<typeof openTrays>;
