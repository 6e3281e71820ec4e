import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { takeIn, type Offering } from '#bench/intake/takeIn.ts';
import { readOfferings } from '#bench/intake/offerings.ts';
import { search } from '#bench/book/search.ts';
import type { OrderDocument } from '#order/document.ts';
import { foldCompact, mailBody, slipLink } from '#order/mail.ts';
import { mailtoLink } from '#order/mailtoLink.ts';
import { encode } from '#order/text.ts';
import { wrappedMessages, wrappedTexts } from './wrapped.ts';
import { catalogue, openShop, orderFor, type Shop } from '../shop.ts';

let shop: Shop;
let order: OrderDocument;
beforeEach(() => {
  shop = openShop(catalogue);
  order = orderFor(catalogue, 'weir-light', 165.1, { note: 'Schöne Grüße' });
});
afterEach(() => shop.close());

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const offer = (text: string | Uint8Array, source = 'mail.txt', way: Offering['way'] = 'file'): Offering => ({
  source,
  way,
  bytes: typeof text === 'string' ? bytes(text) : text,
});
const take = (...offerings: Offering[]) =>
  takeIn(offerings, {
    inbox: shop.desk.inbox(),
    pieceNow: shop.desk.pieceNow,
    at: '2026-11-25T19:00:00.000Z',
  });

const TEXTS = {
  subject: 'Order',
  greeting: 'Dear Wren,',
  lines: ['Piece: Weir Light'],
  closing: 'Iris',
  foot: 'For the bench:',
};
const mail = (one: OrderDocument) => mailBody(TEXTS, one);
/** What form services mail on: the posted fields as lines, or as a table in HTML. */
const posted = (one: OrderDocument) =>
  Object.entries({
    subject: 'Order',
    email: one.buyer.email,
    summary: 'Piece: Weir Light',
    order: foldCompact(encode(one)),
  });
const postedLines = (one: OrderDocument) =>
  `You have a new entry.\n\n${posted(one)
    .map(([name, value]) => `${name}: ${value}`)
    .join('\n')}\n\n-- \nSent by the form service`;
const postedTable = (one: OrderDocument) =>
  `<table>${posted(one)
    .map(([name, value]) => `<tr><th>${name}</th><td>${value.replaceAll('\n', '<br />')}</td></tr>`)
    .join('')}</table>`;
const base64Lines = (text: string) => Buffer.from(text).toString('base64').replace(/.{76}/g, '$&\r\n');

/** The same order as mail programs send it (RFC 5322, 2045, 2046). */
function messages(one: OrderDocument): Record<string, string> {
  const head =
    'From: iris@example.org\r\nTo: orders@ninepin.example\r\nSubject: =?utf-8?B?QmVzdGVsbHVuZw==?=\r\nMIME-Version: 1.0\r\n';
  const body = mail(one).replace(/\n/g, '\r\n');
  const html = `<html><body><p>Dear Wren,</p><blockquote>${mail(one).replace(/\n/g, '<br>')}</blockquote></body></html>`;
  const qp = html.replace(/=/g, '=3D').replace(/(.{70})/g, '$1=\r\n');
  return {
    plain: `${head}Content-Type: text/plain; charset=utf-8\r\n\r\n${body}`,
    base64: `${head}Content-Type: text/plain; charset=utf-8\r\nContent-Transfer-Encoding: base64\r\n\r\n${base64Lines(body)}`,
    'html only, quoted-printable': `${head}Content-Type: text/html; charset=utf-8\r\nContent-Transfer-Encoding: quoted-printable\r\n\r\n${qp}`,
    'both parts': `${head}Content-Type: multipart/alternative; boundary=b\r\n\r\n--b\r\nContent-Type: text/plain\r\n\r\nSee the other part.\r\n--b\r\nContent-Type: text/html\r\n\r\n${html}\r\n--b--\r\n`,
    'the document attached': `${head}Content-Type: multipart/mixed; boundary=b\r\n\r\n--b\r\nContent-Type: text/plain\r\n\r\nHere it is.\r\n--b\r\nContent-Type: application/json; name="order.json"\r\nContent-Disposition: attachment; filename="order.json"\r\nContent-Transfer-Encoding: base64\r\n\r\n${base64Lines(JSON.stringify(one))}\r\n--b--\r\n`,
    forwarded: `${head}Content-Type: text/plain\r\n\r\n${body.replace(/^/gm, '> ')}`,
    'a form service, lines': `${head}Content-Type: text/plain; charset=utf-8\r\n\r\n${postedLines(one).replace(/\n/g, '\r\n')}`,
    'a form service, table': `${head}Content-Type: text/html; charset=utf-8\r\n\r\n${postedTable(one)}`,
    'UTF-16 text': `${head}Content-Type: text/plain; charset=utf-16le\r\nContent-Transfer-Encoding: base64\r\n\r\n${Buffer.from(body, 'utf16le').toString('base64')}`,
  };
}

