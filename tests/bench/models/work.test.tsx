/** An order worked at its page: states with their messages, money, and forms that can't be done. */
import { renderToString } from 'preact-render-to-string';
import { afterAll, describe, expect, it } from 'vitest';
import { erase } from '#bench/book/erase.ts';
import { receive } from '#bench/book/receive.ts';
import { changeOrder, type Changed } from '#bench/changeOrder.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import type { Attempt } from '#bench/models/attempt.ts';
import { frameIn } from '#bench/models/frame.ts';
import { filterOf, orderList } from '#bench/models/orderList.ts';
import { orderDetail, type OrderDetail } from '#bench/models/orderDetail.ts';
import { OrderListView } from '#bench/views/OrderListView.tsx';
import { OrderView } from '#bench/views/OrderView.tsx';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { OrderDocument } from '#order/document.ts';
import { ORDER_STATES, type Letter } from '#words/benchCodes.ts';
import { posted } from '../../order/orders.ts';
import { catalogue, frame, openShop, orderFor } from '../shop.ts';

const shop = openShop(catalogue);
afterAll(() => shop.close());

function detailOf(number: string, seen: Catalogue = catalogue): OrderDetail {
  const detail = orderDetail(shop.book, seen, number, frame);
  if (detail === null) throw new Error('not in the book');
  return detail;
}

function take(fields: Partial<OrderDocument> = {}): string {
  const collected: OrderDocument['delivery'] = { by: 'collection' };
  const document = { ...orderFor(catalogue, 'weir-light', 165.1), delivery: collected, ...fields };
  const now = pieceNow(catalogue, document.piece.id);
  receive(shop.book, [{ document, way: 'desk', at: frame.now, now }]);
  return document.number;
}

/** Sends a form as the page does, with the version that stands there now. */
function send(number: string, fields: Record<string, string>, seen: Catalogue = catalogue): Changed {
  const version = String(detailOf(number).entry.version);
  return changeOrder(shop.book, seen, number, new URLSearchParams({ version, ...fields }), frame);
}

/** The text of a prepared message as it would be sent now. */
const letterOf = (number: string, letter: Letter, seen: Catalogue = catalogue): string =>
  detailOf(number, seen).drafts.find((one) => one.letter === letter)?.body ?? '';

const page = (number: string, attempt: Attempt | null = null, write: string | null = null): string =>
  renderToString(<OrderView detail={detailOf(number)} frame={frame} attempt={attempt} write={write} />);

/** The forms of a page whose fields hold all of these. */
const formsWith = (html: string, ...texts: string[]): string[] =>
  (html.match(/<form.*?<\/form>/gs) ?? []).filter((form) => texts.every((text) => form.includes(text)));

describe('the states', () => {
  it('go on by one button, which has the right message ready', () => {
    const number = take();
    for (const [state, letter] of [
      ['agreed', 'agreed'],
      ['strung', 'ready'],
      ['sent', 'sent'],
    ] as const) {
      const { next } = detailOf(number);
      expect(next).toEqual({ state, letter, doubt: null });
      expect(formsWith(page(number), `value="${state}"`, `name="write" value="${letter}"`)).toHaveLength(1);
      const changed = send(number, { kind: 'step', state, write: letter });
      expect(changed).toMatchObject({
        outcome: 'done',
        location: `/bench/orders/${number}/?write=${letter}`,
      });
      const html = page(number, null, letter);
      const draft = detailOf(number).drafts.find((one) => one.letter === letter);
      expect(html).toMatch(/<a class="button main" href="mailto:[^"]*" autofocus/);
      expect(html).toContain(`>${draft?.body.split('\n')[0] ?? '-'}`);
    }
    expect(detailOf(number).next).toBeNull();
    expect(page(number)).toMatch(/It is sent; £\d+\.\d\d is still to be paid/);
    send(number, { kind: 'paid', sum: '900', day: '2026-11-24', way: 'card', really: 'yes' });
    expect(page(number)).toContain('is still to be paid back');
  });

  it('ask first where the order differs from what the buyer saw', () => {
    const plain = orderFor(catalogue, 'weir-light', 165.1);
    const number = take({ ...plain, shown: { ...plain.shown, priceMinor: 1 } });
    expect(detailOf(number).next).toEqual({ state: 'asked', letter: 'question', doubt: 'differs' });
    send(number, { kind: 'state', state: 'asked' });
    expect(detailOf(number).next).toEqual({ state: 'agreed', letter: 'agreed', doubt: null });
  });

  it('ask first where it shall go, if the shop posts and the order doesn’t say', () => {
    const number = take({ delivery: { by: 'unsaid' } });
    expect(detailOf(number).next).toEqual({ state: 'asked', letter: 'address', doubt: 'no-address' });
    expect(page(number)).toContain('doesn’t say where it shall go');
    const nobody: Catalogue = { ...catalogue, shop: { ...catalogue.shop, post: null } };
    expect(detailOf(number, nobody).next).toMatchObject({ state: 'agreed', doubt: null });
  });

  it('are all within reach, and going back without a reason is named, with nothing lost', () => {
    const number = take();
    send(number, { kind: 'state', state: 'strung' });
    const html = page(number);
    for (const state of ORDER_STATES.filter((one) => one !== 'strung')) {
      expect(formsWith(html, 'name="reason"', `name="state" value="${state}"`)).toHaveLength(1);
    }
    const changed = send(number, { kind: 'state', state: 'asked', reason: '' });
    if (changed.outcome !== 'again') throw new Error(changed.outcome);
    expect(changed).toMatchObject({ status: 422, attempt: { problem: { code: 'reason-missing' } } });
    expect(page(number, changed.attempt)).toContain('Write why.');
    expect(detailOf(number).entry.state).toBe('strung');
    send(number, { kind: 'state', state: 'asked', reason: 'One bead is chipped' });
    expect(page(number)).toContain('Because: One bead is chipped');
  });
});

