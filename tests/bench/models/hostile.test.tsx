import { renderToString } from 'preact-render-to-string';
import { afterAll, describe, expect, it } from 'vitest';
import { change } from '#bench/book/change.ts';
import type { Invoice } from '#bench/book/invoices.ts';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { toCsv } from '#bench/export/csv.ts';
import { benchCard } from '#bench/models/benchCard.ts';
import { invoiceContent } from '#bench/models/invoice.ts';
import { frameIn, type Frame } from '#bench/models/frame.ts';
import { orderDetail, type OrderDetail } from '#bench/models/orderDetail.ts';
import { filterOf, orderList } from '#bench/models/orderList.ts';
import { OrderCard } from '#bench/views/card/OrderCard.tsx';
import { CareSheet } from '#bench/views/CareSheet.tsx';
import { LabelSheet } from '#bench/views/LabelSheet.tsx';
import { InvoiceSheet } from '#bench/views/InvoiceSheet.tsx';
import { OrderListView } from '#bench/views/OrderListView.tsx';
import { OrderView } from '#bench/views/OrderView.tsx';
import { PackingSheet } from '#bench/views/PackingSheet.tsx';
import { TakeInView } from '#bench/views/TakeInView.tsx';
import { checkOrder } from '#order/check.ts';
import type { Delivery, OrderDocument } from '#order/document.ts';
import { LANGS } from '#words/lang.ts';
import { catalogue, frame, openShop, orderFor } from '../shop.ts';

/** Texts that break pages, paper, lists and mails that don't look after themselves; each within what an order may hold. */
const HOSTILE = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  '</textarea><script>alert(1)</script>',
  '{{7*7}}${7*7}<%= 7*7 %>',
  'javascript:alert(1)',
  "=cmd|'/C calc'!A0",
  'Subject: x Bcc: all@example.org',
  '\u202Eecirp eht elbuod\u202C',
  '\u2066\u2067isolated',
  'Z\u0351\u036B\u0343\u036A'.repeat(8),
  '&lt;b&gt;&#60;script&#62;',
  'x'.repeat(90),
];

const shop = openShop(catalogue);
afterAll(() => shop.close());

function take(document: OrderDocument): OrderDetail {
  const at = frame.now;
  const now = pieceNow(catalogue, document.piece.id);
  receive(shop.book, [{ document, way: 'paste', at, now }]);
  change(shop.book, document.number, 1, at, { kind: 'note', text: document.buyer.note });
  const detail = orderDetail(shop.book, catalogue, document.number, frame);
  if (detail === null) throw new Error('not in the book');
  return detail;
}

/** An invoice as it would be issued, taken back for a hostile reason. */
function paperOf(detail: OrderDetail, spoken: Frame): Invoice {
  const content = invoiceContent(detail, spoken);
  if (content === null) throw new Error('no seller');
  const { number, buyer } = detail.entry.document;
  return {
    ...{ invoice: '2026-0001', number, kind: 'credit-note', corrects: '2026-0000', issuedAt: spoken.now },
    content: { ...content, reason: buyer.note },
    erasedAt: null,
  };
}

/** Everything that is shown or printed of one order, in one language. */
function pages(detail: OrderDetail, spoken: Frame): string[] {
  const card = benchCard(detail, null);
  const list = orderList(
    shop.book,
    catalogue,
    filterOf(new URLSearchParams('state=all'), '2026-11-25'),
    spoken,
  );
  return [
    renderToString(<OrderListView list={list} frame={spoken} />),
    renderToString(<OrderView detail={detail} frame={spoken} />),
    renderToString(<InvoiceSheet paper={paperOf(detail, spoken)} takenBack={null} />),
    renderToString(<OrderCard bench={card!} detail={detail} frame={spoken} />),
    renderToString(<PackingSheet detail={detail} frame={spoken} />),
    renderToString(<LabelSheet detail={detail} frame={spoken} />),
    renderToString(<CareSheet detail={detail} design={detail.now.copy?.design ?? null} frame={spoken} />),
    renderToString(
      <TakeInView
        arrived={[{ code: 'refused', source: detail.entry.document.buyer.name, why: { code: 'no-order' } }]}
        frame={spoken}
      />,
    ),
  ];
}

