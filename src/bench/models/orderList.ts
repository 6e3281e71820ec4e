/** The order book's list as its page shows it. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { textsOf } from '#catalogue/model/catalogue.ts';
import { ORDER_STATES, type OrderState } from '#words/benchCodes.ts';
import type { Entry } from '../book/entry.ts';
import type { Book } from '../book/open.ts';
import { named } from '../book/problem.ts';
import { countByState, PAGE_SIZE, search, type Filter } from '../book/search.ts';
import { pieceNow } from '../check/pieceNow.ts';
import { recheck } from '../check/recheck.ts';
import type { Frame } from './frame.ts';

export type ListRow = {
  readonly entry: Entry;
  readonly pieceName: string;
  /** Null where the catalogue has the piece no more, and so no picture of it. */
  readonly pictured: string | null;
  /** Finished length as it will be made, or was: the maker's own figure where there is one. */
  readonly lengthMm: number;
  readonly late: boolean;
  readonly differs: boolean;
};

export type OrderList = {
  readonly rows: readonly ListRow[];
  readonly total: number;
  readonly filter: Filter;
  readonly counts: Readonly<Record<OrderState, number>>;
  readonly hasEarlier: boolean;
  readonly hasLater: boolean;
  /** True where the clock stands before the book's last entry. */
  readonly clockBack: boolean;
};

/** Reads the filter of an address; anything unknown is left out. */
export function filterOf(query: URLSearchParams, today: string): Filter {
  const state = query.get('state') ?? 'open';
  const page = Number(query.get('page') ?? 0);
  const known = [...ORDER_STATES, 'open', 'late', 'all'] as const;
  return {
    text: query.get('q') ?? '',
    state: known.find((one) => one === state) ?? 'open',
    today,
    page: Number.isInteger(page) && page > 0 && page < 1e6 ? page : 0,
  };
}

/** Gathers the list. Every order still open is computed again, so that a difference shows here already. Throws BookError. */
export function orderList(book: Book, catalogue: Catalogue, filter: Filter, frame: Frame): OrderList {
  const { entries, total } = search(book, filter);
  const rows = entries.map((entry): ListRow => {
    const { document, state } = entry;
    const piece = catalogue.pieces.find(({ id }) => id === document.piece.id);
    const open = state === 'new' || state === 'asked';
    const checked = open ? recheck(document, pieceNow(catalogue, document.piece.id), entry.receivedAt) : null;
    return {
      entry,
      pieceName: piece === undefined ? document.piece.id : textsOf(piece, frame.lang).name,
      pictured: piece?.id ?? null,
      lengthMm: checked?.candidate?.finishedLengthMm ?? document.shown.lengthMm,
      late: entry.dueOn !== null && entry.dueOn < filter.today && state !== 'sent' && state !== 'cancelled',
      differs: checked !== null && checked.differences.length > 0,
    };
  });
  return {
    rows,
    total,
    filter,
    counts: countByState(book),
    hasEarlier: filter.page > 0,
    hasLater: (filter.page + 1) * PAGE_SIZE < total,
    clockBack: lastEntryAt(book) > frame.now,
  };
}

function lastEntryAt(book: Book): string {
  return named(() => String(book.db.prepare('SELECT coalesce(max(at), ?) AS at FROM event').get('')?.at));
}
