/** What goes with a parcel: packing slip, address label, and the message that asks where it shall go. */
import { renderToString } from 'preact-render-to-string';
import { afterAll, describe, expect, it } from 'vitest';
import { receive } from '#bench/book/receive.ts';
import { readChange } from '#bench/intake/changeForm.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { frameIn } from '#bench/models/frame.ts';
import { orderDetail, type OrderDetail } from '#bench/models/orderDetail.ts';
import { sumParts } from '#bench/models/sumParts.ts';
import { LabelSheet } from '#bench/views/LabelSheet.tsx';
import { OrderView } from '#bench/views/OrderView.tsx';
import { PackingSheet } from '#bench/views/PackingSheet.tsx';
import type { Delivery, OrderDocument } from '#order/document.ts';
import { LANGS } from '#words/lang.ts';
import { posted } from '../../order/orders.ts';
import { catalogue, frame, openShop, orderFor } from '../shop.ts';

const shop = openShop(catalogue);
afterAll(() => shop.close());

const { delivery: TO_GERMANY } = posted;
function take(delivery: Delivery, fields: Partial<OrderDocument> = {}): OrderDetail {
  const plain = orderFor(catalogue, 'weir-light', 165.1);
  const document = {
    ...plain,
    delivery,
    shown: { ...plain.shown, postageMinor: delivery.by === 'post' ? 820 : 0 },
    ...fields,
  };
  receive(shop.book, [{ document, way: 'desk', at: frame.now, now: pieceNow(catalogue, document.piece.id) }]);
  const detail = orderDetail(shop.book, catalogue, document.number, frame);
  if (detail === null) throw new Error('not in the book');
  return detail;
}

const textOf = (html: string): string => html.replace(/<[^>]+>/g, ' ').replace(/[\s\u00a0]+/g, ' ');

describe('the packing slip', () => {
  it.each(LANGS)('says where it goes, how many, postage and all together (%s)', (lang) => {
    const detail = take(TO_GERMANY, { quantity: 2 });
    const theirs = frameIn(lang, frame);
    const text = textOf(renderToString(<PackingSheet detail={detail} frame={theirs} />));
    expect(text).toContain('Solveig Møller Reepschlägergasse 7 Hinterhaus 24999 Stapelmünde');
    const parts = sumParts(detail);
    const total = detail.money.price.minor;
    expect(parts?.postageMinor).toBe(820);
    expect(total).toBe(2 * (parts?.priceMinor ?? 0) + 820);
    for (const minor of [parts?.priceMinor ?? 0, 820, total]) {
      expect(text).toContain(theirs.format.money(minor).replace('\u00a0', ' '));
    }
  });

  it('says that it is collected, and names no postage', () => {
    const text = textOf(renderToString(<PackingSheet detail={take({ by: 'collection' })} frame={frame} />));
    expect(text).toContain('Iris Møller . To be collected');
    expect(text).not.toContain('Postage');
  });

  it('tells no price for each and no postage where what was agreed on is made of other parts', () => {
    const detail = take(TO_GERMANY, { quantity: 2 });
    const agreed = { ...detail, money: { ...detail.money, price: { minor: 9_821, currency: 'GBP' } } };
    expect(sumParts(agreed)).toBeNull();
    const text = textOf(renderToString(<PackingSheet detail={agreed} frame={frame} />));
    expect(text).toContain('£98.21');
    expect(text).not.toContain('Postage');
    expect(text.match(/£/g)).toHaveLength(1);
  });
});

describe('the address label', () => {
  it('has the address in the order of its country, the country in capitals, and the sender', () => {
    const text = textOf(renderToString(<LabelSheet detail={take(TO_GERMANY)} frame={frame} />));
    expect(text).toContain('Hinterhaus 24999 Stapelmünde GERMANY');
    expect(text).toContain(`Sender: ${catalogue.shop.post?.returnTo}`);
  });

  it('says so where there is nothing to address', () => {
    const said = [{ by: 'collection' }, { by: 'unsaid' }].map((delivery) =>
      textOf(renderToString(<LabelSheet detail={take(delivery as Delivery)} frame={frame} />)),
    );
    expect(said[0]).toContain('will be collected');
    expect(said[1]).toContain('no address');
    expect(said.join()).not.toContain('Sender');
  });
});

describe('the message that asks for the address', () => {
  it.each(LANGS)('lies ready where there is none, in the buyer’s language (%s)', (lang) => {
    const detail = take({ by: 'unsaid' }, { lang });
    const draft = detail.drafts.find(({ letter }) => letter === 'address');
    expect(draft?.body).toContain(lang === 'de' ? 'Wohin darf ich sie schicken?' : 'Where shall I send it?');
    const collection = catalogue.shop.post?.collection;
    expect(draft?.body).toContain((lang === 'de' ? collection?.de : collection?.en) ?? '?');
    expect(renderToString(<OrderView detail={detail} frame={frame} />)).not.toContain('/label/');
  });

  it('does not where there is one, and the label is to be had', () => {
    const detail = take(TO_GERMANY);
    expect(detail.drafts.map(({ letter }) => letter)).not.toContain('address');
    expect(renderToString(<OrderView detail={detail} frame={frame} />)).toContain('/label/');
  });
});

describe('the form for an address that comes later', () => {
  it.each(LANGS)('is filled in with what there is, and opens with what was typed and wrong (%s)', (lang) => {
    const spoken = frameIn(lang, frame);
    const known = renderToString(<OrderView detail={take(TO_GERMANY)} frame={spoken} />);
    expect(known).toContain('value="Reepschlägergasse 7"');
    expect(known).toContain(`<option value="DE" selected>${spoken.format.country('DE')}`);
    const form = new URLSearchParams({
      kind: 'address',
      by: 'post',
      'to-line1': '7 Ropewalk',
      'to-name': '',
    });
    const attempt = { form, problem: { code: 'address-incomplete' } } as const;
    const again = renderToString(
      <OrderView detail={take({ by: 'unsaid' })} frame={spoken} attempt={attempt} />,
    );
    expect(again).toContain('value="7 Ropewalk"');
    expect(again).toMatch(/<details open>(?:(?!<\/details>).)*role="alert"/s);
  });

  it('is read into an address or a way', () => {
    const read = (fields: Record<string, string>) => {
      const form = new URLSearchParams({ version: '1', kind: 'address', ...fields });
      const found = readChange(form, { currency: 'GBP', now: frame.now, invoice: () => null });
      return found !== null && 'change' in found ? found.change : found;
    };
    expect(read({ by: 'collection' })).toEqual({ kind: 'address', delivery: { by: 'collection' } });
    expect(read({ by: 'post', 'to-name': ' Solveig\r\nMøller ', 'to-country': 'DE' })).toMatchObject({
      delivery: { by: 'post', to: { name: 'Solveig Møller', line1: '', country: 'DE' } },
    });
    expect(read({ by: 'pigeon' })).toBeNull();
  });
});
