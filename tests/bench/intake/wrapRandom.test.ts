/** Random orders through random wrappings, one within another: each is read exactly, and nothing else is said. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { takeIn } from '#bench/intake/takeIn.ts';
import type { OrderDocument } from '#order/document.ts';
import { mailBody } from '#order/mail.ts';
import { anyOrder } from '#tests/order/orders.ts';
import { htmlOnly, PAGES } from './wrapped.ts';

type Change = (text: string) => string;

/** What programs put before each line that they quote or list. */
const MARKS = ['', '', '> ', '>', '>> > ', '| ', '* ', '- ', '» ', 'ZQ> ', '\u00a0\u00a0'];

const JOINED = 'joined into one line';
/** What a letter's text goes through on its way. */
const CHANGES: Readonly<Record<string, Change>> = {
  ...Object.fromEntries(
    ['\u00ad', '\u200b', '\u200e', '\u2066'].map((unseen) => [
      `U+${unseen.charCodeAt(0).toString(16)} within words`,
      (text: string) => text.replace(/(\w{9})(?=\w)/g, `$1${unseen}`),
    ]),
  ),
  'marks of direction round lines': (text) => text.replace(/^(.+)$/gm, '\u202a$1\u202c'),
  'broken into short lines': (text) => text.replace(/\S{40}(?=\S)/g, '$&\n> '),
  [JOINED]: (text) => text.replaceAll('\n', ' '),
  'below an answer and a signature': (text) =>
    `Yes, please.\n\n-- \nZoë\n\nOn Wed, 25 Nov 2026 at 18:40, Zoë wrote:\n${text}`,
  'with the foot of a mailing list': (text) =>
    `[From outside]\n${text}\n_____\nBeads mailing list -- beads@lists.example\n`,
  'between lines that begin as a mailbox does': (text) =>
    `From Zoë:\n${text}\nFrom here on nothing follows.\n`,
};

const crlf: Change = (text) => text.replace(/\r?\n/g, '\r\n');
const base64 = (bytes: Buffer): string => bytes.toString('base64').replace(/.{76}/g, '$&\r\n');
const headed = (type: string, body: string, encoding = '8bit'): string =>
  `From: zoe@example.org\r\nSubject: Order\r\nMIME-Version: 1.0\r\nContent-Type: ${type}\r\nContent-Transfer-Encoding: ${encoding}\r\n\r\n${body}`;

/** Every character but plain ones escaped, soft breaks at 60 (RFC 2045, 6.7). */
const quotedPrintable: Change = (text) =>
  crlf(text)
    .replace(/[^\r\n -<>-~]/gu, (one) => [...Buffer.from(one)].map(hex).join(''))
    .replaceAll('=\r\n', '=3D\r\n')
    .replace(/(?:=[\dA-F]{2}|[^=\r\n]){60}(?=[^\r\n])/g, '$&=\r\n');
const hex = (byte: number): string => `=${byte.toString(16).toUpperCase().padStart(2, '0')}`;

/** A text as a message. */
const MESSAGES: Readonly<Record<string, Change>> = {
  'plain text': (text) => headed('text/plain; charset=utf-8', crlf(text)),
  base64: (text) => headed('text/plain; charset=utf-8', base64(Buffer.from(text)), 'base64'),
  'quoted-printable': (text) =>
    headed('text/plain; charset=utf-8', quotedPrintable(text), 'quoted-printable'),
  'UTF-16': (text) => headed('text/plain; charset=utf-16le', base64(Buffer.from(text, 'utf16le')), 'base64'),
  flowed: (text) => headed('text/plain; charset=utf-8; format=flowed', crlf(text)),
  ...Object.fromEntries(Object.entries(PAGES).map(([name, wrap]) => [name, (text) => htmlOnly(wrap(text))])),
  'text and HTML': (text) =>
    headed(
      'multipart/alternative; boundary=a',
      `--a\r\nContent-Type: text/plain; charset=utf-8\r\n\r\n${crlf(text)}\r\n--a\r\nContent-Type: text/html; charset=utf-8\r\n\r\n${PAGES['spans and breaks']?.(text)}\r\n--a--\r\n`,
    ),
};

