/**
 * `npm start`: builds the shop, then serves shop and bench on this machine.
 * `--built` serves what is already in dist/, or in the folder that CLASPWISE_DIST names. PORT and HOST as environment
 * variables; HOST stands at 127.0.0.1, since the bench is the maker's alone.
 */
import { spawn } from 'node:child_process';
import { accessSync, constants, mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { serve } from './serve/server.ts';

const root = resolve(import.meta.dirname, '../..');
const built = process.argv.includes('--built');
const dist = resolve(root, (built ? process.env.CLASPWISE_DIST : undefined) ?? 'dist');
const host = process.env.HOST ?? '127.0.0.1';
const wantedPort = Number(process.env.PORT ?? 4321);

try {
  if (!built) {
    if (!isWritable(dist)) {
      throw new Error(
        `${dist} can't be written, so nothing was built. Fix: give your account the right to write into it, or serve what was built before: npm start -- --built`,
      );
    }
    console.log('Building the shop from content/ …');
    console.log(`Built in ${(await build(root)).toFixed(1)} s.`);
  }
  const { port, base } = await serve(dist, host, wantedPort, (taken) => {
    console.log(`Port ${taken} is in use, perhaps by a shop started before. Trying the next.`);
  });
  console.log(`Shop   http://${host}:${port}${base}`);
  console.log(`Bench  http://${host}:${port}${base}bench/`);
  console.log('Stop with Ctrl+C.');
  await openBook(`http://127.0.0.1:${port}${base}bench/keep/`);
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
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
 * Runs the project's build in `root`.
 * @returns seconds it took
 * @throws Error carrying the build's whole output, where it failed
 */
async function build(root: string): Promise<number> {
  const started = process.hrtime.bigint();
  const npm = process.env.npm_execpath;
  const [command, args] = npm === undefined ? ['npm', []] : [process.execPath, [npm]];
  const child = spawn(command, [...args, 'run', '--silent', 'build'], { cwd: root });
  let output = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (chunk: Buffer) => (output += chunk.toString()));
  const code = await new Promise<number | null>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', resolve);
  });
  if (code !== 0) throw new Error(output);
  return Number(process.hrtime.bigint() - started) / 1e9;
}
