/** An invoice from the order's page: what it says, in whose language, and that it says it for ever. */
import { renderToString } from 'preact-render-to-string';
import { afterAll, describe, expect, it } from 'vitest';
import { findInvoice, type Invoice } from '#bench/book/invoices.ts';
import { receive } from '#bench/book/receive.ts';
import { changeOrder, type Changed } from '#bench/changeOrder.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { orderDetail, type OrderDetail } from '#bench/models/orderDetail.ts';
import { InvoiceSheet } from '#bench/views/InvoiceSheet.tsx';
import { OrderView } from '#bench/views/OrderView.tsx';
import type { Catalogue, Seller } from '#catalogue/model/catalogue.ts';
import type { OrderDocument } from '#order/document.ts';
import { posted } from '../../order/orders.ts';
import { catalogue, frame, openShop, orderFor } from '../shop.ts';

const shop = openShop(catalogue);
afterAll(() => shop.close());

/** The shop with another seller, or none. */
const selling = (seller: Partial<Seller> | null): Catalogue => ({
  ...catalogue,
  shop: {
    ...catalogue.shop,
    seller:
      seller === null || catalogue.shop.seller === null ? null : { ...catalogue.shop.seller, ...seller },
  },
});

function take(fields: Partial<OrderDocument> = {}): string {
  const document = { ...orderFor(catalogue, 'weir-light', 165.1), ...fields };
  receive(shop.book, [{ document, way: 'desk', at: frame.now, now: pieceNow(catalogue, document.piece.id) }]);
  send(document.number, { kind: 'state', state: 'agreed' });
  return document.number;
}

function detailOf(number: string, seen: Catalogue = catalogue): OrderDetail {
  const detail = orderDetail(shop.book, seen, number, frame);
  if (detail === null) throw new Error('not in the book');
  return detail;
}

function send(number: string, fields: Record<string, string>, seen: Catalogue = catalogue): Changed {
  const version = String(detailOf(number).entry.version);
  const spoken = { ...frame, shop: seen.shop };
  return changeOrder(shop.book, seen, number, new URLSearchParams({ version, ...fields }), spoken);
}

/** Issues one and gives it as it stands in the book. */
function issued(number: string, seen: Catalogue = catalogue): Invoice {
  const changed = send(number, { kind: 'invoice' }, seen);
  if (changed.outcome !== 'done') throw new Error(JSON.stringify(changed));
  const paper = findInvoice(shop.book, /invoices\/([^/]+)\/$/.exec(changed.location)?.[1] ?? '');
  if (paper === null) throw new Error('no invoice');
  return paper;
}

const sheet = (paper: Invoice, takenBack: string | null = null): string =>
  renderToString(<InvoiceSheet paper={paper} takenBack={takenBack} />)
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ');

const page = (number: string, seen: Catalogue = catalogue): string =>
  renderToString(<OrderView detail={detailOf(number, seen)} frame={{ ...frame, shop: seen.shop }} />);

