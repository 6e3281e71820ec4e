/** A release of another program takes over the running shop's socket, with real processes and real connections. */
import { once } from 'node:events';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { Agent, get } from 'node:http';
import { get as getSecurely } from 'node:https';
import { connect, createServer, type AddressInfo, type Socket } from 'node:net';
import { join } from 'node:path';
import type { TLSSocket } from 'node:tls';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { currentRelease, pointTo } from '#catalogue/released/place.ts';
import { takeOverAll } from '#release/files.ts';
import { ownPlace, type Place } from '#tests/support/publishing.ts';
import { startShop, type RunningShop } from '#tests/support/shop.ts';

vi.setConfig({ testTimeout: 120_000 });

let place: Place;
let shop: RunningShop;
/** Folder of the release that was built. */
let built: string;
beforeEach(async () => {
  place = ownPlace();
  built = currentRelease(place.releases) ?? '';
  shop = await startShop(place.env);
});
afterEach(async () => {
  await shop.stop();
  place.remove();
});

/** The built release once more, as another program would make it: its front page says which it is. */
function otherProgram(nth: number): string {
  const id = `29990101-00000${nth}-000`;
  const folder = join(place.releases, id);
  takeOverAll(built, folder);
  const replace = (file: string, text: string): void => {
    rmSync(join(folder, file));
    writeFileSync(join(folder, file), text);
  };
  const record = JSON.parse(readFileSync(join(built, 'release.json'), 'utf8')) as object;
  replace('release.json', JSON.stringify({ ...record, id, code: `program ${nth}` }));
  replace('client/index.html', `<p>program ${nth}</p>`);
  return id;
}

const front = async (): Promise<string> => (await fetch(`${shop.base}/`)).text();
const showsProgram = (nth: number): Promise<void> =>
  vi
    .waitUntil(async () => (await front()).includes(`program ${nth}`), { timeout: 60_000, interval: 50 })
    .then(() => {});

/** A request that is sent in two halves, the second when told to. */
async function halfSent(): Promise<{ finish(): Promise<string> }> {
  const { hostname, port } = new URL(shop.base);
  const socket: Socket = connect(Number(port), hostname);
  await new Promise((resolve) => socket.once('connect', resolve));
  let answer = '';
  socket.on('data', (chunk: Buffer) => (answer += chunk.toString()));
  const ended = new Promise((resolve, reject) => {
    socket.once('end', resolve);
    socket.once('error', reject);
  });
  const body = '{"no":"order"}';
  const head = [`POST /desk/orders HTTP/1.1`, `Host: ${hostname}:${port}`, 'Connection: close'];
  head.push('Content-Type: application/json', `Content-Length: ${body.length}`, '', body.slice(0, 5));
  socket.write(head.join('\r\n'));
  return {
    async finish() {
      socket.write(body.slice(5));
      await ended;
      return answer;
    },
  };
}

/** A visitor's browser: asks again and again by one connection, as long as the shop keeps it open. */
function keptOpen(): { readonly answers: string[]; stop(): Promise<void> } {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const answers: string[] = [];
  let going = true;
  const ask = (): Promise<void> =>
    new Promise((resolve, reject) => {
      get(`${shop.base}/`, { agent }, (response) => {
        let text = '';
        response.on('data', (chunk: Buffer) => (text += chunk.toString()));
        response.once('end', () => {
          answers.push(`${response.statusCode} ${text}`);
          resolve();
        });
      }).once('error', reject);
    });
  const loop = (async () => {
    while (going) await ask();
  })();
  return {
    answers,
    async stop() {
      going = false;
      await loop;
      agent.destroy();
    },
  };
}

/** Seconds that the shop lets a connection stand open without a request, as it says itself. */
const idleSeconds = async (): Promise<number> =>
  Number(/timeout=(\d+)/.exec((await fetch(`${shop.base}/`)).headers.get('keep-alive') ?? '')?.[1]);

/** A connection that one page came by, and nothing is asked by any more. */
async function leftIdle(): Promise<Socket> {
  const { hostname, port } = new URL(shop.base);
  const socket: Socket = connect(Number(port), hostname);
  socket.write(`GET / HTTP/1.1\r\nHost: ${hostname}:${port}\r\n\r\n`);
  await once(socket, 'data');
  return socket.resume();
}