describe('messages', () => {
  it('say how many, what it comes to, what has come in and what is open', () => {
    const number = take({ quantity: 3 });
    const { price } = detailOf(number).money;
    const { money } = frame.format;
    expect(letterOf(number, 'agreed')).toContain('3 × Weir Light, for');
    expect(letterOf(number, 'agreed')).toContain(`${money(price.minor)} together`);
    expect(letterOf(number, 'agreed')).toContain(
      `To pay: ${money(price.minor)}. You can pay here:\nhttps://`,
    );
    send(number, { kind: 'paid', sum: '20', day: '2026-11-24', way: 'card' });
    expect(letterOf(number, 'ready')).toContain(
      `${money(2000)} of ${money(price.minor)} has come in, thank you. Still to pay: ${money(price.minor - 2000)}.`,
    );
    const shops: Catalogue['shop'] = {
      ...catalogue.shop,
      orders: { ...catalogue.shop.orders, payment: null },
    };
    const without = letterOf(number, 'ready', { ...catalogue, shop: shops });
    expect(without).toContain(`Still to pay: ${money(price.minor - 2000)}.`);
    expect(without).not.toContain('https://');
  });

  it('speak the buyer’s language', () => {
    const number = take({ lang: 'de', quantity: 2 });
    send(number, { kind: 'paid', sum: '20', day: '2026-11-24', way: 'card' });
    expect(letterOf(number, 'ready')).toMatch(/2 × .* zusammen .*Noch zu zahlen: /s);
  });
});

describe('where an order goes', () => {
  it('stands in the messages: the address, or that she comes for it', () => {
    const number = take({ delivery: posted.delivery });
    for (const letter of ['agreed', 'ready', 'sent'] as const) {
      expect(letterOf(number, letter)).toContain(
        'It goes to:\nSolveig Møller\nReepschlägergasse 7\nHinterhaus\n24999 Stapelmünde\nGermany',
      );
    }
    const collected = take({ delivery: { by: 'collection' }, lang: 'de' });
    expect(letterOf(collected, 'agreed')).toContain('Sie holen es selbst ab');
    expect(letterOf(collected, 'sent')).toContain('abgeholt haben');
    const unsaid = take({ delivery: { by: 'unsaid' } });
    expect(letterOf(unsaid, 'agreed')).not.toMatch(/goes to|come for/);
  });
});

