import type { IncomingMessage } from 'node:http';
import { describe, expect, it } from 'vitest';
import { admission } from '../../../src/command/serve/admit.ts';

const asked = (url: string, method = 'GET', host = '127.0.0.1:4321') =>
  admission({ url, method, headers: { host } } as IncomingMessage);

describe('a path', () => {
  it.each(['/bench', '/bench/', '/bench/orders/AB2/?q=//x', '/desk/orders'])('%s is guarded', (path) => {
    expect(asked(path)).toEqual({ admit: true, area: 'guarded' });
  });

  it.each(['/', '/pieces/weir-light/', '/benches/', '/pieces/%C3%A9/', '/find/?q=//bench/'])(
    '%s is a file',
    (path) => {
      expect(asked(path)).toEqual({ admit: true, area: 'files' });
    },
  );

  it.each([
    '//bench/',
    '///bench/orders/',
    '/%62ench/',
    '/%2562ench/../bench/',
    '/x/../bench/',
    '/x/%2e%2e/bench/',
    '/\\bench/',
    '/%5Cbench/',
    '/./desk/orders',
    '/bench%2Forders/',
    '/BENCH/',
  ])('%s is another spelling of a guarded page, and found nowhere', (path) => {
    expect(asked(path)).toEqual({ admit: false, status: 404 });
  });

  it.each(['/%zz', '/%', 'http://elsewhere.example/', '*'])('%s is none', (path) => {
    expect(asked(path)).toEqual({ admit: false, status: 400 });
  });
});

describe('a method', () => {
  it.each(['POST', 'PUT', 'DELETE', 'TRACE', 'OPTIONS', 'PATCH'])('%s has no place at a file', (method) => {
    expect(asked('/', method)).toEqual({ admit: false, status: 405, allow: 'GET, HEAD' });
  });

  it.each(['PUT', 'DELETE', 'TRACE', 'PATCH', 'CONNECT'])('%s has none at the bench', (method) => {
    expect(asked('/bench/', method)).toMatchObject({ admit: false, status: 405 });
  });

  it.each(['GET', 'HEAD', 'POST', 'OPTIONS'])('%s has', (method) => {
    expect(asked('/desk/orders', method)).toMatchObject({ admit: true });
  });
});

describe('a host', () => {
  it.each(['localhost', 'bench.example:443', '[::1]:4321', '127.0.0.1'])('%s can be one', (host) => {
    expect(asked('/', 'GET', host)).toMatchObject({ admit: true });
  });

  it.each(['', 'a b', 'user@x', 'x:port', 'x/y', '[::1', 'x:123456'])('“%s” can’t', (host) => {
    expect(asked('/', 'GET', host)).toEqual({ admit: false, status: 400 });
  });
});

describe('a shop in a folder of its host', () => {
  const inShop = (url: string) => admission({ url, method: 'GET', headers: {} } as IncomingMessage, '/shop/');

  it('is guarded there as at the root', () => {
    expect(inShop('/shop/bench/')).toEqual({ admit: true, area: 'guarded' });
    expect(inShop('/shop/desk/orders')).toEqual({ admit: true, area: 'guarded' });
    expect(inShop('/shop/pieces/weir-light/')).toEqual({ admit: true, area: 'files' });
    expect(inShop('/shop/')).toEqual({ admit: true, area: 'files' });
  });

  it.each([
    '/bench/',
    '/pieces/weir-light/',
    '/shopping/',
    '//shop/bench/',
    '/SHOP/bench/',
    '/%73hop/bench/',
  ])('%s is beside it, and found nowhere', (path) => {
    expect(inShop(path)).toEqual({ admit: false, status: 404 });
  });

  it.each(['/shop//bench/', '/shop/%62ench/', '/shop/x/../bench/', '/shop/BENCH/', '/shop/../bench/'])(
    '%s is another spelling of a guarded page',
    (path) => {
      expect(inShop(path)).toEqual({ admit: false, status: 404 });
    },
  );

  it.each(['/', '/shop', '/shop?q=1'])('%s leads to it', (path) => {
    expect(inShop(path)).toEqual({ admit: false, status: 308, location: '/shop/' });
  });
});
