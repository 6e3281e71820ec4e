/** Answers to damage: one of every kind, and the ways to reach into them. */
import type { Choice } from '#core/design/choice.ts';
import { size } from '#core/sizing/size.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Sizing } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import type { Priced } from '#core/verify/price.ts';
import { twoStrands } from '#tests/support/workshop.ts';
import { focalBracelet, necklace, rules, stocked, strict, tubeBracelet } from '../designs.ts';

export type Sample = {
  readonly design: Design;
  readonly sizing: Exclude<Sizing, { status: 'refused' }>;
  /** What it was asked with. */
  readonly priced: Priced;
};

export function choose(of: Choice['measure']['of'], mm: number, pick: Choice['pick'] = 'best'): Choice {
  return { measure: { of, mm }, sit: 'easy', hand: 'right', pick, quantity: 1 };
}

/** A bracelet whose beads are counted, and run out before the maker's range ends. */
const counted = stocked(focalBracelet, { six: 13 });

const ASKED: readonly (readonly [Design, Choice, Rules])[] = [
  [focalBracelet, choose('wrist', 165), rules],
  [focalBracelet, choose('wrist', 250), rules],
  [counted, choose('wrist', 240), rules],
  [counted, choose('wrist', 165), rules],
  [tubeBracelet, choose('wrist', 171, 'below'), strict],
  [tubeBracelet, choose('wrist', 171, 'above'), strict],
  [necklace, choose('length', 455), rules],
  [necklace, choose('length', 5000), rules],
  [necklace, choose('length', 457), strict],
  [twoStrands, choose('wrist', 170), rules],
  [twoStrands, choose('wrist', 400), rules],
];

export const SAMPLES: readonly Sample[] = ASKED.flatMap(([design, choice, by]) => {
  const priced = { rules: by, listedMinor: 4800 };
  const sizing = size(design, by, priced.listedMinor, choice);
  return sizing.status === 'refused' ? [] : [{ design, sizing, priced }];
});

const isTree = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/** A component where it stands is one field: its id says all. */
const isComponent = (value: unknown): value is { id: string } => isTree(value) && 'alongMm' in value;

/** Paths of every field, `*` for any place in a list: `best.counts.*.*`. The four pieces of an answer are one `piece`. */
export function fieldsOf(value: unknown, path = ''): string[] {
  if (!isTree(value) || isComponent(value))
    return [path.replace(/^(best|chosen|below|above|nearest)\./, 'piece.')];
  const entries = Array.isArray(value) ? value.map((one) => ['*', one] as const) : Object.entries(value);
  const all = entries.flatMap(([key, one]) => fieldsOf(one, path === '' ? key : `${path}.${key}`));
  return [...new Set(all)];
}

/** A value of the same type that is another one. */
function other(value: unknown): unknown {
  if (typeof value === 'number') return value + 1;
  if (typeof value === 'boolean') return !value;
  if (isComponent(value)) return { ...value, id: `other-${value.id}` };
  return typeof value === 'string' ? `other-${value}` : { damaged: true };
}

function reach(value: unknown, keys: readonly string[], as: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return as === undefined ? other(value) : as;
  if (!isTree(value)) return value;
  if (key === '*') {
    const list = value as unknown as readonly unknown[];
    const at = list.findIndex((one) => has(one, rest));
    return at < 0 ? list : list.with(at, reach(list[at], rest, as));
  }
  return key in value ? { ...value, [key]: reach(value[key], rest, as) } : value;
}

function has(value: unknown, [key, ...rest]: readonly string[]): boolean {
  if (key === undefined) return true;
  if (!isTree(value)) return false;
  if (key === '*') return (value as unknown as readonly unknown[]).some((one) => has(one, rest));
  return key in value && has(value[key], rest);
}

/**
 * The answer with the first such field changed, in its best or only piece.
 * @param as where any other value of the type won't do; a function is given the answer
 */
export function damaged(sizing: Sample['sizing'], field: string, as?: unknown): Sample['sizing'] {
  const piece = sizing.status === 'outside' ? 'nearest' : 'best';
  const value = typeof as === 'function' ? (as as (of: Sample['sizing']) => unknown)(sizing) : as;
  return reach(sizing, field.replace(/^piece\./, `${piece}.`).split('.'), value) as Sample['sizing'];
}
