/** Orders still to be strung, each with what it takes by its piece as it stands now. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { minutesOf } from '#core/sizing/price/minutes.ts';
import type { Entry } from '../book/entry.ts';
import type { Book } from '../book/open.ts';
import { entriesIn } from '../book/search.ts';
import { pieceNow } from '../check/pieceNow.ts';
import { recheck } from '../check/recheck.ts';
import type { StockNow } from '../stock/stockNow.ts';
import type { Work } from '../stock/takes.ts';

/** Orders still to be strung. */
export const TO_STRING: readonly Entry['state'][] = ['new', 'asked', 'agreed'];

/** What can be strung, and the numbers of orders from which nothing can as they are. */
export type Works = { readonly works: readonly Work[]; readonly leftOut: readonly string[] };

/** Work of all orders still to be strung, oldest first. Throws BookError. */
export function openWorks(book: Book, catalogue: Catalogue, stock: StockNow): Works {
  return worksOf(entriesIn(book, TO_STRING), catalogue, stock);
}

/** Work of some orders, in turn; what goes as it lies takes none. */
export function worksOf(entries: readonly Entry[], catalogue: Catalogue, stock: StockNow): Works {
  const toString = entries.filter(({ document }) => document.made !== 'ready');
  const all = toString.map((entry) => workOf(entry, catalogue, stock));
  return {
    works: all.filter((work) => work !== null),
    leftOut: toString.filter((_, at) => all[at] === null).map(({ document }) => document.number),
  };
}

function workOf(entry: Entry, catalogue: Catalogue, stock: StockNow): Work | null {
  const plain = pieceNow(catalogue, entry.document.piece.id);
  const there = stock.thereFor(entry);
  const { copy, candidate } = recheck(entry.document, plain, entry.receivedAt, entry.way, there);
  return copy === null || candidate === null ? null : { entry, copy, candidate };
}

/** Minutes that all pieces of an order take together, by the shop's rule. */
export function minutesOfWork({ entry, copy, candidate }: Work): number {
  return entry.document.quantity * minutesOf(copy.design, candidate.counts, copy.rules);
}
