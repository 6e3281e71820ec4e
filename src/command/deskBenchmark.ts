/**
 * `npm run benchmark:desk`: orders a second that the built desk takes with every
 * receipt on disk, beside the disk's own limit before and after in the same run, and how
 * long an answer takes then and at half that load. Figures drift with the machine; the ratio is
 * what counts.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fullLoad, steadyLoad, syncsPerSecond, type Latencies } from './benchmarks/desk/load.ts';
import { orderTexts, sender } from './benchmarks/desk/orders.ts';

const CLIENTS = [1, 20, 60];
const SECONDS = 5;
const SYNC_SECONDS = 2;
const root = resolve(import.meta.dirname, '../..');

const written = ({ medianMs, p95Ms, p99Ms }: Latencies): string =>
  `median ${medianMs.toFixed(1)} ms, 95 % within ${p95Ms.toFixed(1)} ms, 99 % within ${p99Ms.toFixed(1)} ms`;

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
  const address = /^Shop\s+(http:\S+)\/$/m.exec(said)?.[1] ?? '';
  return { address, stop: () => child.kill() };
}

// On the disk that holds the project, not in memory.
mkdirSync(join(root, '.cache'), { recursive: true });
const folder = mkdtempSync(join(root, '.cache', 'desk-'));
const texts = await orderTexts(join(root, 'content'));
const server = await start(join(folder, 'orders.sqlite'));
const { send, close } = sender(server.address, texts);
try {
  console.log(`${texts.length} different orders, by chance, each under a new number`);
  // Cold: nearly every order is the first of its size.
  const cold = await fullLoad(send, 60, 1);
  console.log(`60 clients, first second: ${cold.perSecond.toFixed(0)} orders a second; ${written(cold)}`);
  let most = 0;
  for (const clients of CLIENTS) {
    const before = syncsPerSecond(folder, SYNC_SECONDS);
    const load = await fullLoad(send, clients, SECONDS);
    const syncs = (before + syncsPerSecond(folder, SYNC_SECONDS)) / 2;
    const share = (load.perSecond / syncs).toFixed(2);
    console.log(
      `${clients} client${clients === 1 ? '' : 's'}: ${load.perSecond.toFixed(0)} orders a second, ` +
        `${share} of the disk's ${syncs.toFixed(0)} syncs; ${written(load)}`,
    );
    most = load.perSecond;
  }
  console.log(`at half of that: ${written(await steadyLoad(send, most / 2, SECONDS))}`);
} finally {
  close();
  server.stop();
  rmSync(folder, { recursive: true, force: true });
}
