/** What the orders still to be strung take together, beside what the maker has: what to buy. */
import { partNamesIn, wireKey, type Catalogue } from '#catalogue/model/catalogue.ts';
import { stringing } from '#core/instructions/stringing.ts';
import { findEntry, type Entry } from '../book/entry.ts';
import type { Book } from '../book/open.ts';
import type { Frame } from './frame.ts';
import { openWorks, partsOf, worksOf, type Work } from './work.ts';

export type Needed = {
  readonly id: string;
  readonly name: string;
  /** As on the bag; null where she wrote none. */
  readonly number: string | null;
  readonly count: number;
  /** How many she has; null where she doesn't count. */
  readonly stock: number | null;
  /** How many are missing; null where she doesn't count. */
  readonly missing: number | null;
  /** Numbers of the orders that take it. */
  readonly orders: readonly string[];
};

export type NeededWire = {
  readonly id: string;
  readonly name: string;
  readonly number: string | null;
  /** All cuts together, allowances included. */
  readonly lengthMm: number;
  readonly orders: readonly string[];
};

export type Gathering = {
  /** Missing ones first, then by name. */
  readonly parts: readonly Needed[];
  readonly wires: readonly NeededWire[];
  /** Orders that are in it. */
  readonly orders: readonly string[];
  /** Orders left out, since nothing can be strung from them as they are. */
  readonly leftOut: readonly string[];
};

type Sum = { amount: number; readonly orders: string[] };

/**
 * Adds up what open orders take, by the pieces as they stand now.
 * @param only number of the one order to gather for; null for all that are still to be strung
 * Throws BookError.
 */
export function gather(book: Book, catalogue: Catalogue, frame: Frame, only: string | null): Gathering {
  const { works, leftOut } = only === null ? openWorks(book, catalogue) : worksOf(one(book, only), catalogue);
  const parts = new Map<string, Sum>();
  const wires = new Map<string, Sum>();
  for (const work of works) add(work, parts, wires);
  return {
    parts: neededParts(parts, catalogue, frame),
    wires: neededWires(wires, catalogue, frame),
    orders: works.map(({ entry }) => entry.document.number),
    leftOut,
  };
}

function one(book: Book, number: string): Entry[] {
  const entry = findEntry(book, number);
  return entry === null ? [] : [entry];
}

function add(work: Work, parts: Map<string, Sum>, wires: Map<string, Sum>): void {
  const { entry, copy, candidate } = work;
  const { number, quantity, hand } = entry.document;
  for (const [id, count] of partsOf(work)) grow(parts, id, count, number);
  const { wire, strands } = stringing(copy.design, copy.rules, candidate, hand);
  for (const { cut } of strands) grow(wires, wire.id, cut.totalMm * quantity, number);
}

function grow(into: Map<string, Sum>, id: string, amount: number, order: string): void {
  const sum = into.get(id) ?? { amount: 0, orders: [] };
  sum.amount += amount;
  if (!sum.orders.includes(order)) sum.orders.push(order);
  into.set(id, sum);
}

function neededParts(sums: ReadonlyMap<string, Sum>, catalogue: Catalogue, { lang }: Frame): Needed[] {
  const own = partNamesIn(catalogue, lang);
  const all = [...sums].map(([id, { amount, orders }]): Needed => {
    const found = catalogue.components[id];
    const stock = found?.stock ?? null;
    const missing = stock === null ? null : Math.max(0, amount - stock);
    const name = own[id] ?? found?.name ?? id;
    const number = catalogue.partNumbers[id] ?? null;
    return { id, name, number, count: amount, stock, missing, orders };
  });
  return all.toSorted(
    (a, b) =>
      Number((b.missing ?? 0) > 0) - Number((a.missing ?? 0) > 0) || a.name.localeCompare(b.name, lang),
  );
}

function neededWires(sums: ReadonlyMap<string, Sum>, catalogue: Catalogue, { lang }: Frame): NeededWire[] {
  const own = partNamesIn(catalogue, lang);
  return [...sums].map(([id, { amount, orders }]) => {
    const name = own[wireKey(id)] ?? catalogue.wires[id]?.name ?? id;
    const number = catalogue.partNumbers[wireKey(id)] ?? null;
    return { id, name, number, lengthMm: amount, orders };
  });
}
