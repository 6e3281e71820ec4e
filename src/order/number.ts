/**
 * Order numbers that can be read over a telephone: `K7M-4PX-9RC`.
 *
 * Eight random characters and a check character by ISO/IEC 7064, MOD 37,36
 * (hybrid system, clauses 9 and 10), which finds every wrong character and
 * nearly every swap of two neighbours. The standard's alphabet is 0-9 and A-Z;
 * only 24 of them are used, none that looks like another (0 O, 1 I L, 2 Z,
 * 5 S, 8 B, U V) and no vowels, so that no number spells a word. Where the
 * check character falls outside them, the number is drawn again.
 */
const ISO_7064 = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const PLAIN = '23456789CDFGHJKMNPRTVWXY';
/** 24^8 numbers: with 10,000 orders the chance that any two meet is one in 2,000, and the book refuses the second by name. */
const DRAWN = 8;
const GROUP = 3;
/** Bytes from here up would make the first characters likelier. */
const FAIR_BYTES = 256 - (256 % PLAIN.length);

/** Check character of a run of the standard's characters, ISO/IEC 7064 MOD 37,36. */
export function checkCharacter(run: string): string {
  let product = 36;
  for (const character of run) {
    const sum = (product + ISO_7064.indexOf(character)) % 36 || 36;
    product = (sum * 2) % 37;
  }
  return ISO_7064.charAt((37 - product) % 36);
}

/**
 * Draws a new order number.
 * @param randomByte gives whole numbers from 0 to 255, each as likely as the next and not to be guessed
 */
export function makeNumber(randomByte: () => number): string {
  for (;;) {
    let run = '';
    while (run.length < DRAWN) {
      const byte = randomByte();
      if (byte < FAIR_BYTES) run += PLAIN.charAt(byte % PLAIN.length);
    }
    const check = checkCharacter(run);
    if (PLAIN.includes(check)) return grouped(run + check);
  }
}

export type NumberProblem = 'number-length' | 'number-character' | 'number-check';

/**
 * Reads a number as people say or type it: any case, any spaces and dashes.
 * `number-check` means that one character or more was misheard.
 */
export function readNumber(text: string): { readonly number: string } | { readonly problem: NumberProblem } {
  const run = text.toUpperCase().replace(/[\s\u00ad.\-\u2010-\u2015]/g, '');
  if (run.length !== DRAWN + 1) return { problem: 'number-length' };
  for (const character of run) {
    if (!PLAIN.includes(character)) return { problem: 'number-character' };
  }
  if (checkCharacter(run.slice(0, DRAWN)) !== run.charAt(DRAWN)) return { problem: 'number-check' };
  return { number: grouped(run) };
}

/** True for a number exactly as `makeNumber` writes it. */
export function isNumber(value: unknown): value is string {
  if (typeof value !== 'string' || value.length !== DRAWN + 3) return false;
  const read = readNumber(value);
  return 'number' in read && read.number === value;
}

function grouped(run: string): string {
  return [0, GROUP, 2 * GROUP].map((at) => run.slice(at, at + GROUP)).join('-');
}
