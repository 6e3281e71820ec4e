import { describe, expect, it } from 'vitest';
import { rule, type House } from '#bench/access/guard.ts';
import { guardHeaders } from '#bench/access/headers.ts';
import { backupProblem, bookProblem, bookTroubleResponse } from '#bench/access/refusal.ts';
import { behindProxy, throttle } from '#bench/http/throttle.ts';
import { isHere, ownOrigin, senderOf, visitorOf, type Visitor } from '#bench/access/visitor.ts';

const here: Visitor = {
  method: 'GET',
  path: '/bench/',
  host: '127.0.0.1:4321',
  address: '127.0.0.1',
  forwarded: false,
  secure: false,
  origin: null,
  fetchSite: null,
  fetchMode: null,
  token: null,
  deviceToken: null,
  door: 'usual',
};
const away: Visitor = { ...here, host: 'bench.example', address: '192.0.2.7', secure: true };
const house: House = {
  hosts: ['bench.example'],
  hasPassphrase: () => true,
  knows: (token) => token === 'known',
};
const verdict = (visitor: Visitor, at: House = house): string => {
  const ruling = rule(visitor, at);
  return ruling.admit ? 'in' : ruling.refusal;
};

describe('at this machine', () => {
  it.each(['127.0.0.1:4321', 'localhost:4321', '[::1]:4321', 'localhost'])('%s is let in', (host) => {
    expect(verdict({ ...here, host })).toBe('in');
  });

  it.each([
    ['a rebound name', { host: 'rebound.example:4321' }],
    ['a name that only starts alike', { host: 'localhost.example' }],
    ['a name that only starts like the address', { host: '127.0.0.1.example' }],
    ['credentials before another name', { host: '127.0.0.1@evil.example' }],
    ['no name at all', { host: '' }],
  ])('%s is not', (_, fields) => {
    expect(verdict({ ...here, ...fields })).toBe('wrong-host');
    expect(verdict({ ...here, ...fields, path: '/desk/orders' })).toBe('wrong-host');
  });

  it('whoever comes through a proxy or from another address is not here, whatever name is given', () => {
    expect(isHere(here)).toBe(true);
    expect(isHere({ ...here, forwarded: true })).toBe(false);
    expect(isHere({ ...here, address: '192.0.2.7' })).toBe(false);
    expect(isHere({ ...here, address: '::ffff:127.0.0.1' })).toBe(true);
    expect(verdict({ ...here, address: '192.0.2.7' })).toBe('needs-https');
  });
});

describe('a change', () => {
  const change = { ...here, method: 'POST' };
  it.each<[string, Partial<Visitor>, string]>([
    ['from the bench’s own page', { origin: 'http://127.0.0.1:4321' }, 'in'],
    ['from another site', { origin: 'https://evil.example' }, 'cross-site'],
    ['from another port', { origin: 'http://127.0.0.1:9999' }, 'cross-site'],
    ['from another scheme', { origin: 'https://127.0.0.1:4321' }, 'cross-site'],
    ['from a sandboxed frame', { origin: 'null' }, 'cross-site'],
    ['without an origin', {}, 'cross-site'],
    ['without an origin, but same-origin by Fetch Metadata', { fetchSite: 'same-origin' }, 'in'],
    [
      'with a forged mark and another origin',
      { fetchSite: 'same-origin', origin: 'https://evil.example' },
      'cross-site',
    ],
  ])('%s', (_, fields, expected) => {
    expect(verdict({ ...change, ...fields })).toBe(expected);
  });

  it('nor may another site embed a page, only link to it', () => {
    expect(verdict({ ...here, fetchSite: 'cross-site', fetchMode: 'no-cors' })).toBe('cross-site');
    expect(verdict({ ...here, fetchSite: 'cross-site', fetchMode: 'navigate' })).toBe('in');
  });
});

describe('from elsewhere', () => {
  it.each<[string, Partial<Visitor>, Partial<House>, string]>([
    ['unknown', {}, {}, 'sign-in'],
    ['with a wrong token', { token: 'guessed' }, {}, 'sign-in'],
    ['with the visit’s token', { token: 'known' }, {}, 'in'],
    ['at the door', { path: '/bench/enter/' }, {}, 'in'],
    ['for the door’s style', { path: '/bench/assets/bench.css' }, {}, 'in'],
    ['for a path that only starts like the door', { path: '/bench/enter/../orders' }, {}, 'sign-in'],
    ['without TLS', { secure: false }, {}, 'needs-https'],
    ['where no passphrase is set', {}, { hasPassphrase: () => false }, 'no-passphrase'],
    ['under a name not in the settings', {}, { hosts: [] }, 'wrong-host'],
    [
      'a buyer at the desk',
      { path: '/desk/orders', method: 'POST', origin: 'https://bench.example' },
      {},
      'in',
    ],
  ])('%s', (_, fields, at, expected) => {
    expect(verdict({ ...away, ...fields }, { ...house, ...at })).toBe(expected);
  });
});

describe('a request', () => {
  it('is read for what decides', () => {
    const request = new Request('http://bench.example/bench/?a', {
      headers: {
        host: 'Bench.Example',
        'x-forwarded-proto': 'https',
        cookie: 'other=1; __Host-bench=abc; x=2',
        'sec-fetch-site': 'none',
      },
    });
    expect(visitorOf(request, '127.0.0.1', ['127.0.0.1'])).toMatchObject({
      host: 'bench.example',
      path: '/bench/',
      forwarded: true,
      secure: true,
      token: 'abc',
      fetchSite: 'none',
    });
  });
});