describe('a parcel', () => {
  const sent = { kind: 'step', state: 'sent', write: 'sent', 'sent-on': '2026-11-25' };

  it('is asked for where the order is sent, and its message says where it is followed', () => {
    const number = take();
    send(number, { kind: 'state', state: 'strung' });
    expect(formsWith(page(number), 'value="step"', 'name="tracking"', 'Scourdale Post')).toHaveLength(1);
    send(number, { ...sent, carrier: 'Scourdale Post', tracking: 'SP 12&3 GB' });
    expect(detailOf(number).entry.state).toBe('sent');
    const link = 'https://scourdale-post.example/parcel/SP12%263GB';
    expect(letterOf(number, 'sent')).toContain(
      `It travels with Scourdale Post, tracking number SP 12&3 GB:\n${link}`,
    );
    const html = page(number);
    expect(html).toContain(`href="${link}"`);
    expect(html).toContain('Parcel sent on 25 November 2026 with Scourdale Post');
  });

  it('can do without a number, or get one later, of any carrier', () => {
    const number = take();
    send(number, { kind: 'state', state: 'strung' });
    send(number, { ...sent, carrier: '', tracking: '' });
    expect(detailOf(number).parcels).toEqual([]);
    expect(letterOf(number, 'sent')).not.toContain('travels');
    expect(
      send(number, { kind: 'parcel', carrier: '', tracking: ' ', 'sent-on': '2026-11-25' }),
    ).toMatchObject({
      attempt: { problem: { code: 'parcel-empty' } },
    });
    send(number, { kind: 'parcel', carrier: 'Barge', tracking: '', 'sent-on': '2026-11-25' });
    expect(letterOf(number, 'sent')).toContain('It travels with Barge.');
    send(number, { kind: 'parcel', carrier: '', tracking: 'B7', 'sent-on': '2026-11-25' });
    expect(letterOf(number, 'sent')).toContain('Its tracking number B7.');
  });

  it('with a wrong day is not lost: neither is the step it came with', () => {
    const number = take();
    send(number, { kind: 'state', state: 'strung' });
    const changed = send(number, { ...sent, carrier: 'Barge', tracking: 'B7', 'sent-on': '2027-01-01' });
    if (changed.outcome !== 'again') throw new Error(changed.outcome);
    const [again = ''] = formsWith(page(number, changed.attempt), 'is still to come');
    for (const text of ['value="Barge"', 'value="B7"', 'value="2027-01-01"']) expect(again).toContain(text);
    expect(detailOf(number).entry.state).toBe('strung');
  });

  it('loses its number with its buyer', () => {
    const number = take();
    send(number, { kind: 'parcel', carrier: 'Barge', tracking: 'B7', 'sent-on': '2026-11-25' });
    erase(shop.book, [number], frame.now);
    expect(detailOf(number).parcels).toMatchObject([{ carrier: 'Barge', tracking: '' }]);
  });
});

describe('the list', () => {
  const listed = (state: string) =>
    orderList(shop.book, catalogue, filterOf(new URLSearchParams({ state }), '2026-11-25'), frame);

  it('shows what is open to pay, and leads to the card of what is to be strung', () => {
    const number = take();
    const { price } = detailOf(number).money;
    send(number, { kind: 'paid', sum: '20', day: '2026-11-24', way: 'card' });
    const html = renderToString(<OrderListView list={listed('all')} frame={frame} />);
    const line = html.split('<tr>').find((one) => one.includes(number)) ?? '';
    expect(line).toContain(frame.format.money(price.minor - 2000));
    expect(line).toContain(`href="/bench/orders/${number}/card/"`);
  });

  it('finds the orders whose money is open, sent ones and those to pay back among them', () => {
    const [owing, paid, back, unknown] = [take(), take(), take(), take()];
    for (const one of [owing, paid, back]) send(one, { kind: 'state', state: 'sent' });
    const whole = (detailOf(paid).money.price.minor / 100).toFixed(2);
    for (const one of [paid, back]) send(one, { kind: 'paid', sum: whole, day: '2026-11-24', way: 'card' });
    send(back, { kind: 'state', state: 'cancelled' });
    shop.book.db.prepare(`UPDATE orders SET state = 'sent' WHERE number = ?`).run(unknown);
    const numbers = listed('owing').rows.map(({ entry }) => entry.document.number);
    expect(numbers).toContain(owing);
    expect(numbers).toContain(back);
    expect(numbers).not.toContain(paid);
    expect(numbers).not.toContain(unknown);
    const html = renderToString(<OrderListView list={listed('owing')} frame={frame} />);
    expect(html.split('<tr>').find((one) => one.includes(back))).toContain('to pay back');
  });
});

