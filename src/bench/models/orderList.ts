/** The order book's list as its page shows it. */
import { dayOf } from '#words/day.ts';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { ORDER_STATES, type OrderState } from '#words/benchCodes.ts';
import type { Entry, Unreadable } from '../book/entry.ts';
import { unkept } from '../book/keptDigest.ts';
import { lastMovementAt } from '../book/movements.ts';
import type { Book } from '../book/open.ts';
import { named } from '../book/problem.ts';
import { paymentsOf } from '../book/payments.ts';
import { countByState, PAGE_SIZE, search, type Filter } from '../book/search.ts';
import { findSnapshot } from '../book/snapshot.ts';
import { pieceNow } from '../check/pieceNow.ts';
import { readyDifferences, standingOf } from '../check/ready.ts';
import { lengthsOf } from '../check/lengths.ts';
import { recheck } from '../check/recheck.ts';
import type { Frame } from './frame.ts';
import { orderedName } from './orderDetail.ts';
import { moneyOf, type Money } from './money.ts';
import { stockNow, type StockNow } from '../stock/stockNow.ts';
import { TO_STRING } from './work.ts';

export type ListRow = {
  readonly entry: Entry;
  readonly pieceName: string;
  /** Null where the catalogue has the piece no more, and so no picture of it. */
  readonly pictured: string | null;
  /** Finished lengths as they will be made, or were: the maker's own figures where there are any. */
  readonly lengthsMm: readonly number[];
  readonly late: boolean;
  readonly differs: boolean;
  /** Something in it, or in what she entered of it, was changed on the disk. */
  readonly damaged: boolean;
  /** Something is still to be strung, so its card is one click away. */
  readonly hasCard: boolean;
  /** Null where the book kept none. */
  readonly money: Money | null;
};

export type OrderList = {
  readonly rows: readonly ListRow[];
  /** Among them, orders that can't be read any more. */
  readonly unreadable: readonly Unreadable[];
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
  const known = [...ORDER_STATES, 'open', 'late', 'owing', 'all'] as const;
  return {
    text: query.get('q') ?? '',
    state: known.find((one) => one === state) ?? 'open',
    today,
    page: Number.isInteger(page) && page > 0 && page < 1e6 ? page : 0,
  };
}

/** Gathers the list. What an order comes to and where it differs is computed again for each. Throws BookError. */
export function orderList(book: Book, catalogue: Catalogue, filter: Filter, frame: Frame): OrderList {
  const { entries, unreadable, total } = search(book, filter);
  const stock = stockNow(book, catalogue);
  const altered = unkept(
    book,
    'order',
    entries.map(({ document }) => document.number),
  );
  const rows = entries.map((entry) => ({
    ...rowOf(book, catalogue, stock, entry, frame),
    damaged: entry.damaged || altered.has(entry.document.number),
  }));
  return {
    rows,
    unreadable,
    total,
    filter,
    counts: countByState(book),
    hasEarlier: filter.page > 0,
    hasLater: (filter.page + 1) * PAGE_SIZE < total,
    clockBack: lastEntryAt(book) > frame.now,
  };
}

function rowOf(
  book: Book,
  catalogue: Catalogue,
  stock: StockNow,
  entry: Entry,
  { lang, now }: Frame,
): Omit<ListRow, 'damaged'> {
  const { document, state, dueOn, receivedAt, snapshotId, way } = entry;
  const piece = catalogue.pieces.find(({ id }) => id === document.piece.id);
  const plain = pieceNow(catalogue, document.piece.id);
  const checked = recheck(document, plain, receivedAt, way, stock.thereFor(entry));
  const standing = standingOf(book, document, receivedAt, piece);
  const old = checked.candidate === null && snapshotId !== null ? findSnapshot(book, snapshotId) : null;
  const then = old === null ? null : recheck(document, old, receivedAt, way);
  const asked = state === 'new' || state === 'asked';
  const money = moneyOf(entry, checked, then, paymentsOf(book, document.number), catalogue.shop);
  return {
    entry,
    pieceName: orderedName(catalogue, document, lang),
    pictured: piece?.id ?? null,
    lengthsMm: lengthsOf(document, asked ? checked : null),
    late: dueOn !== null && dueOn < dayOf(now) && state !== 'sent' && state !== 'cancelled',
    differs: asked && checked.differences.length + readyDifferences(standing, state).length > 0,
    hasCard:
      document.made !== 'ready' &&
      TO_STRING.includes(state) &&
      (checked.candidate ?? then?.candidate ?? null) !== null,
    money: money.kept ? money : null,
  };
}

function lastEntryAt(book: Book): string {
  const event = named(() =>
    String(book.db.prepare('SELECT coalesce(max(at), ?) AS at FROM event').get('')?.at),
  );
  const movement = lastMovementAt(book);
  return event > movement ? event : movement;
}
