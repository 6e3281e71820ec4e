/** What the orders still to be strung take together, in the order of trays, beside what the maker has: what to pick and what to buy. */
import { componentNameIn, partNamesIn, wireKey, type Catalogue } from '#catalogue/model/catalogue.ts';
import { findEntry, type Entry } from '../book/entry.ts';
import type { Book } from '../book/open.ts';
import { entriesIn } from '../book/search.ts';
import type { There } from '../check/there.ts';
import type { Frame } from './frame.ts';
import { cutsFrom } from '../book/orderStock.ts';
import { stockNow, type StockNow } from '../stock/stockNow.ts';
import { byTray } from '../stock/things.ts';
import { cutsOf, partsOf, type Work } from '../stock/takes.ts';
import { TO_STRING, worksOf } from './work.ts';

/** One order, and how much of a thing it takes: components, or millimetres of wire. */
export type Share = { readonly order: string; readonly amount: number };

export type Needed = {
  readonly id: string;
  readonly name: string;
  /** As on the bag; null where she wrote none. */
  readonly number: string | null;
  /** Where it lies; null where she wrote nothing. */
  readonly tray: string | null;
  readonly count: number;
  /** How many she has; null where she doesn't count. */
  readonly stock: number | null;
  /** How many are missing; null where she doesn't count. */
  readonly missing: number | null;
  readonly orders: readonly Share[];
};

/** One cut, and the offcut that it is cut from, mm. */
export type FromOffcut = { readonly order: string; readonly cutMm: number; readonly offcutMm: number };

export type NeededWire = {
  readonly id: string;
  readonly name: string;
  readonly number: string | null;
  readonly tray: string | null;
  /** All cuts together, allowances included. */
  readonly lengthMm: number;
  /** What there is of it, mm; null where she doesn't count. */
  readonly stockMm: number | null;
  /** Cuts that an offcut is long enough for; the others come off the reel. */
  readonly offcuts: readonly FromOffcut[];
  readonly orders: readonly Share[];
};

export type Gathering = {
  /** By tray, then by name; what has no tray comes last. */
  readonly parts: readonly Needed[];
  readonly wires: readonly NeededWire[];
  /** Orders that are in it. */
  readonly orders: readonly string[];
  /** Orders left out, since nothing can be strung from them as they are. */
  readonly leftOut: readonly string[];
};

/** `open`: all that are still to be strung. `agreed`: of those, the ones that are agreed. Else the number of one order. */
export type GatherFor = { readonly of: 'open' | 'agreed' } | { readonly number: string };

type Sums = Map<string, Share[]>;

/** Adds up what orders take, by the pieces as they stand now. Throws BookError. */
export function gather(book: Book, catalogue: Catalogue, frame: Frame, wanted: GatherFor): Gathering {
  const stock = stockNow(book, catalogue);
  const { works, leftOut } = worksOf(book, entriesFor(book, wanted), catalogue, stock);
  const parts: Sums = new Map();
  const wires: Sums = new Map();
  for (const work of works) add(work, parts, wires);
  const pieces = offcutsFor(works, stock);
  // Of one order alone, what others have been promised isn't there; of all of them together, everything is.
  const [only] = works;
  const there = 'of' in wanted || only === undefined ? stock.onHand : stock.thereFor(only.entry);
  return {
    parts: neededParts(parts, there, catalogue, frame),
    wires: neededWires(wires, there, catalogue, frame).map((wire) => ({
      ...wire,
      offcuts: pieces.filter(({ wire: id }) => id === wire.id),
    })),
    orders: works.map(({ entry }) => entry.document.number),
    leftOut,
  };
}

/** Offcuts by the order that each is used for, as stringing will take them: one order after another. */
function offcutsFor(works: readonly Work[], stock: StockNow): (FromOffcut & { readonly wire: string })[] {
  const left = new Map<string, readonly number[]>();
  return works.flatMap((work) => {
    const wire = work.copy.design.wire.id;
    const lying = left.get(wire) ?? stock.balance(wireKey(wire))?.offcuts ?? [];
    const used = cutsFrom(cutsOf(work), lying).flatMap(({ cutMm, offcut }) =>
      offcut === null ? [] : [{ wire, order: work.entry.document.number, cutMm, offcutMm: offcut }],
    );
    const rest = [...lying];
    for (const { offcutMm } of used) rest.splice(rest.indexOf(offcutMm), 1);
    left.set(wire, rest);
    return used;
  });
}

function entriesFor(book: Book, wanted: GatherFor): Entry[] {
  if ('of' in wanted) return entriesIn(book, wanted.of === 'agreed' ? ['agreed'] : TO_STRING);
  const entry = findEntry(book, wanted.number);
  return entry === null ? [] : [entry];
}

function add(work: Work, parts: Sums, wires: Sums): void {
  const { entry, copy } = work;
  const { number } = entry.document;
  for (const [id, count] of partsOf(work)) grow(parts, id, count, number);
  for (const mm of cutsOf(work)) grow(wires, copy.design.wire.id, mm, number);
}

function grow(into: Sums, id: string, amount: number, order: string): void {
  const shares = into.get(id) ?? [];
  const last = shares.at(-1);
  // An order's strands come one after the other.
  if (last?.order === order) shares.splice(-1, 1, { order, amount: last.amount + amount });
  else shares.push({ order, amount });
  into.set(id, shares);
}

const total = (shares: readonly Share[]): number => shares.reduce((sum, { amount }) => sum + amount, 0);

function neededParts(sums: Sums, there: There, catalogue: Catalogue, { lang }: Frame): Needed[] {
  const all = [...sums].map(([id, orders]): Needed => {
    const left = there(id);
    const stock = left === null ? null : Math.max(0, left);
    const count = total(orders);
    const missing = stock === null ? null : Math.max(0, count - stock);
    const name = componentNameIn(catalogue, id, lang);
    const number = catalogue.partNumbers[id] ?? null;
    return { id, name, number, tray: catalogue.trays[id] ?? null, count, stock, missing, orders };
  });
  return all.toSorted((a, b) => byTray(a, b, lang));
}

function neededWires(
  sums: Sums,
  there: There,
  catalogue: Catalogue,
  { lang }: Frame,
): Omit<NeededWire, 'offcuts'>[] {
  const own = partNamesIn(catalogue, lang);
  const all = [...sums].map(([id, orders]) => {
    const key = wireKey(id);
    const name = own[key] ?? catalogue.wires[id]?.name ?? id;
    const number = catalogue.partNumbers[key] ?? null;
    const tray = catalogue.trays[key] ?? null;
    const left = there(key);
    const stockMm = left === null ? null : Math.max(0, left);
    return { id, name, number, tray, lengthMm: total(orders), stockMm, orders };
  });
  return all.toSorted((a, b) => byTray(a, b, lang));
}
