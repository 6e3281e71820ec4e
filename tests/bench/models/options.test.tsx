/** Orders for what lies finished, and with other parts: from the desk to the card, the pick list and the letters. */
import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { change } from '#bench/book/change.ts';
import { findEntry } from '#bench/book/entry.ts';
import { promisedPieces } from '#bench/book/ready.ts';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { promisedIn } from '#bench/context/promised.ts';
import { answerOrder } from '#bench/desk/desk.ts';
import { benchCard } from '#bench/models/benchCard.ts';
import { frameIn } from '#bench/models/frame.ts';
import { gather } from '#bench/models/gather.ts';
import { invoiceContent } from '#bench/models/invoice.ts';
import { orderDetail, orderedName, type OrderDetail } from '#bench/models/orderDetail.ts';
import { filterOf, orderList } from '#bench/models/orderList.ts';
import { weekPlan } from '#bench/models/week.ts';
import { OrderCard } from '#bench/views/card/OrderCard.tsx';
import { OrderView } from '#bench/views/OrderView.tsx';
import { PackingSheet } from '#bench/views/PackingSheet.tsx';
import { asPromised } from '#catalogue/model/shelf.ts';
import type { OrderDocument } from '#order/document.ts';
import type { Letter, OrderState } from '#words/benchCodes.ts';
import { catalogue, frame, openShop, post, readyOrder, swappedOrder, type Shop } from '../shop.ts';

let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
});
afterEach(() => shop.close());

async function send(document: OrderDocument) {
  const answer = await answerOrder(shop.desk, post(JSON.stringify(document)), '192.0.2.1');
  return { status: answer.status, body: (await answer.json()) as Record<string, unknown> };
}

function take(document: OrderDocument, at = frame.now): string {
  receive(shop.book, [{ document, way: 'desk', at, now: pieceNow(catalogue, document.piece.id) }]);
  return document.number;
}

function detailOf(number: string): OrderDetail {
  const detail = orderDetail(shop.book, catalogue, number, frame);
  if (detail === null) throw new Error('not in the book');
  return detail;
}

function set(number: string, state: OrderState): void {
  const version = findEntry(shop.book, number)?.version ?? 0;
  expect(change(shop.book, number, version, frame.now, { kind: 'state', state, reason: 'x' })).toBe('done');
}

const letterOf = (number: string, letter: Letter): string =>
  detailOf(number).drafts.find((one) => one.letter === letter)?.body ?? '';
const page = (number: string): string =>
  renderToString(<OrderView detail={detailOf(number)} frame={frame} />);