/** Tags as a browser reads them: a quoted value may hold a `>`. */
const TAG = /<[a-z](?:[^"'>]|"[^"]*"|'[^']*')*>/gi;
/** Elements that a page of the bench never has, whoever writes into an order. */
const ELEMENT = /^<(script|img|iframe|object|embed|style|link|base|meta)\b/i;
/** The one picture that it has: a piece's own. */
const PICTURE =
  /^<img class="piece" src="\/bench\/pictures\/[a-z0-9-]+\.svg" width="\d+" height="\d+" alt loading="lazy"\/>$/;
/** Handlers and inline styles, once values are taken out. */
const ATTRIBUTE = /\s(on[a-z]+|style)\b/i;
const HREF = /\shref="(?!\/|https:|mailto:|\?|#)/i;

function offences(html: string): string[] {
  const tags = html.match(TAG) ?? [];
  return tags.filter(
    (tag) =>
      (ELEMENT.test(tag) && !PICTURE.test(tag)) ||
      ATTRIBUTE.test(tag.replace(/"[^"]*"|'[^']*'/g, '')) ||
      HREF.test(tag),
  );
}

it('would see an offence', () => {
  const some = [
    '<img class="piece" src="/elsewhere.svg">',
    '<a href="javascript:x">',
    '<b onclick="x">',
    '<i title=">" style="x">',
    '<script>',
  ];
  expect(offences(some.join('text'))).toEqual(some);
});

/** Every part of the address holds it, as far as it goes. */
const addressedTo = (text: string): Delivery => ({
  by: 'post',
  to: {
    ...{ name: `A ${text}`.slice(0, 100), line1: `1 ${text}`.slice(0, 100), line2: text.slice(0, 100) },
    ...{ town: text.slice(0, 100), region: text.slice(0, 100), postcode: text.slice(0, 20), country: 'GB' },
  },
});

describe.each(HOSTILE)('an order full of %j', (text) => {
  it.each(LANGS)('is shown and printed in %s as plain text', (lang) => {
    const base = orderFor(catalogue, 'weir-light', 165.1, { name: `A ${text}`.slice(0, 100), note: text });
    const document: OrderDocument = {
      ...base,
      lang,
      measure: { ...base.measure, text: text.slice(0, 40) },
      choices: { gift: text.slice(0, 80) },
      delivery: addressedTo(text),
    };
    expect(checkOrder(document)).toBeNull();
    const detail = take(document);
    for (const html of pages(detail, frameIn(lang, frame))) {
      expect(offences(html)).toEqual([]);
    }
    expect(detail.drafts.length).toBeGreaterThan(0);
    for (const { link } of detail.drafts) {
      const url = new URL(link);
      expect([...url.searchParams.keys()]).toEqual(['subject', 'body']);
      expect(url.pathname).toBe('iris@example.org');
    }
    expect(toCsv({ entries: [detail.entry], unreadable: [], altered: new Set() })).not.toMatch(/"[=+\-@|]/);
  });
});

it('isolates whatever a buyer wrote, so that no mark turns the page’s own words round', () => {
  const detail = take({
    ...orderFor(catalogue, 'weir-light', 165.1, { name: '\u202Ereversed', note: '\u202Enote' }),
    delivery: addressedTo('\u202Ebackwards'),
  });
  const all = pages(detail, frame);
  expect(all.filter((html) => html.includes('\u202E')).length).toBeGreaterThan(2);
  for (const html of all) {
    for (const { index } of html.matchAll(/\u202E/g)) {
      const part = html.slice(0, index);
      const open = part.lastIndexOf('<bdi');
      const safe =
        open > part.lastIndexOf('</bdi>') ||
        part.lastIndexOf('<textarea') > part.lastIndexOf('</textarea>') ||
        // A field of a form keeps its text to itself.
        / value="[^"]*$/.test(part);
      expect(safe, part.slice(-120)).toBe(true);
    }
  }
});