describe('one order', () => {
  it('is the same however it comes', async () => {
    const ways: Offering[] = [
      offer(mail(order), 'the text', 'paste'),
      offer(encode(order), 'the text', 'paste'),
      offer(postedLines(order), 'the text', 'paste'),
      offer(slipLink('https://ninepin.example/slip/', order), 'the text', 'link'),
      offer(JSON.stringify(order, null, 2), 'order.json'),
      offer(JSON.stringify([{ document: order, history: [] }]), 'orders.json'),
      ...Object.entries(messages(order)).map(([name, text]) => offer(text, `${name}.eml`)),
    ];
    const arrived = await take(...ways);
    expect(arrived.map(({ code }) => code)).toEqual(['received', ...ways.slice(1).map(() => 'same')]);
    expect(
      search(shop.book, { text: '', state: 'all', today: '2026-11-25', page: 0 }).entries[0]?.document,
    ).toEqual(order);
  });

  it('is found in a mailbox among other letters', async () => {
    const others = Array.from({ length: 3 }, () => orderFor(catalogue, 'weir-light', 165.1));
    const letter =
      'From: a@example.org\r\nSubject: Hello\r\n\r\nDear Wren,\r\n>From the market I bring beads.\r\n';
    const box = [letter, ...others.map((one) => messages(one).plain ?? ''), letter]
      .map((one) => `From MAILER Wed Nov 25 19:00:00 2026\r\n${one}\r\n`)
      .join('');
    expect((await take(offer(box, 'inbox.mbox'))).map(({ code }) => code)).toEqual([
      'received',
      'received',
      'received',
    ]);
  });
});

describe('one order wrapped by mail programs', () => {
  const offerings = (): Offering[] => [
    ...Object.entries(wrappedMessages(mail(order))).map(([name, text]) => offer(text, `${name}.eml`)),
    ...Object.entries(wrappedTexts(mail(order))).map(([name, held]) => offer(held, name)),
  ];

  it('is read out of every wrapping', async () => {
    const arrived = await take(...offerings());
    const refused = arrived.filter(({ code }) => code !== 'received' && code !== 'same');
    expect(refused).toEqual([]);
    expect(new Set(arrived.map(({ source }) => source)).size).toBe(offerings().length);
    expect(
      search(shop.book, { text: '', state: 'all', today: '2026-11-25', page: 0 }).entries.map(
        ({ document }) => document,
      ),
    ).toEqual([order]);
  });

  it('is found where the address was put into the midst of its code', async () => {
    const [first = '', ...others] = foldCompact(encode(order)).split('\n');
    const text = [`${first}<http://${first}>`, ...others].join('\n');
    expect(await take(offer(text))).toMatchObject([{ code: 'received' }]);
  });

  it('is refused with a reason where a message is forwarded in itself for ever', async () => {
    let nested = 'Subject: end\r\n\r\nend';
    for (let depth = 0; depth < 30; depth += 1) {
      nested = `Subject: Fwd\r\nContent-Type: message/rfc822\r\nContent-Disposition: attachment\r\n\r\n${nested}`;
    }
    expect(await take(offer(nested, 'deep.eml'), offer('<div>'.repeat(50_000), 'deep.html'))).toMatchObject([
      { code: 'refused', why: { code: 'no-order' } },
      { code: 'refused' },
    ]);
  });
});

