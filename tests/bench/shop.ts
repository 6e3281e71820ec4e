/** A desk over a book in a folder of its own and the demo catalogue, as the server joins it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { frameFor } from '#bench/models/frame.ts';
import { size } from '#core/sizing/size.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { designWith } from '#core/design/alternatives.ts';
import { compose } from '#order/compose.ts';
import type { OrderDocument } from '#order/document.ts';
import { makeNumber } from '#order/number.ts';
import { throttle } from '#bench/http/throttle.ts';
import { openInbox } from '#bench/book/inbox.ts';
import { openBook, type Book } from '#bench/book/open.ts';
import { deskStanding } from '#bench/check/ready.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { stockNow } from '#bench/stock/stockNow.ts';
import type { Desk } from '#bench/desk/desk.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

export const NOW_MS = Date.parse('2026-11-25T19:00:00Z');
export const HOST = '127.0.0.1:4321';

export const catalogue = catalogueOf();
/** The maker's, whose browser asks for English first. */
export const frame = frameFor(new Request('http://127.0.0.1/bench/'), catalogue.shop, NOW_MS);

export type Shop = { readonly desk: Desk; readonly book: Book; readonly close: () => void };

export function openShop(catalogue: Catalogue, perMinute = 0, busyMs = 50): Shop {
  const folder = mkdtempSync(join(tmpdir(), 'desk-'));
  const book = openBook(join(folder, 'orders.sqlite'), { busyMs });
  const inbox = openInbox(book);
  const desk: Desk = {
    inbox: () => inbox,
    pieceNow: (id) => Promise.resolve(pieceNow(catalogue, id)),
    there: () => Promise.resolve(stockNow(book, catalogue).thereFor(null)),
    standing: (document, at) => Promise.resolve(deskStanding(book, document, at, catalogue.pieces)),
    origins: ['http://127.0.0.1:4321', 'https://shop.example'],
    throttle: throttle(perMinute),
    nowMs: () => NOW_MS,
  };
  const close = (): void => {
    book.db.close();
    rmSync(folder, { recursive: true });
  };
  return { desk, book, close };
}

let seed = 99;
export const randomByte = (): number => (seed = (seed * 48271) % 2147483647) & 255;

/** What a page of each kind asks for. */
const ASKED_BY = { bracelet: 'wrist', necklace: 'length', anklet: 'ankle', collar: 'neck' } as const;

/** An order as the shop's own page makes it. */
export function orderFor(
  catalogue: Catalogue,
  id: string,
  mm: number,
  fields: Partial<OrderDocument['buyer']> = {},
): OrderDocument {
  const piece = catalogue.pieces.find((one) => one.id === id);
  if (piece === undefined) throw new Error(`no piece ${id}`);
  const of = ASKED_BY[piece.design.kind];
  const choice = { measure: { of, mm }, sit: 'easy', hand: 'left', pick: 'best', quantity: 1 } as const;
  const sizing = size(piece.design, catalogue.shop.rules, piece.listedMinor, choice);
  if (sizing.status === 'refused') throw new Error(JSON.stringify(sizing));
  return compose({
    number: makeNumber(randomByte),
    placedAtMs: NOW_MS,
    lang: 'en',
    piece,
    choice,
    measureText: `${mm} mm`,
    candidate: sizing.status === 'outside' ? sizing.nearest : sizing.chosen,
    design: piece.design,
    currency: catalogue.shop.rules.currency,
    buyer: { name: 'Iris Møller', email: 'iris@example.org', note: '', ...fields },
    delivery: { by: 'unsaid' },
    postageMinor: 0,
  });
}

/** A request as a browser on the shop's own page sends it. */
export function post(body: BodyInit, headers: Record<string, string> = {}): Request {
  return new Request(`http://${HOST}/desk/orders`, {
    method: 'POST',
    headers: { host: HOST, origin: `http://${HOST}`, 'content-type': 'application/json', ...headers },
    body,
  });
}

/** An order for the piece as it lies finished, as the shop's own page makes it. */
export function readyOrder(id: string, fields: Partial<OrderDocument> = {}): OrderDocument {
  const piece = catalogue.pieces.find((one) => one.id === id);
  if (piece === undefined) throw new Error(`no piece ${id}`);
  const { rules } = catalogue.shop;
  const candidate = describe(piece.design, rules, piece.listedMinor, usual(piece.design));
  const mm = Math.round(candidate.finishedLengthMm * 100) / 100;
  const measure = { of: 'length', mm } as const;
  return {
    ...compose({
      number: makeNumber(randomByte),
      placedAtMs: NOW_MS,
      lang: 'en',
      piece,
      made: 'ready',
      choice: { measure, sit: 'easy', hand: 'right', pick: 'best', quantity: 1 },
      measureText: '',
      candidate,
      design: piece.design,
      currency: rules.currency,
      buyer: { name: 'Iris Møller', email: 'iris@example.org', note: '' },
      delivery: { by: 'collection' },
      postageMinor: 0,
    }),
    ...fields,
  };
}

/** An order with other parts, as the shop's own page makes it. */
export function swappedOrder(
  id: string,
  mm: number,
  chosen: { readonly clasp?: string; readonly pendant?: string },
): OrderDocument {
  const piece = catalogue.pieces.find((one) => one.id === id);
  if (piece === undefined) throw new Error(`no piece ${id}`);
  const { clasp = '', pendant = '' } = chosen;
  const { rules } = catalogue.shop;
  const design = designWith(piece.design, piece.alternatives, { clasp, pendant });
  if (design === null) throw new Error('not offered');
  const of = ASKED_BY[piece.design.kind];
  const choice = { measure: { of, mm }, sit: 'easy', hand: 'left', pick: 'best', quantity: 1 } as const;
  const sizing = size(design, rules, piece.listedMinor, choice, piece.design);
  if (sizing.status !== 'fits' && sizing.status !== 'near') throw new Error(sizing.status);
  const named = (part: string) => ({ id: part, name: catalogue.components[part]?.name ?? '' });
  return compose({
    number: makeNumber(randomByte),
    placedAtMs: NOW_MS,
    lang: 'en',
    piece,
    instead: { clasp: named(clasp), pendant: named(pendant) },
    choice,
    measureText: `${mm} mm`,
    candidate: sizing.chosen,
    design,
    currency: rules.currency,
    buyer: { name: 'Iris Møller', email: 'iris@example.org', note: '' },
    delivery: { by: 'collection' },
    postageMinor: 0,
  });
}
