/** Orders still to be strung, each with what is strung for it. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { minutesOf } from '#core/sizing/price/minutes.ts';
import type { Entry } from '../book/entry.ts';
import type { Book } from '../book/open.ts';
import { entriesIn } from '../book/search.ts';
import { workOf, type StockNow } from '../stock/stockNow.ts';
import type { Work } from '../stock/takes.ts';

/** Orders still to be strung. */
export const TO_STRING: readonly Entry['state'][] = ['new', 'asked', 'agreed'];

/** What can be strung, and the numbers of orders from which nothing can as they are. */
export type Works = { readonly works: readonly Work[]; readonly leftOut: readonly string[] };

/** Work of all orders still to be strung, oldest first. Throws BookError. */
export function openWorks(book: Book, catalogue: Catalogue, stock: StockNow): Works {
  return worksOf(book, entriesIn(book, TO_STRING), catalogue, stock);
}

/** Work of some orders, in turn; what goes as it lies takes none. */
export function worksOf(book: Book, entries: readonly Entry[], catalogue: Catalogue, stock: StockNow): Works {
  const toString = entries.filter(({ document }) => document.made !== 'ready');
  const all = toString.map((entry) => workOf(book, catalogue, entry, stock.thereFor(entry)));
  return {
    works: all.filter((work) => work !== null),
    leftOut: toString.filter((_, at) => all[at] === null).map(({ document }) => document.number),
  };
}

/** Minutes that all pieces of an order take together, by the shop's rule. */
export function minutesOfWork({ entry, copy, candidate }: Work): number {
  return entry.document.quantity * minutesOf(copy.design, candidate.counts, copy.rules);
}