describe('several orders in one mail', () => {
  const two = () => [order, orderFor(catalogue, 'weir-light', 170)] as const;
  const json = (one: OrderDocument): string =>
    `Content-Type: application/json; name="order.json"\r\nContent-Transfer-Encoding: base64\r\n\r\n${base64Lines(JSON.stringify(one))}`;
  const letter = (text: string): string => `Content-Type: text/plain; charset=utf-8\r\n\r\n${text}`;
  const holding = (...parts: string[]): string =>
    `Subject: Two\r\nMIME-Version: 1.0\r\nContent-Type: multipart/mixed; boundary=b\r\n\r\n--b\r\n${parts.join('\r\n--b\r\n')}\r\n--b--\r\n`;

  it('are all taken in, from the letter and from what is attached to it, each once', async () => {
    const [one, other] = two();
    const mails = [
      holding(letter('Both.'), json(one), json(other)),
      holding(letter(mail(one)), json(other), json(one)),
      holding(letter(`${mail(one)}\n${mail(other)}`), json(one)),
    ];
    for (const text of mails) {
      for (const name of ['two.eml', 'two']) {
        const arrived = await take(offer(text, name));
        expect(arrived.map((each) => 'number' in each && each.number).toSorted()).toEqual(
          [one.number, other.number].toSorted(),
        );
      }
    }
  });

  it('are told of where one of them is broken', async () => {
    const [one, other] = two();
    const broken = mail(one).replace(/claspwise4\.../, 'claspwise4.xx');
    const codes = (await take(offer(holding(letter(broken), json(other)), 'two.eml'))).map((each) =>
      each.code === 'refused' ? each.why.code : each.code,
    );
    expect(codes.toSorted()).toEqual(['damaged', 'received']);
  });

  it('are read as documents among other words too', async () => {
    const [one, other] = two();
    const text = `Hello,\n\n${[one, other].map((each) => JSON.stringify(each, null, 2)).join('\n\n')}\n\n-- \nIris`;
    for (const written of [text, text.replace(/^/gm, '> '), text.replace(/^ +/gm, '\u00a0\u00a0')]) {
      expect(await take(offer(written))).toHaveLength(2);
    }
    const stored = search(shop.book, { text: '', state: 'all', today: '2026-11-25', page: 0 }).entries;
    expect(stored.map(({ document }) => document)).toEqual(expect.arrayContaining([one, other]));
    expect(await take(offer(text.replace('"sit": "easy"', '"sit": ea\nsy')))).toMatchObject([
      { code: 'refused', why: { code: 'damaged' } },
      { code: 'same' },
    ]);
  });
});

it('a text that begins with From is no mailbox, and an address among other words is read', async () => {
  const link = mailtoLink('orders@ninepin.example', 'Order', mail(order));
  const filtered = `https://filter.example/?url=${encodeURIComponent(link)}&data=1`;
  const codes = [`From Iris: ${encode(order)}`, `Use this:\n${link}\nIris`, filtered, `\n\n${mail(order)}`];
  const arrived = await take(...codes.map((text) => offer(text)), offer(Buffer.from(mail(order), 'utf16le')));
  expect(arrived.map(({ code }) => code)).toEqual(['received', 'same', 'same', 'same', 'same']);
});

it('a mail that a program keeps between its length and notes of its own is read without them', async () => {
  const source = messages(order).base64 ?? '';
  const kept = `${source.length}      \n${source}<?xml version="1.0"?><plist><dict/></plist>\n`;
  expect(await take(offer(kept, 'kept.emlx'))).toMatchObject([{ code: 'received' }]);
  const plain =
    messages(order).base64?.replace(
      /\r\n\r\n[^]*/,
      `\r\n\r\n${base64Lines('Name: Zoë\nSize: 6½ in\nPiece: x\nSend it to: y\nMy name: Zoë\nPrice: 1')}\r\n`,
    ) ?? '';
  const [one] = await take(offer(`${plain.length}\n${plain}<?xml version="1.0"?><plist/>`, 'kept.emlx'));
  expect(one).toMatchObject({ code: 'refused', why: { code: 'plain' } });
  expect(one?.code === 'refused' && 'text' in one.why && one.why.text).toMatch(/Price: 1\n$/);
});

it('a code is read out of UTF-7, which writes low lines by their numbers (RFC 2152)', async () => {
  const low = { ...order, buyer: { ...order.buyer, note: '\uffff\uffff\uffff' } };
  expect(encode(low)).toContain('_');
  const utf7 = (text: string): string =>
    text.replace(
      /_+/g,
      (run) => `+${Buffer.from(run, 'utf16le').swap16().toString('base64').replace(/=+$/, '')}-`,
    );
  expect(await take(offer(utf7(mail(low))))).toMatchObject([{ code: 'received' }]);
  expect(await take(offer(mail(low)))).toMatchObject([{ code: 'same' }]);
});

it('mails that would keep the parser busy for minutes are answered soon', async () => {
  const begun = performance.now();
  const hostile = [`a${'\n'.repeat(400_000)}b`, '<div '.repeat(100_000), '<div>'.repeat(100_000)];
  const documents = '{"format":"claspwise-order"'.repeat(10_000);
  await take(...[...hostile, documents].map((text) => offer(text, 'hostile.eml')));
  // A second on a quick machine; minutes before there were bounds.
  expect(performance.now() - begun).toBeLessThan(30_000);
});

