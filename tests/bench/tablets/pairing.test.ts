/** Pairing a device, what it may do then, and sending it away. */
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUp, restore } from '#bench/book/backup.ts';
import {
  beginPairing,
  deviceOf,
  isPairing,
  noteSeen,
  pairDevice,
  pairedDevices,
  sendAway,
  setTablets,
} from '#bench/book/devices.ts';
import { filesOf, openBook } from '#bench/book/open.ts';
import { pairTablet, readDeviceName } from '#bench/access/tabletPairing.ts';
import { ruleTablet, type TabletHouse } from '#bench/access/tabletRule.ts';
import { isHere, visitorOf, type Visitor } from '#bench/access/visitor.ts';
import { DOOR_HEADER } from '#bench/tablets/door.ts';
import { tabletsOn } from '#bench/tablets/listener.ts';
import { throttle } from '#bench/http/throttle.ts';
import type { Bench } from '#bench/context/bench.ts';
import { catalogue, NOW_MS, openShop, type Shop } from '../shop.ts';

let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
});
afterEach(() => shop.close());

const MINUTE_MS = 60_000;

describe('a code', () => {
  it('pairs one device, once', () => {
    const token = beginPairing(shop.book, NOW_MS);
    expect(isPairing(shop.book, token, NOW_MS)).toBe(true);
    const own = pairDevice(shop.book, token, 'Kitchen tablet', NOW_MS);
    expect(deviceOf(shop.book, own!)).toMatchObject({ name: 'Kitchen tablet' });
    expect(pairDevice(shop.book, token, 'Another', NOW_MS)).toBeNull();
    expect(isPairing(shop.book, token, NOW_MS)).toBe(false);
    expect(pairedDevices(shop.book)).toHaveLength(1);
  });

  it('is over after ten minutes, when another is shown, when it is switched off, and under a clock set back', () => {
    const first = beginPairing(shop.book, NOW_MS);
    expect(pairDevice(shop.book, first, 'Late', NOW_MS + 10 * MINUTE_MS)).toBeNull();
    expect(pairDevice(shop.book, first, 'Early', NOW_MS - MINUTE_MS)).toBeNull();
    const second = beginPairing(shop.book, NOW_MS);
    expect(isPairing(shop.book, first, NOW_MS)).toBe(false);
    setTablets(shop.book, false);
    expect(isPairing(shop.book, second, NOW_MS)).toBe(false);
  });

  it('and a device’s own token are 256 bits, and lie nowhere in the book’s files', () => {
    const token = beginPairing(shop.book, NOW_MS);
    const own = pairDevice(shop.book, token, 'Kitchen tablet', NOW_MS)!;
    for (const secret of [token, own]) {
      expect(Buffer.from(secret, 'base64url')).toHaveLength(32);
      for (const file of filesOf(shop.book.file).slice(0, 2))
        expect(readFileSync(file).includes(secret)).toBe(false);
    }
  });

  it('is tried five times a minute from one address, right or wrong', () => {
    const bench = {
      book: () => shop.book,
      nowMs: () => NOW_MS,
      pairThrottle: throttle(5),
    } as unknown as Bench;
    for (let at = 0; at < 5; at += 1)
      expect(pairTablet(bench, 'guess', 'x', '192.168.1.9')).toEqual({ code: 'pairing-over' });
    const token = beginPairing(shop.book, NOW_MS);
    expect(pairTablet(bench, token, 'x', '192.168.1.9')).toMatchObject({ code: 'too-many-tries' });
    const paired = pairTablet(bench, token, ' Kitchen  tablet ', '192.168.1.10') as Response;
    expect(paired.status).toBe(303);
    const cookie = paired.headers.get('set-cookie') ?? '';
    for (const part of ['__Host-device=', 'Path=/', 'Secure', 'HttpOnly', 'SameSite=Strict'])
      expect(cookie).toContain(part);
    expect(pairedDevices(shop.book)).toMatchObject([{ name: 'Kitchen tablet' }]);
  });

  it.each(['', '   ', 'x'.repeat(41), 'two\u0000parts', 'turned \u202Eround'])(
    'with the name %j is refused',
    (name) => {
      expect(readDeviceName(name)).toBeNull();
    },
  );
});

describe('a paired device', () => {
  const paired = (): string => pairDevice(shop.book, beginPairing(shop.book, NOW_MS), 'Tablet', NOW_MS)!;

  it('is unknown from the moment that it is sent away', () => {
    const [one, two] = [paired(), paired()];
    sendAway(shop.book, deviceOf(shop.book, one)!.id);
    expect(deviceOf(shop.book, one)).toBeNull();
    expect(deviceOf(shop.book, two)).not.toBeNull();
  });

  it('is seen to the minute, also under a clock set back', () => {
    const own = paired();
    const seen = (): string => deviceOf(shop.book, own)!.seenAt;
    noteSeen(shop.book, deviceOf(shop.book, own)!, NOW_MS + 30_000);
    expect(seen()).toBe(new Date(NOW_MS).toISOString());
    noteSeen(shop.book, deviceOf(shop.book, own)!, NOW_MS + 5 * MINUTE_MS);
    expect(seen()).toBe(new Date(NOW_MS + 5 * MINUTE_MS).toISOString());
    noteSeen(shop.book, deviceOf(shop.book, own)!, NOW_MS - 60 * MINUTE_MS);
    expect(seen()).toBe(new Date(NOW_MS - 60 * MINUTE_MS).toISOString());
  });

  it('stays with the machine: no backup carries it, and none that is put back takes it away', () => {
    const own = paired();
    setTablets(shop.book, true);
    const copy = `${shop.book.file}.copy`;
    backUp(shop.book, copy);
    const other = openBook(copy);
    expect(pairedDevices(other)).toEqual([]);
    other.db.close();
    expect(tabletsOn(copy)).toBe(false);
    restore(shop.book, copy);
    expect(deviceOf(shop.book, own)).not.toBeNull();
    expect(tabletsOn(shop.book.file)).toBe(true);
  });
});

