/**
 * Keys of drawings by what is drawn, kept from one publishing to the next: a
 * drawing is named by its strokes, and to draw a thousand only to learn their
 * names took seconds. Of one program only, whose mark whoever makes a release
 * gives; without it, or where none is kept, everything is drawn.
 */
import { appendFileSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { CACHE, keyOf } from './cache.ts';

/** The environment's name for the mark of the program that makes a release. */
export const MADE_BY = 'CLASPWISE_MADE_BY';

/** So many besides are kept. */
const OTHERS = 2;

const LINE = /^([\da-f]{16}) ([\da-f]{16})$/;
const fileOf = (program: string): string => `drawn-${program}.txt`;
const isKept = (name: string): boolean => /^drawn-[\da-f]+\.txt$/.test(name);

let kept: { readonly program: string; readonly keys: Map<string, string> } | null = null;

/** Lines that were cut off are left out. */
function read(program: string): Map<string, string> {
  try {
    const lines = readFileSync(join(CACHE, fileOf(program)), 'utf8').split('\n');
    const found = lines.map((line) => LINE.exec(line)).filter((one) => one !== null);
    return new Map(found.map(([, of = '', key = '']) => [of, key]));
  } catch {
    return new Map();
  }
}

/** Takes away what programs before kept, but for the last ones: a build may be between two of them. */
function sweep(program: string): void {
  const ageOf = (name: string): number => statSync(join(CACHE, name)).mtimeMs;
  try {
    mkdirSync(CACHE, { recursive: true });
    const others = readdirSync(CACHE).filter((name) => isKept(name) && name !== fileOf(program));
    const old = others.sort((one, other) => ageOf(other) - ageOf(one)).slice(OTHERS);
    for (const name of old) rmSync(join(CACHE, name), { force: true });
  } catch {
    // They only take room.
  }
}

function keep(program: string, of: string, key: string): void {
  try {
    appendFileSync(join(CACHE, fileOf(program)), `${of} ${key}\n`);
  } catch {
    // Drawn again next time.
  }
}

/**
 * @param inputs everything that shapes the drawing
 * @param draw makes its key, 16 hexadecimal digits
 */
export function drawnKey(inputs: string, draw: () => string): string {
  const program = process.env[MADE_BY];
  if (program === undefined) return draw();
  if (kept?.program !== program) {
    sweep(program);
    kept = { program, keys: read(program) };
  }
  const of = keyOf(inputs);
  const found = kept.keys.get(of);
  if (found !== undefined) return found;
  const key = draw();
  kept.keys.set(of, key);
  keep(program, of, key);
  return key;
}
