/**
 * `npm run benchmark:desk`: orders a second that the built desk takes with every
 * receipt on disk, beside the disk's own limit in the same run, and how long an
 * answer takes at half that load. Figures drift with the machine; the ratio is
 * what counts.
 */
import { spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { size } from '#core/sizing/size.ts';
import { compose } from '#order/compose.ts';
import { makeNumber } from '#order/number.ts';
import { fullLoad, steadyLoad, syncsPerSecond, type Send } from './benchmarks/desk/load.ts';

const CLIENTS = 20;
const SECONDS = 5;
const root = resolve(import.meta.dirname, '../..');

/** Sends a new order for each call: the first piece that can be made for a common wrist. */
async function sender(address: string): Promise<Send> {
  const { catalogue } = await readCatalogue(join(root, 'content'));
  if (catalogue === null) throw new Error('content/ has faults: npm run build names them');
  const piece = catalogue.pieces.find(({ design }) => design.kind === 'bracelet');
  if (piece === undefined) throw new Error('no bracelet in content/');
  const choice = {
    measure: { of: 'wrist', mm: 165.1 },
    sit: 'easy',
    hand: 'right',
    pick: 'best',
    quantity: 1,
  } as const;
  const { rules } = catalogue.shop;
  const sizing = size(piece.design, rules, piece.listedMinor, choice);
  if (sizing.status !== 'fits') throw new Error(`${piece.id} does not fit 165.1 mm`);
  const buyer = { name: 'A Buyer', email: 'buyer@example.org', note: '' };
  const parts = {
    lang: 'en',
    piece,
    choice,
    measureText: '6 1/2 in',
    candidate: sizing.chosen,
    currency: rules.currency,
    buyer,
    delivery: { by: 'unsaid' },
    postageMinor: 0,
  } as const;
  return async () => {
    const number = makeNumber(() => randomBytes(1)[0] ?? 0);
    const order = compose({ ...parts, number, placedAtMs: Date.now() });
    const response = await fetch(`${address}/desk/orders`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(order),
    });
    if (response.status !== 201) throw new Error(`${response.status} ${await response.text()}`);
    await response.json();
  };
}

async function start(book: string): Promise<{ address: string; stop: () => void }> {
  const env = { ...process.env, PORT: '0', CLASPWISE_BOOK: book, CLASPWISE_DESK_PER_MINUTE: '0' };
  const child = spawn(process.execPath, [join(root, 'src/command/start.ts'), '--built'], {
    env,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  while (!said.includes('Bench')) {
    const [part] = (await once(child.stdout, 'data')) as [Buffer];
    said += part.toString();
  }
  const address = /http:\/\/[^/\s]+/.exec(said)?.[0] ?? '';
  return { address, stop: () => child.kill() };
}

// On the disk that holds the project, not in memory.
mkdirSync(join(root, '.cache'), { recursive: true });
const folder = mkdtempSync(join(root, '.cache', 'desk-'));
const server = await start(join(folder, 'orders.sqlite'));
try {
  const send = await sender(server.address);
  await fullLoad(send, CLIENTS, 1);
  const syncsBefore = syncsPerSecond(folder, 2);
  const alone = await fullLoad(send, 1, SECONDS);
  const together = await fullLoad(send, CLIENTS, SECONDS);
  const syncs = (syncsBefore + syncsPerSecond(folder, 2)) / 2;
  const half = await steadyLoad(send, together / 2, SECONDS);
  console.log(`disk: ${syncs.toFixed(0)} syncs a second`);
  console.log(
    `1 client: ${alone.toFixed(0)} orders a second, ${(alone / syncs).toFixed(2)} of the disk's syncs`,
  );
  console.log(
    `${CLIENTS} clients: ${together.toFixed(0)} orders a second, ${(together / syncs).toFixed(2)} of the disk's syncs`,
  );
  console.log(
    `at half of that: median ${half.medianMs.toFixed(1)} ms, 95 % within ${half.p95Ms.toFixed(1)} ms, 99 % within ${half.p99Ms.toFixed(1)} ms`,
  );
} finally {
  server.stop();
  rmSync(folder, { recursive: true, force: true });
}
