/** The headers of every answer: files, pages of the bench, pages that are not found, refusals. */
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { createServer, request, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readHeaders } from '../../../src/command/serve/fileHeaders.ts';
import { asHost, type Handler } from '../../../src/command/serve/host.ts';

const rules = readHeaders(readFileSync('public/_headers', 'utf8'));
const page = 'a page of some length '.repeat(200);

/** Knows two pages; for all others it answers as a static server does, with no header of its own. */
const handler: Handler = (incoming, response) => {
  if (incoming.url === '/bench/') {
    response.writeHead(200, { 'content-type': 'text/html', 'x-frame-options': 'DENY' });
  } else {
    response.writeHead(incoming.url === '/' ? 200 : 404, { 'content-type': 'text/html' });
  }
  response.end(page);
};
const server = createServer(asHost(handler, handler, () => rules));

beforeAll(async () => {
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
});
afterAll(() => server.close());

async function ask(path: string, method = 'GET'): Promise<IncomingMessage> {
  const { port } = server.address() as AddressInfo;
  const headers = { 'accept-encoding': 'gzip' };
  const outgoing = request({ host: '127.0.0.1', port, path, method, headers, agent: false });
  outgoing.end();
  const [incoming] = (await once(outgoing, 'response')) as [IncomingMessage];
  incoming.resume();
  return incoming;
}

describe.each([
  ['a file', '/', 'GET', 200],
  ['a page that is not found', '/nothing/here', 'GET', 404],
  ['a page of the bench', '/bench/', 'GET', 200],
  ['one of the bench that is not found', '/bench/nothing/', 'GET', 404],
  ['one of the desk that is not found', '/desk/nothing', 'GET', 404],
  ['another spelling of the bench', '//bench/', 'GET', 404],
  ['a path that can\u2019t be read', '/%zz', 'GET', 400],
  ['a method that no page knows', '/', 'DELETE', 405],
])('%s', (_, path, method, status) => {
  it('carries the headers of all answers', async () => {
    const { statusCode, headers } = await ask(path, method);
    expect(statusCode).toBe(status);
    for (const { path: covered, headers: all } of rules) {
      if (covered !== '/*') continue;
      for (const [name] of all) expect([name, headers[name]]).toEqual([name, expect.any(String)]);
    }
    expect(headers['x-frame-options']).toBe(path === '/bench/' ? 'DENY' : 'SAMEORIGIN');
  });
});

it('a guarded page, found or not, is neither compressed nor kept', async () => {
  for (const path of ['/bench/', '/bench/nothing/', '/desk/nothing']) {
    const { headers } = await ask(path);
    expect([path, headers['content-encoding'], headers['cache-control']]).toEqual([
      path,
      undefined,
      'no-store',
    ]);
  }
  expect((await ask('/')).headers['content-encoding']).toBe('gzip');
});

describe('by the tablets’ door', () => {
  it('nothing of the shop is answered but its letters, and no sender says by which door he came', async () => {
    const seen: string[] = [];
    const note: Handler = (incoming, response) => {
      seen.push(`${incoming.url} ${incoming.headers['x-claspwise-door']}`);
      response.end();
    };
    const doors = [
      asHost(note, note, () => rules, '/shop/', 'tablets'),
      asHost(note, note, () => rules, '/shop/'),
    ];
    for (const door of doors) {
      const listening = createServer(door).listen(0, '127.0.0.1');
      await once(listening, 'listening');
      const { port } = listening.address() as AddressInfo;
      for (const path of [
        '/shop/',
        '/shop/pieces/x/',
        '/shop/fonts/a.woff2',
        '/shop/bench/steps/',
        '/shop/desk/orders',
      ]) {
        const headers = { 'x-claspwise-door': 'forged' };
        const outgoing = request({ host: '127.0.0.1', port, path, headers, agent: false });
        outgoing.end();
        const [incoming] = (await once(outgoing, 'response')) as [IncomingMessage];
        incoming.resume();
      }
      listening.close();
    }
    expect(seen).toEqual([
      '/shop/bench/ tablets',
      '/shop/bench/ tablets',
      '/shop/fonts/a.woff2 tablets',
      '/shop/bench/steps/ tablets',
      '/shop/bench/ tablets',
      '/shop/ usual',
      '/shop/pieces/x/ usual',
      '/shop/fonts/a.woff2 usual',
      '/shop/bench/steps/ usual',
      '/shop/desk/orders usual',
    ]);
  });
});