let boundary = 0;
/** Messages forwarded by one. */
const FORWARDS: readonly ((messages: readonly string[]) => string)[] = [
  ['message/rfc822', 'attachment'],
  ['message/rfc822', 'inline'],
  ['application/octet-stream', 'attachment; filename="Order.eml"'],
].map(([type = '', disposition = '']) => (messages) => {
  const mark = `forward-${(boundary += 1)}`;
  const parts = messages.map(
    (one) =>
      `Content-Type: ${type}\r\nContent-Disposition: ${disposition}\r\nContent-Transfer-Encoding: base64\r\n\r\n${base64(Buffer.from(one))}`,
  );
  const all = ['Content-Type: text/plain\r\n\r\nSee below.', ...parts];
  return headed(
    `multipart/mixed; boundary=${mark}`,
    `--${mark}\r\n${all.join(`\r\n--${mark}\r\n`)}\r\n--${mark}--\r\n`,
  );
});

/** Messages as a file. */
const FILES: readonly ((message: string) => { source: string; text: string })[] = [
  (text) => ({ source: 'order.eml', text }),
  (text) => ({ source: 'order', text }),
  (text) => ({ source: 'order.txt', text: `\uFEFF\r\n${text}` }),
  (text) => ({ source: 'order.eml', text: text.replaceAll('\r\n', '\n') }),
  (text) => ({ source: 'inbox', text: `\nFrom - Wed Nov 25 18:40:00 2026\n${text}\n` }),
  (text) => ({
    source: 'order.emlx',
    text: `${Buffer.byteLength(text)}\n${text}<?xml version="1.0"?><plist></plist>`,
  }),
];

const letter = (order: OrderDocument): string =>
  mailBody(
    {
      ...{ subject: 'Order', greeting: 'Dear Wren,', closing: 'Iris', foot: 'For the bench:' },
      lines: [`Name: ${order.buyer.name}`, `Note: ${order.buyer.note}`],
    },
    order,
  );

/** What came of a file. */
async function read(source: string, bytes: Uint8Array): Promise<{ found: OrderDocument[]; codes: string[] }> {
  const found: OrderDocument[] = [];
  const arrived = await takeIn([{ source, way: 'file', bytes }], {
    inbox: ({ document, at }) => {
      found.push(document);
      return Promise.resolve({ outcome: 'received', number: document.number, receivedAt: at });
    },
    pieceNow: () => Promise.resolve(null),
    at: '2026-11-25T19:00:00Z',
  });
  return { found, codes: arrived.map((one) => (one.code === 'refused' ? one.why.code : one.code)) };
}

const wrapping = fc
  .record({
    changes: fc.array(fc.constantFrom(...Object.keys(CHANGES)), { maxLength: 2 }),
    mark: fc.constantFrom(...MARKS),
    message: fc.constantFrom(...Object.keys(MESSAGES)),
  })
  // Nobody can tell a mark in the midst of a code from letters of its own, once its first line doesn't show it.
  .filter(({ changes, mark }) => mark === '' || !changes.includes(JOINED));
const byNumber = (orders: readonly OrderDocument[]): OrderDocument[] =>
  orders.toSorted((a, b) => (a.number < b.number ? -1 : 1));

it('every order of a mail is read exactly, however it was wrapped and forwarded', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(fc.tuple(anyOrder, wrapping), {
        ...{ minLength: 1, maxLength: 3, selector: ([order]: [OrderDocument, unknown]) => order.number },
      }),
      fc.array(fc.constantFrom(...FORWARDS), { maxLength: 3 }),
      fc.constantFrom(...FILES),
      async (orders, forwards, file) => {
        const messages = orders.map(([order, { changes, mark, message }]) => {
          const changed = changes.reduce((text, change) => CHANGES[change]!(text), letter(order));
          return MESSAGES[message]!(changed.replace(/^(?=.)/gm, mark));
        });
        const [first = (all: readonly string[]) => all.join(''), ...outer] =
          messages.length > 1 && forwards.length === 0 ? FORWARDS : forwards;
        const forwarded = outer.reduce((text, forward) => forward([text]), first(messages));
        const { source, text } = file(forwarded);
        const { found, codes } = await read(source, Buffer.from(text));
        expect(codes).toEqual(orders.map(() => 'received'));
        expect(byNumber(found)).toEqual(byNumber(orders.map(([order]) => order)));
      },
    ),
    { numRuns: 60 },
  );
});