describe('a piece as it lies finished', () => {
  it('is taken at the desk, with the figures it lies there with', async () => {
    const { status, body } = await send(readyOrder('first-frost'));
    expect(status).toBe(201);
    expect(body).toMatchObject({ checked: 'same', differences: [] });
  });

  it('tells the second buyer that somebody asked before, at the desk, at the bench and in the letter', async () => {
    const first = readyOrder('first-frost');
    const second = readyOrder('first-frost');
    take(first, '2026-11-25T18:00:00.000Z');
    expect((await send(second)).body).toMatchObject({ checked: 'differs', differences: ['asked-before'] });
    expect(page(second.number)).toContain(first.number);
    expect(detailOf(second.number).next).toMatchObject({ state: 'asked', letter: 'question' });
    const letter = letterOf(second.number, 'question');
    expect(letter).toContain('Somebody asked for the one that lies here finished before you did.');
    expect(letter).toContain('I am happy to make one like it');
    expect(letter).not.toContain(first.number);
    expect(detailOf(first.number).now.checked.differences).toEqual([]);
    expect(
      orderList(shop.book, catalogue, filterOf(new URLSearchParams(), '2026-11-25'), frame).rows.map(
        ({ entry, differs, hasCard }) => [entry.document.number, differs, hasCard],
      ),
    ).toEqual(
      expect.arrayContaining([
        [first.number, false, false],
        [second.number, true, false],
      ]),
    );
  });

  it.each(['agreed', 'strung', 'sent'] as const)(
    'is refused by the desk once another is %s',
    async (state) => {
      const first = readyOrder('first-frost');
      const waiting = readyOrder('first-frost');
      take(first);
      await send(waiting);
      set(first.number, state);
      const { status, body } = await send(readyOrder('first-frost'));
      expect(status).toBe(409);
      expect(body).toMatchObject({ code: 'ready-gone', piece: 'first-frost' });
      expect(body.detail).toContain('can make one like it');
      // Whoever has the order already, and asks again for its receipt, gets it.
      expect((await send(first)).status).toBe(200);
      expect((await send(waiting)).status).toBe(200);
      expect(letterOf(waiting.number, 'question')).toContain('has gone to somebody who asked before you');
      // Another piece that lies there is nobody's yet, and this one can be made.
      expect((await send(readyOrder('towpath'))).status).toBe(201);
      expect((await send(swappedOrder('first-frost', 165, {}))).status).toBe(201);
    },
  );

  it('is free again where the order before it was cancelled', async () => {
    const first = readyOrder('first-frost');
    take(first);
    set(first.number, 'agreed');
    set(first.number, 'cancelled');
    expect((await send(readyOrder('first-frost'))).body).toMatchObject({ checked: 'same' });
  });

  it('is refused where the piece’s file says that none lies there', async () => {
    const { status } = await send(readyOrder('weir-light'));
    expect(status).toBe(409);
  });

  it('is another one where the file says that it lies there since later', () => {
    const first = readyOrder('first-frost');
    take(first, '2026-11-01T10:00:00.000Z');
    set(first.number, 'sent');
    const piece = catalogue.pieces.find(({ id }) => id === 'first-frost')!;
    const promised = promisedPieces(shop.book);
    expect(promised).toEqual([{ piece: 'first-frost', receivedAt: '2026-11-01T10:00:00.000Z' }]);
    expect(asPromised(piece, promised).status).toBe('to-order');
    expect(asPromised({ ...piece, liesSince: '2026-11-20' }, promised).status).toBe('available');
    expect(asPromised({ ...piece, status: 'past' }, promised).status).toBe('past');
  });

  it('is known to the build by the book’s file, and a missing or broken book stops nothing', () => {
    const first = readyOrder('first-frost');
    take(first);
    expect(promisedIn(shop.book.file)).toEqual([]);
    set(first.number, 'agreed');
    expect(promisedIn(shop.book.file).map(({ piece }) => piece)).toEqual(['first-frost']);
    expect(promisedIn(`${shop.book.file}.none`)).toEqual([]);
    expect(promisedIn('package.json')).toEqual([]);
  });

  it('takes no beads, no hours and no card, and goes from agreed to sent', () => {
    const number = take(readyOrder('first-frost'));
    set(number, 'agreed');
    expect(gather(shop.book, catalogue, frame, { of: 'open' })).toMatchObject({ orders: [], leftOut: [] });
    expect(weekPlan(shop.book, catalogue, frame).toSend.map(({ entry }) => entry.document.number)).toEqual([
      number,
    ]);
    expect(detailOf(number).next).toMatchObject({ state: 'sent', letter: 'sent' });
    expect(letterOf(number, 'agreed')).toContain('First Frost, as it lies there, measuring');
    const html = page(number);
    expect(html).toContain('as it lies there');
    expect(html).toContain('content/pieces/first-frost.yaml');
    expect(html).not.toContain('/card/');
    expect(renderToString(<PackingSheet detail={detailOf(number)} frame={frame} />)).toContain(
      'as it lies there',
    );
  });

  it('is named where more than one of it is ordered', async () => {
    const { body } = await send(readyOrder('first-frost', { quantity: 2 }));
    expect(body).toMatchObject({ differences: ['ready-several'] });
  });

  it('can’t have another clasp', async () => {
    const order = readyOrder('first-frost');
    const clasp = { id: 'toggle-14-silver', name: 'Silver toggle' };
    const { body } = await send({ ...order, instead: { ...order.instead, clasp } });
    expect(body.differences).toContain('not-offered');
  });
});

describe('other parts', () => {
  const chosen = { clasp: 'toggle-14-silver', pendant: 'slate-drop-34' };
  const order = () => swappedOrder('wash-day', 457, chosen);

  it('are sized and priced again at the desk, the same', async () => {
    const { status, body } = await send(order());
    expect(status).toBe(201);
    expect(body).toMatchObject({ checked: 'same', differences: [] });
  });

  it('that the maker doesn’t offer are named, and nothing is strung of them', async () => {
    const wrong = order();
    const { body } = await send({
      ...wrong,
      instead: { ...wrong.instead, clasp: { id: 'box-2-silver', name: 'Box' } },
    });
    expect(body.differences).toContain('not-offered');
    expect(page(wrong.number)).toContain('“Box”');
    expect(detailOf(wrong.number).now.checked.candidate).toBe(null);
  });

  it('stand on the card, the pick list, the invoice and the packing slip', () => {
    const number = take(order());
    set(number, 'agreed');
    const detail = detailOf(number);
    const bench = benchCard(detail, null);
    expect(bench?.copy.design.ends).toMatchObject({ clasp: 'toggle-14-silver', ring: null });
    const card = renderToString(<OrderCard bench={bench!} detail={detail} frame={frame} />);
    expect(card).toContain('Clasp instead');
    expect(card).toContain('Silver toggle, ring 14 mm');
    expect(card).toContain('Scour slate drop');
    expect(card).not.toContain('Porcelain medallion');
    const ids = gather(shop.book, catalogue, frame, { of: 'agreed' }).parts.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(['toggle-14-silver', 'slate-drop-34']));
    expect(ids).not.toContain('lobster-12-silver');
    expect(ids).not.toContain('porcelain-coin-24');
    const name = orderedName(catalogue, detail.entry.document, 'en');
    expect(name).toBe('Wash Day (with Silver toggle, ring 14 mm and Scour slate drop)');
    const named = { ...detail, pieceName: name };
    expect(invoiceContent(named, frameIn('en', frame))?.items[0]?.text).toContain('Scour slate drop');
    expect(renderToString(<PackingSheet detail={named} frame={frame} />)).toContain('Silver toggle');
    expect(letterOf(number, 'agreed')).toContain('Silver toggle, ring 14 mm');
  });
});
