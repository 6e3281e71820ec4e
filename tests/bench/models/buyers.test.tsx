/** Buyers out of their orders: found, told apart, and erased whole. */
import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { findEntry } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { buyerKey, buyerList, buyerOf, ordersOfBuyer } from '#bench/models/buyers.ts';
import { frameIn } from '#bench/models/frame.ts';
import { BuyersView } from '#bench/views/BuyersView.tsx';
import { BuyerView } from '#bench/views/BuyerView.tsx';
import type { OrderDocument } from '#order/document.ts';
import { handWords } from '#words/words.ts';
import { catalogue, frame, openShop, orderFor, type Shop } from '../shop.ts';

let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
});
afterEach(() => shop.close());

let day = 0;
function take(document: OrderDocument): OrderDocument {
  const at = new Date(Date.UTC(2026, 9, 1 + (day += 1))).toISOString();
  receive(shop.book, [{ document, way: 'desk', at, now: pieceNow(catalogue, document.piece.id) }]);
  return document;
}
const weir = (mm: number, buyer: Partial<OrderDocument['buyer']> = {}): OrderDocument =>
  take(orderFor(catalogue, 'weir-light', mm, buyer));

it('knows somebody by her e-mail address, capitals behind the @ or not', () => {
  const one = weir(165, { email: 'iris@example.org', name: 'Iris Møller' });
  const two = weir(165, { email: 'iris@Example.ORG', name: 'I. Moller' });
  const other = weir(165, { email: 'Iris@example.org' });
  expect(ordersOfBuyer(shop.book, one.number).map(({ document }) => document.number)).toEqual([
    two.number,
    one.number,
  ]);
  expect(ordersOfBuyer(shop.book, other.number)).toHaveLength(1);
  expect(buyerOf(shop.book, catalogue, one.number, frame)).toMatchObject({
    name: 'I. Moller',
    otherNames: ['Iris Møller'],
  });
});

it('takes two who gave no address for two, whatever they are called', () => {
  const one = weir(165, { email: '', name: 'Anna' });
  const two = weir(170, { email: '', name: 'Anna' });
  expect(buyerKey({ document: one })).not.toBe(buyerKey({ document: two }));
  expect(buyerList(shop.book, '').total).toBe(2);
  erase(
    shop.book,
    ordersOfBuyer(shop.book, one.number).map(({ document }) => document.number),
    frame.now,
  );
  expect(findEntry(shop.book, two.number)?.document.buyer.name).toBe('Anna');
});

it('finds by any words of name and address, newest first', () => {
  weir(165, { name: 'Iris Møller', email: 'iris@example.org' });
  weir(165, { name: 'Zoë Quill', email: 'zoe@example.org' });
  weir(165, { name: 'Iris Møller', email: 'iris@example.org' });
  const names = (text: string): string[] => buyerList(shop.book, text).rows.map(({ name }) => name);
  expect(names('')).toEqual(['Iris Møller', 'Zoë Quill']);
  expect(names('moller IRIS')).toEqual(['Iris Møller']);
  expect(names('zoe@')).toEqual(['Zoë Quill']);
  expect(names('nobody')).toEqual([]);
  const list = buyerList(shop.book, 'iris');
  expect(list.rows).toMatchObject([{ orders: 2 }]);
  const page = renderToString(<BuyersView list={list} erased={null} frame={frame} words={handWords('en')} />);
  expect(page).toContain('1 buyer');
  // No name or address stands in a link, where histories and logs would keep it.
  expect(page.match(/href="([^"]*)"/g)?.join(' ')).not.toMatch(/iris|example/i);
});

it('shows sizes once each, the newest hand, and a click for each piece', () => {
  weir(165);
  weir(165);
  take({ ...orderFor(catalogue, 'amber-gale', 450), hand: 'right' });
  const last = weir(178);
  const buyer = buyerOf(shop.book, catalogue, last.number, frame)!;
  expect(buyer.sizes.map(({ measure: { of, text } }) => `${of} ${text}`)).toEqual([
    'wrist 178 mm',
    'length 450 mm',
    'wrist 165 mm',
  ]);
  expect(buyer.hand).toBe('left');
  const page = renderToString(<BuyerView buyer={buyer} frame={frame} words={handWords('en')} />);
  for (const { document } of ordersOfBuyer(shop.book, last.number)) {
    expect(page).toContain(`/bench/orders/new/?again=${document.number}`);
    expect(page).toContain(`/bench/orders/new/?restring=${document.number}`);
  }
  const german = frameIn('de', frame);
  expect(renderToString(<BuyerView buyer={buyer} frame={german} words={handWords('de')} />)).toContain(
    'links',
  );
});

it('is gone whole once erased, and nobody else with her', () => {
  const hers = [weir(165), weir(170, { note: 'for Anna' })];
  const other = weir(165, { name: 'Zoë Quill', email: 'zoe@example.org' });
  const numbers = ordersOfBuyer(shop.book, hers[0]!.number).map(({ document }) => document.number);
  expect(erase(shop.book, numbers, frame.now).count).toBe(2);
  for (const { number } of hers) {
    expect(findEntry(shop.book, number)?.document.buyer).toEqual({ name: '', email: '', note: '' });
    expect(buyerOf(shop.book, catalogue, number, frame)).toBeNull();
  }
  expect(buyerList(shop.book, '').rows.map(({ name }) => name)).toEqual(['Zoë Quill']);
  expect(findEntry(shop.book, other.number)?.document.buyer.name).toBe('Zoë Quill');
});
