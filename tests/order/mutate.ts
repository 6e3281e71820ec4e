/** Documents and texts gone wrong, by a seeded generator: what a broken client, a tampering buyer or a bad line sends. */
import { encode } from '#order/text.ts';
import type { OrderDocument } from '#order/document.ts';

export type Random = { readonly below: (limit: number) => number };

/** Mulberry32, so that a failing case can be named by its seed. */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  return {
    below: (limit) => {
      state = (state + 0x6d2b79f5) >>> 0;
      let mixed = Math.imul(state ^ (state >>> 15), state | 1);
      mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
      return ((mixed ^ (mixed >>> 14)) >>> 0) % limit;
    },
  };
}

const VALUES: readonly unknown[] = [
  null,
  undefined,
  true,
  false,
  0,
  -0,
  -1,
  0.5,
  1e-320,
  1e309,
  -1e308,
  NaN,
  2 ** 53,
  99,
  100,
  '',
  ' ',
  '0',
  'left',
  'wrist',
  '=1+1',
  '<script>alert(1)</script>',
  '\u202Egnp.exe',
  '\ud800',
  '\u0000',
  'a\r\nBcc: b@example.org',
  '__proto__',
  '2026-02-30T00:00:00Z',
  '2026-11-25T18:40:00+01:00',
  'x'.repeat(2000),
  [],
  [[]],
  [[[]]],
  [null],
  {},
  { a: 1 },
  { toString: 1 },
  { length: 3 },
  [[1, 2.5]],
  [[-1]],
  [[1e9]],
  'TX2-FYF-HTW',
  'gbp',
  'claspwise1..end',
  'post',
  'collection',
  { by: 'unsaid' },
  { by: 'post' },
];
const KEYS = ['__proto__', 'constructor', 'toString', 'extra', 'number', 'buyer', 'by', 'to', '', 'Format'];

/** A copy of the document with one to three fields replaced, removed, added, or swapped. */
export function mutateDocument(order: OrderDocument, random: Random): unknown {
  const copy = structuredClone(order) as unknown;
  for (let times = 1 + random.below(3); times > 0; times -= 1) {
    const holder = pickHolder(copy, random);
    const keys = Object.keys(holder);
    const key = keys[random.below(Math.max(1, keys.length))] ?? 'none';
    const value = structuredClone(VALUES[random.below(VALUES.length)]);
    const what = random.below(4);
    if (what === 0) Reflect.deleteProperty(holder, key);
    else if (what === 1) define(holder, KEYS[random.below(KEYS.length)] ?? '', value);
    else define(holder, key, value);
  }
  return copy;
}

/** The compact form with characters changed, cut, doubled, moved or put in. */
export function mutateText(order: OrderDocument, random: Random): string {
  let text = encode(order);
  const noise = [
    '.',
    '=',
    '>',
    '\n',
    '\u00ad',
    '<br>',
    '&shy;',
    'claspwise4.',
    '.end',
    'A',
    '-',
    '=3D',
    'é',
    '\u0000',
  ];
  for (let times = 1 + random.below(4); times > 0; times -= 1) {
    const at = random.below(text.length + 1);
    const length = random.below(12);
    const part = noise[random.below(noise.length)] ?? '';
    const kind = random.below(4);
    if (kind === 0) text = text.slice(0, at) + text.slice(at + length);
    else if (kind === 1) text = text.slice(0, at) + part + text.slice(at);
    else if (kind === 2) text = text.slice(0, at) + part + text.slice(at + 1);
    else text = text.slice(at) + text.slice(0, at);
  }
  return text;
}

function pickHolder(value: unknown, random: Random): object {
  let holder = value as object;
  for (let depth = random.below(4); depth > 0; depth -= 1) {
    const inner = Object.values(holder).filter((one) => typeof one === 'object' && one !== null) as object[];
    holder = inner[random.below(Math.max(1, inner.length))] ?? holder;
  }
  return holder;
}

function define(holder: object, key: string, value: unknown): void {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
}