describe('what is refused', () => {
  it.each<[string, string, string]>([
    ['a letter', 'Dear Wren, have you any blue ones?', 'no-order'],
    ['half an order', 'claspwise1.AAAA', 'cut-off'],
    ['a newer order', 'claspwise9.AAAA.end', 'newer-version'],
    ['JSON of something else', '{"a":1}', 'not-an-order'],
    ['an empty list', '[]', 'no-order'],
    ['nothing', '', 'empty-file'],
    ['blank lines', '\uFEFF \r\n\n', 'empty-file'],
  ])('%s is named', async (_, text, code) => {
    expect(await take(offer(text))).toEqual([
      { code: 'refused', source: 'mail.txt', why: expect.objectContaining({ code }) as unknown },
    ]);
  });

  it('a changed order with a number that is taken', async () => {
    await take(offer(encode(order)));
    expect((await take(offer(encode({ ...order, quantity: 3 }))))[0]?.code).toBe('number-taken');
  });

  it('a file larger than any mail', async () => {
    const [one] = await take(offer(new Uint8Array(17 * 1024 * 1024), 'big.eml'));
    expect(one).toMatchObject({ code: 'refused', why: { code: 'file-too-large', mostMb: 16 } });
  });

  it('bytes at random, without a throw', async () => {
    let seed = 5;
    const next = () => (seed = (seed * 48271) % 2147483647) & 255;
    for (let run = 0; run < 60; run += 1) {
      const noise = Uint8Array.from({ length: 2000 }, next);
      for (const name of ['a.eml', 'a.mbox', 'a.json', 'a']) {
        const [one] = await take(offer(noise, name));
        expect(one?.code).toBe('refused');
      }
    }
  });

  it('deep JSON and deep mails, without a throw', async () => {
    const deep = await take(offer('['.repeat(100_000)), offer('{"a":'.repeat(100_000)));
    expect(deep.map(({ code }) => code)).toEqual(['refused', 'refused']);
    let nested = 'Content-Type: text/plain\r\n\r\nend';
    for (let depth = 0; depth < 100; depth += 1) {
      nested = `Content-Type: multipart/mixed; boundary=b${depth}\r\n\r\n--b${depth}\r\n${nested}\r\n--b${depth}--\r\n`;
    }
    expect((await take(offer(nested, 'deep.eml')))[0]?.code).toBe('refused');
  });
});

it('a form with nothing in it, and an empty file beside, are told apart', async () => {
  const nothing = await readOfferings(new FormData(), 'the text');
  const form = new FormData();
  form.append('files', new File([], 'order.eml'));
  const arrived = await take(...nothing, ...(await readOfferings(form, 'the text')));
  expect(arrived).toEqual([
    { code: 'refused', source: 'the text', why: { code: 'empty-form' } },
    { code: 'refused', source: 'order.eml', why: { code: 'empty-file' } },
  ]);
});

it('names files by their last part only, and opens none by it', async () => {
  const form = new FormData();
  form.set('text', '  ');
  form.append('files', new File(['x'], '../../etc/pass\u202Ewd'));
  form.append('files', new File([], ''));
  const offerings = await readOfferings(form, 'the text');
  expect(offerings.map(({ source }) => source)).toEqual(['passwd']);
});

it('reads the sample mail kept for ever', async () => {
  const [one] = await take(offer(readFileSync('tests/fixtures/orders/v1-bracelet.mail.txt')));
  expect(one?.code).toBe('received');
});

describe('bytes of another encoding than UTF-8', () => {
  const latin = (text: string): Uint8Array => Buffer.from(text, 'latin1');
  const named = (): OrderDocument => ({ ...order, buyer: { ...order.buyer, name: 'Søren Ågård' } });

  it('refuse a document, whose names would have holes, and keep the book as it was', async () => {
    const arrived = await take(offer(latin(JSON.stringify(named())), 'order.json'));
    expect(arrived).toEqual([{ code: 'refused', source: 'order.json', why: { code: 'not-utf8' } }]);
    expect(search(shop.book, { text: '', state: 'all', today: '2026-11-25', page: 0 }).total).toBe(0);
  });

  it('take nothing from a code, which spells names in ASCII', async () => {
    const arrived = await take(offer(latin(`Grüße\n${foldCompact(encode(named()))}`)));
    expect(arrived).toMatchObject([{ code: 'received' }]);
  });
});
