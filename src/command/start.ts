/**
 * `npm start`: builds the shop where anything has changed since it was built last, then
 * serves shop and bench on this machine. `--built` serves what was built last. PORT and HOST as environment
 * variables; HOST stands at 127.0.0.1, since the bench is the maker's alone.
 */
import { spawn } from 'node:child_process';
import { accessSync, constants, mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { releasesFolder } from '#catalogue/released/place.ts';
import { TAKES_OVER } from './serve/handOver.ts';
import { serve, serveInPlace } from './serve/server.ts';

const root = resolve(import.meta.dirname, '../..');
process.chdir(root);
const host = process.env.HOST ?? '127.0.0.1';
const wantedPort = Number(process.env.PORT ?? 4321);

try {
  if (process.argv.includes(TAKES_OVER)) await serveInPlace();
  else await start();
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
}

async function start(): Promise<void> {
  if (!process.argv.includes('--built')) {
    const folder = releasesFolder();
    if (!isWritable(folder)) {
      throw new Error(
        `${folder} can't be written, so nothing was built. Fix: give your account the right to write into it, or serve what was built before: npm start -- --built`,
      );
    }
    console.log('Building the shop from content/ …');
    await build();
  }
  const { port, base } = await serve(host, wantedPort, (taken) => {
    console.log(`Port ${taken} is in use, perhaps by a shop started before. Trying the next.`);
  });
  console.log(`Shop   http://${host}:${port}${base}`);
  console.log(`Bench  http://${host}:${port}${base}bench/`);
  console.log('Stop with Ctrl+C.');
  await openBook(`http://127.0.0.1:${port}${base}bench/keep/`);
}

/** True for a folder that may be written, or made. */
function isWritable(folder: string): boolean {
  try {
    mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

/** Has the order book opened and checked now, not only when the first order comes, and says where it can't be used. `page`: Safe-keeping. */
async function openBook(page: string): Promise<void> {
  const answer = await fetch(page).catch(() => null);
  if (answer?.status === 503) console.error(`The order book can't be used as it is. What to do: ${page}`);
}

/**
 * Makes a release, where anything has changed since the last one; says on the terminal what it does.
 * @throws Error where it failed: what is to mend has been said then
 */
async function build(): Promise<void> {
  const child = spawn(process.execPath, [join(root, 'src/command/publish.ts'), '--start'], {
    cwd: root,
    stdio: 'inherit',
  });
  const code = await new Promise<number | null>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', resolve);
  });
  if (code !== 0) throw new Error('Nothing was built, and so nothing is served.');
}
