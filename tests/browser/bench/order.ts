/** Orders sent to a running bench. */
import { expect } from 'vitest';
import type { OrderDocument } from '#order/document.ts';
import { catalogue, orderFor } from '#tests/bench/shop.ts';

/** Sends an order of a piece, to be collected, with a hostile note. @returns its number */
export async function sendOrder(base: string, id: string): Promise<string> {
  const piece = catalogue.pieces.find((one) => one.id === id);
  const mm = { bracelet: 165.1, necklace: 450, anklet: 225, collar: 340 }[piece?.design.kind ?? 'bracelet'];
  const order: OrderDocument = {
    ...orderFor(catalogue, id, mm, { note: '<b>hostile</b> \u202Enote' }),
    delivery: { by: 'collection' },
  };
  const response = await fetch(`${base}/desk/orders`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(order),
  });
  expect(response.status).toBe(201);
  return order.number;
}
