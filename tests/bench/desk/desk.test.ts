import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { BookError } from '#bench/book/problem.ts';
import { findEntry } from '#bench/book/entry.ts';
import { answerOrder, type Desk } from '#bench/desk/desk.ts';
import { mutateDocument, seeded } from '../../order/mutate.ts';
import { catalogue, openShop, orderFor, post, type Shop } from '../shop.ts';

let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
});
afterEach(() => shop.close());

type Answer = { readonly status: number; readonly headers: Headers; readonly body: Record<string, unknown> };

async function ask(request: Request, desk: Desk = shop.desk): Promise<Answer> {
  const response = await answerOrder(desk, request, '192.0.2.1');
  const text = await response.text();
  return {
    status: response.status,
    headers: response.headers,
    body: text === '' ? {} : (JSON.parse(text) as Answer['body']),
  };
}

const send = (document: unknown, headers = {}) => ask(post(JSON.stringify(document), headers));

describe('an order', () => {
  it('is answered with a receipt once it is in the book', async () => {
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const { status, body } = await send(order);
    expect(status).toBe(201);
    expect(body).toEqual({
      number: order.number,
      receivedAt: '2026-11-25T19:00:00.000Z',
      checked: 'same',
      differences: [],
    });
    expect(findEntry(shop.book, order.number)?.document).toEqual(order);
  });

  it('sent twice is one order with one receipt', async () => {
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const [first, second] = [await send(order), await send(order)];
    expect(second.status).toBe(200);
    expect(second.body).toEqual(first.body);
  });

  it.each<[string, (order: ReturnType<typeof orderFor>) => unknown, string[]]>([
    ['a tampered price', (order) => ({ ...order, shown: { ...order.shown, priceMinor: 1 } }), ['price']],
    [
      'another length',
      (order) => ({ ...order, shown: { ...order.shown, lengthMm: order.shown.lengthMm + 5 } }),
      ['length'],
    ],
    [
      'a piece that changed since',
      (order) => ({ ...order, piece: { ...order.piece, revision: 'before' } }),
      ['revision'],
    ],
    [
      'a piece that is gone',
      (order) => ({ ...order, piece: { ...order.piece, id: 'gone' } }),
      ['no-such-piece'],
    ],
    [
      'a size in words that is another',
      (order) => ({ ...order, measure: { ...order.measure, text: '7 in' } }),
      ['written'],
    ],
    ['a date in the future', (order) => ({ ...order, placedAt: '2036-01-01T00:00:00Z' }), ['clock']],
    ['another currency', (order) => ({ ...order, shown: { ...order.shown, currency: 'USD' } }), ['currency']],
  ])('with %s is kept, and the difference told', async (_, change, differences) => {
    const { status, body } = await send(change(orderFor(catalogue, 'weir-light', 165.1)));
    expect(status).toBe(201);
    expect(body).toMatchObject({ checked: 'differs', differences });
  });

  it('beyond what the piece can be is kept and told', async () => {
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const { body } = await send({ ...order, measure: { of: 'wrist', text: '400 mm', mm: 400 } });
    expect(body.differences).toContain('refused');
    const large = {
      ...orderFor(catalogue, 'weir-light', 165.1),
      measure: { of: 'wrist', text: '240 mm', mm: 240 },
    };
    expect((await send(large)).body.differences).toContain('outside');
  });
});

describe('the desk refuses', () => {
  it.each<[string, Request | (() => Request), number, string]>([
    ['another site', post('{}', { origin: 'https://evil.example' }), 403, 'origin-not-allowed'],
    ['a page without an origin', post('{}', { origin: 'null' }), 403, 'origin-not-allowed'],
    ['a form', post('a=b', { 'content-type': 'application/x-www-form-urlencoded' }), 415, 'content-type'],
    ['plain text', post('{}', { 'content-type': 'text/plain' }), 415, 'content-type'],
    ['what is no JSON', post('{'), 400, 'not-json'],
    ['an empty body', post(''), 400, 'not-json'],
    // "Ø" in ISO 8859-1: decoded by guess it would be a name with a hole in it.
    ['bytes of another encoding', post(Buffer.from('{"name":"\xd8"}', 'latin1')), 400, 'not-utf8'],
    ['what is no order', post('{}'), 422, 'not-an-order'],
    ['a list', post('[]'), 422, 'not-an-order'],
    ['a megabyte', post(JSON.stringify('x'.repeat(1_000_000))), 413, 'too-large'],
    ['a newer version', post('{"format":"claspwise-order","version":5}'), 422, 'newer-version'],
    ['no version', post('{"format":"claspwise-order"}'), 422, 'wrong-field'],
    ['a version that is no number', post('{"format":"claspwise-order","version":NaN}'), 400, 'not-json'],
    [
      'a version that there never was',
      post('{"format":"claspwise-order","version":0}'),
      422,
      'unknown-version',
    ],
    ['a missing field', post('{"format":"claspwise-order","version":1}'), 422, 'wrong-field'],
    [
      'GET',
      new Request('http://127.0.0.1:4321/desk/orders', { headers: { host: '127.0.0.1:4321' } }),
      405,
      'method-not-allowed',
    ],
  ])('%s', async (_, request, status, code) => {
    const answer = await ask(request as Request);
    expect(answer.status).toBe(status);
    expect(answer.headers.get('content-type')).toBe('application/problem+json');
    // RFC 9457, 3.1: type, title, status and detail.
    expect(answer.body).toMatchObject({ code, status, type: `/schema/desk-openapi.json#${code}` });
    expect(String(answer.body.detail).length).toBeGreaterThan(10);
  });

  it('another order with the same number', async () => {
    const order = orderFor(catalogue, 'weir-light', 165.1);
    await send(order);
    const { status, body } = await send({ ...order, quantity: 2 });
    expect([status, body.code]).toEqual([409, 'number-taken']);
  });

  it('a robot that fills in what people don’t see, and says how a person gets through', async () => {
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const { status, body } = await send({ ...order, website: 'https://spam.example' });
    expect([status, body.code]).toEqual([422, 'robot']);
    expect(String(body.detail)).toContain('e-mail');
    expect((await send({ ...order, website: '' })).status).toBe(201);
  });

  it('more than its share from one address, and takes them again later', async () => {
    let nowMs = 0;
    const own = openShop(catalogue, 3);
    const desk = { ...own.desk, nowMs: () => nowMs };
    const statuses = [];
    for (let at = 0; at < 5; at += 1) {
      const order = orderFor(catalogue, 'weir-light', 165.1);
      statuses.push((await ask(post(JSON.stringify(order)), desk)).status);
    }
    expect(statuses).toEqual([201, 201, 201, 429, 429]);
    const refused = await ask(post('{}'), desk);
    expect(refused.headers.get('retry-after')).toBe('20');
    nowMs = 20_000;
    const order = orderFor(catalogue, 'weir-light', 165.1);
    expect((await ask(post(JSON.stringify(order)), desk)).status).toBe(201);
    own.close();
  });

  it('in German where the order is', async () => {
    const order = { ...orderFor(catalogue, 'weir-light', 165.1), lang: 'de' };
    await send(order);
    const { headers, body } = await send({ ...order, quantity: 2 });
    expect(headers.get('content-language')).toBe('de');
    expect(body.title).toBe('Die Bestellung wurde nicht angenommen');
  });
});

