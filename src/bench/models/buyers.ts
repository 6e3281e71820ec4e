/** Buyers, gathered out of their orders: what somebody ordered before, her sizes and her hand. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Hand } from '#core/design/choice.ts';
import type { SizeFacts } from '#words/orderFacts.ts';
import type { Entry } from '../book/entry.ts';
import { fold, type Book } from '../book/open.ts';
import { allEntries } from '../book/search.ts';
import type { Frame } from './frame.ts';
import { orderedName } from './orderDetail.ts';

export type BuyerRow = {
  /** Of her newest order; her page goes by it, so that no name or address stands in an address. */
  readonly number: string;
  readonly name: string;
  /** '' for somebody with a telephone number only. */
  readonly email: string;
  readonly orders: number;
  /** When her newest order came in, ISO 8601. */
  readonly lastAt: string;
};

export type BuyerList = {
  readonly rows: readonly BuyerRow[];
  /** How many match in all. */
  readonly total: number;
  readonly text: string;
};

export type BuyerOrder = { readonly entry: Entry; readonly pieceName: string };

/** As she wrote it, with what tells which strand it is of. */
export type BuyerSize = SizeFacts & {
  /** When the newest order with it came in. */
  readonly at: string;
};

export type Buyer = {
  readonly name: string;
  /** Other names under the same address. */
  readonly otherNames: readonly string[];
  readonly email: string;
  /** Newest first. */
  readonly orders: readonly BuyerOrder[];
  /** Each once, newest first. */
  readonly sizes: readonly BuyerSize[];
  /** Of her newest order. */
  readonly hand: Hand;
};

/** More than these nobody looks through; a name narrows them. */
const MOST_ROWS = 100;

/**
 * What tells one buyer from another: her e-mail address. What stands before the
 * @ may mind capitals, what stands behind it never does (RFC 5321, 2.4). Whoever
 * gave none is a buyer by that one order: two of one name may be two people.
 */
export function buyerKey({ document }: Pick<Entry, 'document'>): string {
  const { buyer, number } = document;
  const at = buyer.email.lastIndexOf('@');
  if (at < 0) return `order ${number}`;
  return buyer.email.slice(0, at) + buyer.email.slice(at).toLowerCase();
}

/** Buyers whose names or address hold every word of `text`, the newest first; erased ones are nobody. Throws BookError. */
export function buyerList(book: Book, text: string): BuyerList {
  const words = fold(text).split(/\s+/).filter(Boolean);
  const found = [...grouped(book).values()].filter((entries) => {
    const all = fold(entries.map(({ document: { buyer } }) => `${buyer.name} ${buyer.email}`).join(' '));
    return words.every((word) => all.includes(word));
  });
  const rows = found.flatMap(rowOf).toSorted((a, b) => (a.lastAt < b.lastAt ? 1 : -1));
  return { rows: rows.slice(0, MOST_ROWS), total: rows.length, text };
}

/** The buyer of an order; null where the book has no such order, or she was erased. Throws BookError. */
export function buyerOf(book: Book, catalogue: Catalogue, number: string, { lang }: Frame): Buyer | null {
  const entries = ordersOfBuyer(book, number);
  const [newest] = entries;
  if (newest === undefined) return null;
  const names = new Set(entries.map(({ document }) => document.buyer.name));
  const { name, email } = newest.document.buyer;
  return {
    name,
    otherNames: [...names].filter((one) => one !== name),
    email,
    orders: entries.map((entry) => ({
      entry,
      pieceName: orderedName(catalogue, entry.document, lang),
    })),
    sizes: sizesOf(entries),
    // Of a piece as it lies nobody is asked.
    hand: (entries.find(({ document }) => document.made !== 'ready') ?? newest).document.hand,
  };
}

/** All orders of the buyer of one order, newest first; none where she was erased. Throws BookError. */
export function ordersOfBuyer(book: Book, number: string): Entry[] {
  return [...grouped(book).values()].find((all) => all.some((one) => one.document.number === number)) ?? [];
}

/** Orders by buyer, hers newest first. */
function grouped(book: Book): Map<string, Entry[]> {
  const buyers = new Map<string, Entry[]>();
  for (const entry of allEntries(book).toReversed()) {
    if (entry.erasedAt !== null) continue;
    const key = buyerKey(entry);
    const known = buyers.get(key);
    if (known === undefined) buyers.set(key, [entry]);
    else known.push(entry);
  }
  return buyers;
}

function rowOf(entries: readonly Entry[]): BuyerRow[] {
  const [newest] = entries;
  if (newest === undefined) return [];
  const { document, receivedAt } = newest;
  const { name, email } = document.buyer;
  return [{ number: document.number, name, email, orders: entries.length, lastAt: receivedAt }];
}

function sizesOf(entries: readonly Entry[]): BuyerSize[] {
  const sized = entries.filter(({ document }) => document.made !== 'ready');
  const sizes = sized.map(({ document: { measure, made, shown }, receivedAt }) => {
    const text = measure.text === '' ? `${measure.mm} mm` : measure.text;
    return { measure: { of: measure.of, text }, made, shown, at: receivedAt };
  });
  const same = (one: BuyerSize, { measure }: BuyerSize): boolean =>
    one.measure.of === measure.of && one.measure.text === measure.text;
  return sizes.filter((size, at) => sizes.findIndex((one) => same(one, size)) === at);
}
