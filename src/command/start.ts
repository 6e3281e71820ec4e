/**
 * `npm start`: builds the shop, then serves shop and bench on this machine.
 * `--built` serves what is already in dist/. PORT and HOST as environment
 * variables; HOST stands at 127.0.0.1, since the bench is the maker's alone.
 */
import { resolve } from 'node:path';
import { build } from './serve/build.ts';
import { serve } from './serve/server.ts';

const root = resolve(import.meta.dirname, '../..');
const host = process.env.HOST ?? '127.0.0.1';
const wantedPort = Number(process.env.PORT ?? 4321);

try {
  if (!process.argv.includes('--built')) {
    console.log('Building the shop from content/ …');
    console.log(`Built in ${(await build(root)).toFixed(1)} s.`);
  }
  const { port } = await serve(root, host, wantedPort);
  console.log(`Shop   http://${host}:${port}/`);
  console.log(`Bench  http://${host}:${port}/bench/`);
  console.log('Stop with Ctrl+C.');
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
}