describe('money', () => {
  const paid = { kind: 'paid', day: '2026-11-24', way: 'transfer' };

  it('is listed: what it comes to, what came, what is open', () => {
    const number = take({ quantity: 2 });
    const each = detailOf(number).now.checked.candidate?.priceMinor ?? 0;
    const { money } = frame.format;
    expect(page(number)).toContain(`value="${((each * 2) / 100).toFixed(2)}"`);
    send(number, { ...paid, sum: '20' });
    const html = page(number);
    expect(html).toContain('Part paid');
    expect(html).toContain(`24 November 2026: Paid by bank transfer, ${money(2000)}`);
    expect(html).toContain(`Paid: ${money(2000)} by bank transfer on 24 November 2026`);
    expect(html).toContain(`<dt>Still to pay</dt><dd><bdi>${money(each * 2 - 2000)}</bdi>`);
    expect(renderToString(<OrderView detail={detailOf(number)} frame={frameIn('de', frame)} />)).toContain(
      'Teils bezahlt',
    );
  });

  it('of more than is open is asked about, with what was typed still there, and taken when it really was', () => {
    const number = take();
    const form = { ...paid, sum: '1000.00', day: '2026-11-20', way: 'cash' };
    const changed = send(number, form);
    if (changed.outcome !== 'again') throw new Error(changed.outcome);
    const [again = ''] = formsWith(page(number, changed.attempt), 'name="really"');
    for (const text of [
      'value="1000.00"',
      'value="2026-11-20"',
      'value="cash" selected',
      'is open on this order',
    ]) {
      expect(again).toContain(text);
    }
    expect(formsWith(page(number), 'name="really"')).toEqual([]);
    expect(send(number, { ...form, really: 'yes' }).outcome).toBe('done');
    expect(page(number)).toContain('To pay back');
  });

  it('typed in a window that another was before is kept, and nothing is doubled', () => {
    const number = take();
    const seen = { ...paid, sum: '20', version: '1' };
    expect(send(number, seen).outcome).toBe('done');
    const changed = send(number, seen);
    if (changed.outcome !== 'again') throw new Error(changed.outcome);
    expect(changed.status).toBe(409);
    const html = page(number, changed.attempt);
    expect(html.slice(0, html.indexOf('Received'))).toContain('changed in another window');
    const [again = ''] = formsWith(html, 'name="kind" value="paid"');
    expect(again).toContain('value="20"');
    expect(again).toContain('name="version" value="2"');
    expect(detailOf(number).money.ledger.paidMinor).toBe(2000);
  });

  it('asks for a payment only while something is open, and for no more than that', () => {
    const number = take();
    send(number, { kind: 'state', state: 'agreed' });
    const { price } = detailOf(number).money;
    expect(detailOf(number).payment).toContain(`amount=${(price.minor / 100).toFixed(2)}`);
    send(number, { ...paid, sum: '20' });
    const link = detailOf(number).payment;
    expect(link).toContain(`amount=${((price.minor - 2000) / 100).toFixed(2)}`);
    const asking = () => detailOf(number).drafts.filter(({ body }) => body.includes('https://pay.'));
    expect(asking().length).toBeGreaterThan(0);
    send(number, { ...paid, sum: ((price.minor - 2000) / 100).toFixed(2) });
    expect(detailOf(number).payment).toBeNull();
    expect(asking()).toEqual([]);
  });

  it('goes by what was agreed on, whatever the piece costs now', () => {
    const number = take();
    send(number, { kind: 'state', state: 'agreed' });
    const { price } = detailOf(number).money;
    const dearer: Catalogue = {
      ...catalogue,
      pieces: catalogue.pieces.map((piece) => ({ ...piece, listedMinor: piece.listedMinor + 5000 })),
    };
    const detail = detailOf(number, dearer);
    expect(detail.money).toMatchObject({ price, basis: 'agreed', figure: { minor: price.minor + 5000 } });
    const gone = detailOf(take(), { ...catalogue, pieces: [] });
    expect(gone.money.basis).toBe('then');
  });

  it('of an order sent before the book kept any is not guessed at', () => {
    const number = take();
    shop.book.db.prepare(`UPDATE orders SET state = 'sent' WHERE number = ?`).run(number);
    expect(detailOf(number).money.kept).toBe(false);
    expect(detailOf(number).payment).toBeNull();
    expect(page(number)).toContain('the book didn’t keep money yet');
  });
});
