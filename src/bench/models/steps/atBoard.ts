/** What waits to be strung, piece by piece: to be taken up alone or several of a piece together. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Book } from '../../book/open.ts';
import { begunSubjects, type Place } from '../../book/place.ts';
import type { Entry } from '../../book/entry.ts';
import { stockNow } from '../../stock/stockNow.ts';
import type { Frame } from '../frame.ts';
import { nameOf, orderedName } from '../orderDetail.ts';
import { openWorks } from '../work.ts';
import { readSubject, stepsAddress } from './subject.ts';

export type BoardOrder = {
  readonly entry: Entry;
  /** With the parts chosen instead. */
  readonly name: string;
  /** Where it was left off; null where it wasn't begun. */
  readonly begun: Place | null;
};

export type BoardGroup = {
  readonly piece: string;
  readonly name: string;
  readonly orders: readonly BoardOrder[];
};

/** A batch that was begun. */
export type BegunBatch = {
  readonly numbers: readonly string[];
  readonly address: `/${string}`;
  readonly begun: Place;
};

export type AtBoard = {
  /** In the order in which their first order is due. */
  readonly groups: readonly BoardGroup[];
  /** Batches that were begun and of which all orders still wait. */
  readonly batches: readonly BegunBatch[];
};

/** All that waits to be strung. Throws BookError. */
export function atBoard(book: Book, catalogue: Catalogue, { lang }: Frame): AtBoard {
  const begun = begunSubjects(book);
  const entries = openWorks(book, catalogue, stockNow(book, catalogue))
    .works.map(({ entry }) => entry)
    .toSorted(byDue);
  const groups = new Map<string, BoardOrder[]>();
  for (const entry of entries) {
    const { document } = entry;
    const orders = groups.get(document.piece.id) ?? [];
    const name = orderedName(catalogue, document, lang);
    groups.set(document.piece.id, [...orders, { entry, name, begun: begun.get(document.number) ?? null }]);
  }
  const waiting = new Set(entries.map(({ document }) => document.number));
  return {
    groups: [...groups].map(([piece, orders]) => ({ piece, name: nameOf(catalogue, piece, lang), orders })),
    batches: [...begun].flatMap(([text, place]): BegunBatch[] => {
      const subject = readSubject(text);
      if (subject?.kind !== 'batch' || !subject.numbers.every((number) => waiting.has(number))) return [];
      return [{ numbers: subject.numbers, address: stepsAddress(subject), begun: place }];
    }),
  };
}

/** The soonest due first; what has no day comes after, as it came in. */
function byDue(one: Entry, other: Entry): number {
  const [a, b] = [one.dueOn ?? '9', other.dueOn ?? '9'];
  if (a !== b) return a < b ? -1 : 1;
  return one.receivedAt < other.receivedAt ? -1 : 1;
}
