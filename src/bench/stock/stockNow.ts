/**
 * What there is, what of it is promised, and what one order may take: the one
 * place that everything at the bench asks. What is counted in the book goes by
 * its lines there; what isn't, by the number in its file, if it has one.
 *
 * An agreed order reserves what stringing it would take now, the oldest first,
 * each by what those before it leave. Nothing of that is stored: it follows
 * from book and catalogue.
 */
import type { DatabaseSync } from 'node:sqlite';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Entry } from '../book/entry.ts';
import { balances, takenBy, type Balance } from '../book/movements.ts';
import { prepared, type Book } from '../book/open.ts';
import type { Takes } from '../book/orderStock.ts';
import { entriesIn } from '../book/search.ts';
import { findSnapshot, type Snapshot } from '../book/snapshot.ts';
import { agreedCopy } from '../check/agreedCopy.ts';
import { pieceNow } from '../check/pieceNow.ts';
import { recheck } from '../check/recheck.ts';
import type { There } from '../check/there.ts';
import { takesOf, type Work } from './takes.ts';

export type StockNow = {
  /** By its lines in the book; null where it has none. */
  readonly balance: (thing: string) => Balance | null;
  /** Pieces, or mm of wire; null where nobody counts. */
  readonly onHand: (thing: string) => number | null;
  /** Promised to agreed orders; 0 where the book doesn't count it. */
  readonly reserved: (thing: string) => number;
  /** What may still be promised, below 0 where too much was; null where nobody counts. */
  readonly free: (thing: string) => number | null;
  /** What an order may take: what is free, and what is its own. null: of one that isn't in the book yet. */
  readonly thereFor: (entry: Pick<Entry, 'document' | 'state'> | null) => There;
  /** Agreed orders that take of a thing, and how much, the oldest first. */
  readonly reservedBy: (thing: string) => readonly { readonly number: string; readonly amount: number }[];
};

type Reserve = { readonly number: string; readonly amounts: ReadonlyMap<string, number> };

const NO_RESERVES: readonly Reserve[] = [];

/** Reserves once reckoned, while neither stock, agreed orders nor catalogue are others. */
const kept = new WeakMap<
  DatabaseSync,
  { readonly key: string; readonly catalogue: Catalogue; readonly reserves: readonly Reserve[] }
>();

/**
 * @param book null where it can't be used: then files alone say what there is
 * @param catalogue as it is published: what orders are sized by
 * @throws BookError
 */
export function stockNow(book: Book | null, catalogue: Catalogue): StockNow {
  const counted = book === null ? new Map<string, Balance>() : balances(book);
  const reserves = book === null || counted.size === 0 ? NO_RESERVES : reservesOf(book, catalogue, counted);
  const sums = new Map<string, number>();
  for (const { amounts } of reserves) {
    for (const [thing, amount] of amounts) sums.set(thing, (sums.get(thing) ?? 0) + amount);
  }
  const onHand = (thing: string): number | null =>
    counted.get(thing)?.amount ?? catalogue.components[thing]?.stock ?? null;
  const reserved = (thing: string): number => (counted.has(thing) ? (sums.get(thing) ?? 0) : 0);
  const free = (thing: string): number | null => {
    const there = onHand(thing);
    return there === null ? null : there - reserved(thing);
  };
  const own = (entry: Pick<Entry, 'document' | 'state'>): ReadonlyMap<string, number> => {
    const { number } = entry.document;
    if (book !== null && entry.state !== 'agreed') return takenBy(book, number);
    return reserves.find((one) => one.number === number)?.amounts ?? new Map<string, number>();
  };
  return {
    balance: (thing) => counted.get(thing) ?? null,
    onHand,
    reserved,
    free,
    thereFor: (entry) => {
      if (entry === null || counted.size === 0) return free;
      const mine = own(entry);
      return (thing) => {
        const left = free(thing);
        return left === null || !counted.has(thing) ? left : left + (mine.get(thing) ?? 0);
      };
    },
    reservedBy: (thing) =>
      counted.has(thing)
        ? reserves.flatMap(({ number, amounts }) => {
            const amount = amounts.get(thing) ?? 0;
            return amount === 0 ? [] : [{ number, amount }];
          })
        : [],
  };
}

/**
 * A catalogue's parts with what is free of each in place of what its files say, for whatever lays out a new piece.
 * What the book doesn't count keeps its file's number.
 */
export function withFree<Parts extends Pick<Catalogue, 'components'>>(parts: Parts, stock: StockNow): Parts {
  const components = Object.entries(parts.components).map(([id, component]) => {
    const free = stock.balance(id) === null ? null : stock.free(id);
    return [id, free === null ? component : { ...component, stock: Math.max(0, free) }] as const;
  });
  return { ...parts, components: Object.fromEntries(components) };
}

function reservesOf(
  book: Book,
  catalogue: Catalogue,
  counted: ReadonlyMap<string, Balance>,
): readonly Reserve[] {
  const agreed = prepared(
    book,
    `SELECT number || ' ' || version AS line FROM orders WHERE state = 'agreed' ORDER BY number`,
  ).all();
  const key = JSON.stringify([
    agreed.map(({ line }) => line),
    [...counted].map(([thing, { amount }]) => [thing, amount]),
  ]);
  const known = kept.get(book.db);
  if (known?.key === key && known.catalogue === catalogue) return known.reserves;
  const left = new Map([...counted].map(([thing, { amount }]) => [thing, amount]));
  const there: There = (thing) => left.get(thing) ?? catalogue.components[thing]?.stock ?? null;
  const reserves = entriesIn(book, ['agreed']).flatMap((entry): Reserve[] => {
    const takes = takesOfEntry(book, catalogue, entry, there);
    if (takes === null) return [];
    const amounts = amountsOf(takes);
    for (const [thing, amount] of amounts) {
      const before = left.get(thing);
      if (before !== undefined) left.set(thing, before - amount);
    }
    return [{ number: entry.document.number, amounts }];
  });
  kept.set(book.db, { key, catalogue, reserves });
  return reserves;
}

/** What an order takes in all, by thing. */
export function amountsOf({ parts, cuts }: Takes): ReadonlyMap<string, number> {
  const wires = [...cuts].map(([thing, all]) => [thing, all.reduce((sum, mm) => sum + mm, 0)] as const);
  return new Map([...parts, ...wires]);
}

/**
 * What stringing an order takes: what is strung for it now, else by the piece as it stood when the order came in;
 * null where nothing is, or can be. Throws BookError.
 */
export function takesOfEntry(book: Book, catalogue: Catalogue, entry: Entry, there: There): Takes | null {
  const { snapshotId } = entry;
  const old = (): Work | null =>
    snapshotId === null ? null : workBy(findSnapshot(book, snapshotId), entry, there);
  const work = workOf(book, catalogue, entry, there) ?? old();
  return work === null ? null : takesOf(work, catalogue.shop.stock.offcutMm);
}

/**
 * What is strung for an order: by the piece as it was agreed on, else as it stands now; null where nothing is, or
 * can be. Throws BookError.
 */
export function workOf(book: Book, catalogue: Catalogue, entry: Entry, there: There): Work | null {
  const plain = pieceNow(catalogue, entry.document.piece.id);
  return workBy(agreedCopy(book, entry, plain), entry, there) ?? workBy(plain, entry, there);
}

function workBy(plain: Snapshot | null, entry: Entry, there: There): Work | null {
  const { document, receivedAt, way } = entry;
  if (plain === null || document.made === 'ready') return null;
  const { copy, candidate } = recheck(document, plain, receivedAt, way, there);
  return copy === null || candidate === null ? null : { entry, copy, candidate };
}