describe('what a proxy says', () => {
  const passed = (headers: Record<string, string>) => new Request('http://x/', { headers });
  const from = passed({ 'x-forwarded-for': '203.0.113.9, 192.0.2.7' });
  const tls = passed({ 'x-forwarded-proto': 'https' });
  const PROXIES = ['127.0.0.1'];

  it('of a sender is believed from one of the settings, its last word, and from nobody else', () => {
    expect(senderOf(from, '127.0.0.1', PROXIES)).toBe('192.0.2.7');
    expect(senderOf(from, '::ffff:127.0.0.1', PROXIES)).toBe('192.0.2.7');
    expect(senderOf(from, '127.0.0.1', [])).toBe('127.0.0.1');
    expect(senderOf(from, '198.51.100.1', PROXIES)).toBe('198.51.100.1');
    expect(senderOf(passed({}), '127.0.0.1', PROXIES)).toBe('127.0.0.1');
    // What is no address would make a limit of its own for each text.
    expect(senderOf(passed({ 'x-forwarded-for': 'anyone' }), '127.0.0.1', PROXIES)).toBe('127.0.0.1');
  });

  it('of TLS likewise: a header on plain http makes nothing secure', () => {
    expect(visitorOf(tls, '127.0.0.1', PROXIES).secure).toBe(true);
    expect(visitorOf(tls, '127.0.0.1', []).secure).toBe(false);
    expect(visitorOf(tls, '192.0.2.7', PROXIES).secure).toBe(false);
    expect(visitorOf(new Request('https://x/'), '192.0.2.7').secure).toBe(true);
  });

  it('can’t lift the limit of all whom it hands on', () => {
    const limit = behindProxy(throttle(2), throttle(3), '127.0.0.1');
    const taken = ['a', 'b', 'c', 'd'].map((claimed) => limit.take(claimed, 0));
    expect(taken.map((seconds) => seconds > 0)).toEqual([false, false, false, true]);
    // Who comes by itself has its own limit only.
    const alone = behindProxy(throttle(2), throttle(1), '192.0.2.7');
    expect([0, 0, 0].map(() => alone.take('192.0.2.7', 0) > 0)).toEqual([false, false, true]);
  });
});

describe('an origin', () => {
  it.each([
    ['http://127.0.0.1:4321', false, '127.0.0.1:4321'],
    ['https://bench.example', true, 'bench.example'],
    // A default port isn't written in an Origin header (Fetch standard; RFC 6454, 6.1).
    ['https://bench.example', true, 'bench.example:443'],
    ['', false, 'a b'],
  ])('%s: secure %s, host %s', (origin, secure, host) => {
    expect(ownOrigin({ secure, host })).toBe(origin);
  });
});

describe('the headers', () => {
  it('allow nothing inline, no frame, no cache', () => {
    const headers = new Headers();
    guardHeaders(headers, '/bench/', true);
    const policy = headers.get('content-security-policy') ?? '';
    expect(policy).not.toContain('unsafe');
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(headers.get('cache-control')).toBe('no-store');
    expect(headers.get('x-content-type-options')).toBe('nosniff');
  });
});

describe('the type of an answer', () => {
  it.each([
    ['text/html', 'text/html; charset=utf-8'],
    ['text/html; charset=utf-8', 'text/html; charset=utf-8'],
    ['application/json', 'application/json'],
    [null, null],
  ])('%s goes out as %s', (type, sent) => {
    const headers = new Headers(type === null ? {} : { 'content-type': type });
    guardHeaders(headers, '/bench/', true);
    expect(headers.get('content-type')).toBe(sent);
  });
});

describe('a throttle', () => {
  it('forgets nothing by a clock that goes back', () => {
    const tries = throttle(2);
    expect([tries.take('a', 1000), tries.take('a', 1000)]).toEqual([0, 0]);
    expect(tries.take('a', 0)).toBe(30);
    expect(tries.take('b', 0)).toBe(0);
    expect(tries.take('a', 60_000)).toBe(0);
  });

  it('remembers only so many addresses', () => {
    const tries = throttle(1);
    for (let at = 0; at < 20_000; at += 1) tries.take(`address ${at}`, 0);
    expect(tries.take('address 19999', 0)).toBeGreaterThan(0);
    expect(tries.take('address 0', 0)).toBe(0);
  });
});

describe('a book that can’t be used', () => {
  const page = async (problem: Parameters<typeof bookTroubleResponse>[0], path: string) => {
    const response = bookTroubleResponse(problem, new Request(`http://127.0.0.1:4321${path}`));
    return { status: response.status, text: await response.text() };
  };

  it.each(['broken', 'gone', 'not-a-book'] as const)(
    '%s: every page leads to where it is put right',
    async (problem) => {
      const { status, text } = await page(problem, '/bench/week/');
      expect(status).toBe(503);
      expect(text).toContain('href="/bench/keep/"');
    },
  );

  it('an order that can’t be read: its page gives what is left of it', async () => {
    const { status, text } = await page('order-damaged', '/bench/orders/TX2-FYF-HTW/card/');
    expect(status).toBe(503);
    expect(text).toContain('href="/bench/orders/TX2-FYF-HTW/order.json"');
    expect((await page('order-damaged', '/bench/week/')).text).not.toContain('order.json');
  });

  it('is told apart from a backup that can’t be', () => {
    expect(bookProblem('broken').code).toBe('book-broken');
    expect(backupProblem('broken').code).toBe('backup-broken');
    expect(backupProblem('not-a-book').code).toBe('no-backup');
    expect(backupProblem('full').code).toBe('book-full');
  });

  it('at the desk: the buyer is told that her order is not lost', async () => {
    const response = bookTroubleResponse('gone', new Request('http://127.0.0.1:4321/desk/orders'));
    expect(await response.json()).toMatchObject({ code: 'book-closed', status: 503 });
  });
});