it('the switch is off by default, and off where there is no book or none that can be read', () => {
  expect(tabletsOn(shop.book.file)).toBe(false);
  expect(tabletsOn(`${shop.book.file}.nowhere`)).toBe(false);
  expect(tabletsOn(new URL(import.meta.url).pathname)).toBe(false);
  setTablets(shop.book, true);
  expect(tabletsOn(shop.book.file)).toBe(true);
});

const tablet: Visitor = {
  method: 'GET',
  path: '/bench/steps/',
  host: '192.168.1.5:4343',
  address: '192.168.1.20',
  forwarded: false,
  secure: true,
  origin: null,
  fetchSite: null,
  fetchMode: null,
  token: null,
  deviceToken: 'paired',
  door: 'tablets',
};
const house: TabletHouse = {
  names: ['192.168.1.5', '[fd00::2]', 'bench.local'],
  knows: (one) => one === 'paired',
};
const verdict = (fields: Partial<Visitor>): string => {
  const ruling = ruleTablet({ ...tablet, ...fields }, house);
  return ruling.admit ? 'in' : ruling.refusal;
};
const own = { origin: 'https://192.168.1.5:4343' };

describe('by the tablets’ door', () => {
  it.each([
    '/bench/steps/',
    '/bench/steps/batch/',
    '/bench/orders/3N6-H37-7JR/steps/',
    '/bench/orders/3N6-H37-7JR/card/',
    '/bench/pieces/weir-light/steps/',
    '/bench/pictures/weir-light.svg',
    '/bench/assets/steps.js',
  ])('a paired device may look at %s, and post nothing there', (path) => {
    expect(verdict({ path })).toBe('in');
    expect(verdict({ path, method: 'POST', ...own })).toBe('not-on-tablet');
    expect(verdict({ path, method: 'DELETE', ...own })).toBe('not-on-tablet');
  });

  it('it may keep its place, from its own page only', () => {
    const keep = { path: '/bench/steps/keep/', method: 'POST' };
    expect(verdict({ ...keep, ...own })).toBe('in');
    expect(verdict({ ...keep, origin: 'https://evil.example' })).toBe('cross-site');
    expect(verdict({ ...keep, origin: 'http://192.168.1.5:4343' })).toBe('cross-site');
    expect(verdict({ ...keep, origin: 'https://192.168.1.5:4321' })).toBe('cross-site');
    expect(verdict(keep)).toBe('cross-site');
    expect(verdict({ fetchSite: 'cross-site', fetchMode: 'no-cors' })).toBe('cross-site');
  });

  it.each([
    '/bench/',
    '/bench/orders/3N6-H37-7JR/',
    '/bench/orders/3N6-H37-7JR/change/',
    '/bench/orders/3N6-H37-7JR/erase/',
    '/bench/orders/3N6-H37-7JR/order.json',
    '/bench/orders/3N6-H37-7JR/steps/../',
    '/bench/orders/3N6-H37-7JR/label/',
    '/bench/orders/new/',
    '/bench/export/backup.sqlite',
    '/bench/pieces/weir-light/',
    '/bench/pieces/weir-light/words/',
    '/bench/buyers/',
    '/bench/keep/',
    '/bench/access/passphrase/',
    '/bench/enter/',
    '/bench/tablets/',
    '/bench/assets/board.js',
    '/bench/steps/anything/',
    '/desk/orders',
    '/',
  ])('it may not even look at %s', (path) => {
    expect(verdict({ path })).toBe('not-on-tablet');
    expect(verdict({ path, method: 'POST', ...own })).toBe('not-on-tablet');
  });

  it.each<[string, Partial<Visitor>, string]>([
    ['without a token', { deviceToken: null }, 'unpaired'],
    ['with a guessed token', { deviceToken: 'guess' }, 'unpaired'],
    ['with the bench’s own cookie alone', { deviceToken: null, token: 'known' }, 'unpaired'],
    ['to be paired', { deviceToken: null, path: '/bench/tablets/pair/' }, 'in'],
    ['for the page’s style', { deviceToken: null, path: '/bench/assets/bench.css' }, 'in'],
    ['for what only starts like that page', { deviceToken: null, path: '/bench/tablets/pair/x' }, 'unpaired'],
    ['under a rebound name', { host: 'rebound.example:4343' }, 'wrong-host'],
    ['under this machine’s loopback name', { host: '127.0.0.1:4343' }, 'wrong-host'],
    ['under no name', { host: '' }, 'wrong-host'],
    ['through a proxy', { forwarded: true }, 'needs-https'],
    ['without TLS', { secure: false }, 'needs-https'],
    ['by IPv6', { host: '[fd00::2]:4343' }, 'in'],
  ])('%s', (_, fields, expected) => {
    expect(verdict(fields)).toBe(expected);
  });

  it('nobody is here, whatever name and address are given', () => {
    expect(isHere({ ...tablet, host: '127.0.0.1:4321', address: '127.0.0.1' })).toBe(false);
    const asked = (headers: Record<string, string>): Visitor =>
      visitorOf(new Request('http://127.0.0.1/bench/', { headers }), '127.0.0.1');
    expect(asked({ [DOOR_HEADER]: 'tablets', cookie: 'a=1; __Host-device=abc' })).toMatchObject({
      door: 'tablets',
      deviceToken: 'abc',
      token: null,
    });
    expect(asked({}).door).toBe('usual');
  });
});