test('nobody is refused, what had begun is answered, and connections that were kept open see the new program', async () => {
  const visitors = [keptOpen(), keptOpen()];
  const begun = await halfSent();
  const idle = await leftIdle();
  // Longer than any work of the bench holds the process up, or a request that came meanwhile would be cut off.
  expect(await idleSeconds()).toBeGreaterThanOrEqual(60);
  pointTo(otherProgram(1), place.releases);
  await showsProgram(1);
  // Answered by the one that had begun it: a refusal by name, since it is no order.
  expect(await begun.finish()).toMatch(/^HTTP\/1\.1 4\d\d [\s\S]*"code"/);
  await vi.waitUntil(() => visitors.every(({ answers }) => answers.at(-1)?.includes('program 1')), {
    timeout: 10_000,
  });
  await Promise.all(visitors.map((visitor) => visitor.stop()));
  const all = visitors.flatMap(({ answers }) => answers);
  expect(all.filter((answer) => !answer.startsWith('200 '))).toEqual([]);
  // Somebody who reads on comes back to the new program, not to this one.
  await vi.waitUntil(() => idle.closed, { timeout: 40_000 });
  // Bench and order book go on in the new process.
  expect((await fetch(`${shop.base}/bench/`)).status).toBe(200);
});

test('again and again, and the process that was started ends all', async () => {
  pointTo(otherProgram(1), place.releases);
  await showsProgram(1);
  pointTo(otherProgram(2), place.releases);
  await showsProgram(2);
  await shop.stop();
  await vi.waitUntil(
    () =>
      fetch(shop.base).then(
        () => false,
        () => true,
      ),
    { timeout: 10_000 },
  );
});

test('a program that doesn’t start takes nothing over, and the shop stays open', async () => {
  const before = await front();
  const id = otherProgram(1);
  const entry = join(place.releases, id, 'server/entry.mjs');
  rmSync(entry);
  writeFileSync(entry, 'throw new Error("broken");');
  pointTo(id, place.releases);
  for (let asked = 0; asked < 20; asked += 1) expect(await front()).toBe(before);
  await new Promise((resolve) => setTimeout(resolve, 3000));
  expect(await front()).toBe(before);
  expect((await fetch(`${shop.base}/bench/`)).status).toBe(200);
  // And one that does start afterwards is served.
  pointTo(otherProgram(2), place.releases);
  await showsProgram(2);
});

test('killed without a word, it leaves nobody behind at the port', async () => {
  pointTo(otherProgram(1), place.releases);
  await showsProgram(1);
  shop.child.kill('SIGKILL');
  await vi.waitUntil(
    () =>
      fetch(shop.base).then(
        () => false,
        () => true,
      ),
    { timeout: 10_000 },
  );
});

/** A port that nobody has at this moment. */
async function freePort(): Promise<number> {
  const server = createServer().listen(0);
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
}

/** What the tablets' door says to a stranger, and by which certificate; null where it is shut. */
const atTabletDoor = (port: number): Promise<{ status: number; fingerprint: string } | null> =>
  new Promise((resolve) => {
    const options = {
      host: '127.0.0.1',
      port,
      path: '/bench/steps/',
      rejectUnauthorized: false,
      agent: false,
    };
    getSecurely(options, (response) => {
      const { fingerprint256 } = (response.socket as TLSSocket).getPeerCertificate();
      response.resume();
      response.once('end', () => resolve({ status: response.statusCode ?? 0, fingerprint: fingerprint256 }));
    }).once('error', () => resolve(null));
  });

test('the tablets’ door opens again in the new program, at the same port, by the same certificate', async () => {
  await shop.stop();
  const port = await freePort();
  shop = await startShop({
    ...place.env,
    CLASPWISE_BOOK: join(place.folder, 'orders.sqlite'),
    CLASPWISE_TABLET_PORT: String(port),
    CLASPWISE_HOSTS: '127.0.0.1',
  });
  expect(await atTabletDoor(port)).toBeNull();
  await fetch(`${shop.base}/bench/tablets/`, {
    method: 'POST',
    headers: { origin: shop.base },
    body: new URLSearchParams({ act: 'on' }),
  });
  const before = await atTabletDoor(port);
  expect(before?.status).toBe(401);
  pointTo(otherProgram(1), place.releases);
  await showsProgram(1);
  // The page of the new program knows of it once it is open there.
  await vi.waitUntil(
    async () => (await (await fetch(`${shop.base}/bench/tablets/`)).text()).includes(`on port ${port}`),
    { timeout: 30_000, interval: 100 },
  );
  expect(await atTabletDoor(port)).toEqual(before);
});