describe('a book that can’t be written', () => {
  it('locked: the buyer is told, and the order goes in afterwards', async () => {
    const other = new DatabaseSync(shop.book.file);
    other.exec('BEGIN IMMEDIATE');
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const answer = await send(order);
    expect([answer.status, answer.body.code]).toEqual([503, 'book-locked']);
    expect(answer.headers.get('retry-after')).toBe('5');
    expect(String(answer.body.detail)).toContain('kept on your device');
    other.exec('ROLLBACK');
    other.close();
    expect((await send(order)).status).toBe(201);
  });

  it('full: the buyer is told, nothing is half in, and it goes in once there is room', async () => {
    const pages = Number(shop.book.db.prepare('PRAGMA page_count').get()?.page_count);
    shop.book.db.exec(`PRAGMA max_page_count = ${pages}`);
    const order = orderFor(catalogue, 'weir-light', 165.1, { note: 'x'.repeat(900) });
    let answer = await send(order);
    for (let tries = 0; answer.status === 201 && tries < 50; tries += 1) {
      answer = await send(orderFor(catalogue, 'weir-light', 165.1, { note: 'x'.repeat(900) }));
    }
    expect([answer.status, answer.body.code]).toEqual([503, 'book-full']);
    shop.book.db.exec('PRAGMA max_page_count = 100000');
    const after = await send(orderFor(catalogue, 'weir-light', 165.1));
    expect(after.status).toBe(201);
    expect(shop.book.db.prepare('PRAGMA integrity_check').get()?.integrity_check).toBe('ok');
  });

  it('unreachable: the buyer is told', async () => {
    const closed = (): never => {
      throw new BookError('unreachable');
    };
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const answer = await ask(post(JSON.stringify(order)), { ...shop.desk, inbox: closed });
    expect([answer.status, answer.body.code]).toEqual([503, 'book-closed']);
  });
});

describe('other pages', () => {
  it('of a named shop may post, and only they are told so', async () => {
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const { status, headers } = await send(order, { origin: 'https://shop.example' });
    expect(status).toBe(201);
    expect(headers.get('access-control-allow-origin')).toBe('https://shop.example');
    const asked = (origin: string) =>
      ask(
        new Request('http://127.0.0.1:4321/desk/orders', {
          method: 'OPTIONS',
          headers: { host: '127.0.0.1:4321', origin },
        }),
      );
    expect((await asked('https://shop.example')).status).toBe(204);
    const stranger = await asked('https://evil.example');
    expect(stranger.status).toBe(403);
    expect(stranger.headers.has('access-control-allow-origin')).toBe(false);
  });

  it('a program that is no page sends no origin and is heard', async () => {
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const request = new Request('http://127.0.0.1:4321/desk/orders', {
      method: 'POST',
      headers: { host: '127.0.0.1:4321', 'content-type': 'application/json; charset=utf-8' },
      body: JSON.stringify(order),
    });
    expect((await ask(request)).status).toBe(201);
  });
});

/** 1,000 as a rule; 100,000 where CLASPWISE_THOROUGH is set. */
const MUTANTS = process.env.CLASPWISE_THOROUGH ? 100_000 : 1_000;

it(
  `answers ${MUTANTS} mutated documents, each with a receipt or a named refusal`,
  { timeout: 900_000 },
  async () => {
    const random = seeded(41);
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const counts: Record<string, number> = {};
    for (let mutant = 0; mutant < MUTANTS; mutant += 1) {
      const text = JSON.stringify(mutateDocument(order, random)) ?? '';
      const { status, body } = await ask(post(text));
      const name = status < 300 ? 'taken' : String(body.code);
      counts[name] = (counts[name] ?? 0) + 1;
      expect(status < 300 ? 'taken' : body.code).toMatch(/^(taken|[a-z]+(-[a-z]+)*)$/);
      expect(status).not.toBe(500);
    }
    expect(counts['wrong-field']).toBeGreaterThan(MUTANTS / 3);
  },
);
