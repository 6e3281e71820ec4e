/** An order of somebody who wasn't asked for a hand, since either would do. */
import { describe, expect, it } from 'vitest';
import { needsNoHand } from '#bench/check/hand.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { choiceOf, recheck } from '#bench/check/recheck.ts';
import { sizingOf } from '#bench/check/sizedBefore.ts';
import { EITHER_HAND, type OrderDocument } from '#order/document.ts';
import { catalogue, frame, orderFor, readyOrder } from '../shop.ts';

/** A piece of the demo shop, and whether either hand will do for it in this size. */
function ordered(wanted: boolean): OrderDocument {
  for (const { id } of catalogue.pieces.filter((piece) => piece.design.kind === 'bracelet')) {
    const order = orderFor(catalogue, id, 165.1);
    const copy = pieceNow(catalogue, id);
    if (copy !== null && needsNoHand(sizingOf(copy, choiceOf(order))) === wanted) return order;
  }
  throw new Error('the demo shop has bracelets of both sorts');
}
const codes = (order: OrderDocument): readonly string[] =>
  recheck(order, pieceNow(catalogue, order.piece.id), frame.now).differences.map(({ code }) => code);
const either = (order: OrderDocument): OrderDocument => ({ ...order, choices: EITHER_HAND });

describe('a hand that nobody asked for', () => {
  it('is no difference as long as either will do', () => {
    expect(codes(either(ordered(true)))).toEqual([]);
  });

  it('is one as soon as it matters', () => {
    expect(codes(ordered(false))).toEqual([]);
    expect(codes(either(ordered(false)))).toEqual(['hand-unasked']);
  });

  it('is none of a piece that goes as it lies', () => {
    expect(codes(either(readyOrder('first-frost')))).toEqual([]);
  });
});
