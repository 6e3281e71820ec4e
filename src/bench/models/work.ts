/** Orders still to be strung, each with what it takes by its piece as it stands now. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { tally } from '#core/design/tally.ts';
import { minutesOf } from '#core/sizing/price/minutes.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Entry } from '../book/entry.ts';
import type { Book } from '../book/open.ts';
import { entriesIn } from '../book/search.ts';
import type { Snapshot } from '../book/snapshot.ts';
import { pieceNow } from '../check/pieceNow.ts';
import { isRestring, newParts } from '../check/restring.ts';
import { recheck } from '../check/recheck.ts';

export type Work = {
  readonly entry: Entry;
  readonly copy: Snapshot;
  readonly candidate: Candidate;
};

/** Orders still to be strung. */
export const TO_STRING: readonly Entry['state'][] = ['new', 'asked', 'agreed'];

/** What can be strung, and the numbers of orders from which nothing can as they are. */
export type Works = { readonly works: readonly Work[]; readonly leftOut: readonly string[] };

/** Work of all orders still to be strung, oldest first. Throws BookError. */
export function openWorks(book: Book, catalogue: Catalogue): Works {
  return worksOf(entriesIn(book, TO_STRING), catalogue);
}

/** Work of some orders, in turn; what goes as it lies takes none. */
export function worksOf(entries: readonly Entry[], catalogue: Catalogue): Works {
  const toString = entries.filter(({ document }) => document.made !== 'ready');
  const all = toString.map((entry) => workOf(entry, catalogue));
  return {
    works: all.filter((work) => work !== null),
    leftOut: toString.filter((_, at) => all[at] === null).map(({ document }) => document.number),
  };
}

function workOf(entry: Entry, catalogue: Catalogue): Work | null {
  const plain = pieceNow(catalogue, entry.document.piece.id);
  const { copy, candidate } = recheck(entry.document, plain, entry.receivedAt, entry.way);
  return copy === null || candidate === null ? null : { entry, copy, candidate };
}

/** Components that all pieces of an order take together, by id. */
export function partsOf({ entry, copy, candidate }: Work): ReadonlyMap<string, number> {
  const { document, way } = entry;
  const fresh = isRestring(document, way) ? newParts(copy.design) : null;
  const taken = [...tally(copy.design, candidate.counts)].filter(([id]) => fresh?.has(id) !== false);
  return new Map(taken.map(([id, count]) => [id, count * document.quantity]));
}

/** Minutes that all pieces of an order take together, by the shop's rule. */
export function minutesOfWork({ entry, copy, candidate }: Work): number {
  return entry.document.quantity * minutesOf(copy.design, candidate.counts, copy.rules);
}
