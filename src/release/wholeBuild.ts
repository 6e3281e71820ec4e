/** Builds a release whole: all code, all pages. What is always possible, and needed where the code has changed. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { MADE_AGAIN, READ_FROM } from '#catalogue/released/place.ts';

/** What Astro says of each page that it makes, in a line of its own. */
const PAGE = /├─ *\/?(\S+\.html)/g;

const ASTRO = fileURLToPath(new URL('../bin/astro.mjs', import.meta.resolve('astro')));

/**
 * @param making folder of the new release, with its catalogue in it
 * @param told called with each page that is made
 * @throws Error with all that the build said, where it failed
 */
export async function buildWhole(making: string, told: (file: string) => void): Promise<void> {
  const { [MADE_AGAIN]: _failed, ...env } = process.env;
  const child = spawn(process.execPath, [ASTRO, 'build'], {
    env: { ...env, [READ_FROM]: making, NO_COLOR: '1', FORCE_COLOR: '0' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const stop = (): void => void child.kill();
  process.once('exit', stop);
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (chunk: Buffer) => {
      const text = chunk.toString();
      said += text;
      for (const [, file = ''] of text.matchAll(PAGE)) told(file);
    });
  }
  const code = await new Promise<number | null>((resolve, reject) => {
    child.once('error', reject);
    child.once('close', resolve);
  });
  process.off('exit', stop);
  if (code !== 0) throw new Error(said.trim() === '' ? `The build ended with ${code}.` : said);
}