describe('an invoice', () => {
  it('names seller and buyer, pieces and postage, total and tax, what has come in and what is open', () => {
    const plain = orderFor(catalogue, 'weir-light', 165.1);
    const number = take({ quantity: 2, shown: { ...plain.shown, postageMinor: 960 } });
    send(number, { kind: 'paid', sum: '20', day: '2026-11-24', way: 'transfer' });
    const paper = issued(number);
    const { money } = frame.format;
    const each = plain.shown.priceMinor;
    const text = sheet(paper);
    for (const part of [
      `Invoice ${paper.invoice}`,
      'Wren Askew, trading as Ninepin Beadwork',
      'Iris Møller',
      `2 ${money(each)} ${money(2 * each)}`,
      `Postage ${money(960)}`,
      `Together ${money(2 * each + 960)}`,
      'Not registered for VAT',
      `Paid by bank transfer on 24 November 2026 : ${money(2000)}`,
      `Still to pay : ${money(2 * each + 960 - 2000)}`,
    ]) {
      expect(text.replace(/ ?: /g, ' : ')).toContain(part);
    }
  });

  it('is in the buyer’s language, and goes to her address', () => {
    const paper = issued(take({ lang: 'de', delivery: posted.delivery }));
    expect(paper.content.buyer.address).toEqual([
      'Reepschlägergasse 7',
      'Hinterhaus',
      '24999 Stapelmünde',
      'Deutschland',
    ]);
    expect(sheet(paper)).toMatch(/Rechnung .*Nicht umsatzsteuerpflichtig/);
  });

  it('is a receipt too where all is paid', () => {
    const number = take();
    const whole = (detailOf(number).money.price.minor / 100).toFixed(2);
    send(number, { kind: 'paid', sum: whole, day: '2026-11-24', way: 'cash' });
    expect(sheet(issued(number))).toContain('Invoice and receipt');
  });

  it('shows the tax within the price where the seller is registered', () => {
    const number = take();
    const { minor } = detailOf(number).money.price;
    const paper = issued(number, selling({ taxHundredths: 2000, taxText: null, taxNumber: 'GB 123' }));
    const tax = Math.round(minor / 6);
    expect(paper.content.tax).toEqual({ text: 'Tax within it, 20 %', hundredths: 2000, minor: tax });
    const { money } = frame.format;
    expect(sheet(paper)).toContain(`Without tax ${money(minor - tax)} Tax within it, 20 % ${money(tax)}`);
    expect(sheet(paper)).toContain('Tax number GB 123');
  });

  it('says the same for ever, whatever shop and order become', () => {
    const number = take();
    const paper = issued(number);
    const before = sheet(paper);
    send(number, { kind: 'paid', sum: '20', day: '2026-11-24', way: 'cash' });
    const dearer: Catalogue = {
      ...selling({ name: 'Someone Else' }),
      pieces: catalogue.pieces.map((piece) => ({ ...piece, listedMinor: piece.listedMinor + 5000 })),
    };
    send(number, { kind: 'state', state: 'asked', reason: 'Another clasp' }, dearer);
    send(number, { kind: 'state', state: 'agreed' }, dearer);
    const again = findInvoice(shop.book, paper.invoice);
    expect(again === null ? '' : sheet(again)).toBe(before);
    expect(page(number, dearer)).toContain('Take it back and issue another.');
  });

  it('is not issued without a seller, or before the order is agreed to, and says why', () => {
    const number = take();
    expect(send(number, { kind: 'invoice' }, selling(null))).toMatchObject({
      attempt: { problem: { code: 'no-seller' } },
    });
    expect(page(number, selling(null))).toContain('Add it under Shop and rules, Invoices.');
    send(number, { kind: 'state', state: 'new', reason: 'Too soon' });
    expect(send(number, { kind: 'invoice' })).toMatchObject({ attempt: { problem: { code: 'not-agreed' } } });
    expect(page(number)).toContain('the tax rules where you live decide');
  });
});

describe('a credit note', () => {
  it('takes the invoice back, less than nothing, and the invoice says so', () => {
    const number = take();
    const first = issued(number);
    const changed = send(number, { kind: 'credit-note', corrects: first.invoice, reason: 'Wrong name' });
    if (changed.outcome !== 'done') throw new Error(changed.outcome);
    const note = detailOf(number).invoices.at(-1);
    if (note === undefined) throw new Error('no credit note');
    expect(changed.location).toBe(`/bench/invoices/${note.invoice}/`);
    expect(sheet(note)).toContain(`Credit note ${note.invoice}`);
    expect(sheet(note)).toContain(`This takes back invoice ${first.invoice}`);
    expect(sheet(note)).toContain(`Together -${frame.format.money(first.content.totalMinor)}`);
    expect(sheet(note)).not.toContain('Still to pay');
    expect(sheet(first, note.invoice)).toContain(`Taken back by credit note ${note.invoice}`);
    expect(page(number)).toContain(`takes back ${first.invoice}`);
  });
});
