/** All that can be counted, from tray to tray: what is there, what is promised, and what runs low. */
import type { Book } from '../../book/open.ts';
import { lastMovementAt } from '../../book/movements.ts';
import { fileStanding, type FileStanding } from '../../stock/files.ts';
import type { StockNow } from '../../stock/stockNow.ts';
import type { Thing } from '../../stock/things.ts';
import type { Frame } from '../frame.ts';

export const STOCK_SHOWS = ['all', 'counted', 'low'] as const;
export type StockShow = (typeof STOCK_SHOWS)[number];

export type StockRow = {
  readonly thing: Thing;
  /** null where nobody counts it. */
  readonly onHand: number | null;
  readonly reserved: number;
  readonly free: number | null;
  /** Fewer are free than are to be kept. */
  readonly low: boolean;
  /** More is promised than there is. */
  readonly short: boolean;
  /** Counted in the book, and not only in its file. */
  readonly counted: boolean;
};

export type StockList = {
  readonly rows: readonly StockRow[];
  readonly text: string;
  readonly show: StockShow;
  readonly anyCounted: boolean;
  readonly files: FileStanding;
  /** The clock stands before the last line. */
  readonly clockBack: boolean;
};

export function stockRow(thing: Thing, stock: StockNow): StockRow {
  const { key, keep } = thing;
  const onHand = stock.onHand(key);
  const free = stock.free(key);
  return {
    ...{ thing, onHand, free, reserved: stock.reserved(key) },
    low: free !== null && keep !== null && free < keep,
    short: free !== null && free < 0,
    counted: stock.balance(key) !== null,
  };
}

/** Reads what an address asks for; anything unknown is left out. */
export function stockList(
  book: Book,
  stock: StockNow,
  things: readonly Thing[],
  query: URLSearchParams,
  { now }: Frame,
): StockList {
  const text = (query.get('q') ?? '').slice(0, 100);
  const show = STOCK_SHOWS.find((one) => one === query.get('show')) ?? 'all';
  const words = text.toLowerCase().split(/\s+/);
  const rows = things.map((thing) => stockRow(thing, stock));
  return {
    ...{ text, show },
    rows: rows.filter((row) => isShown(row, show) && isFound(row.thing, words)),
    anyCounted: rows.some(({ counted }) => counted),
    files: fileStanding(book, stock, things),
    clockBack: lastMovementAt(book) > now,
  };
}

function isShown({ counted, low, short, onHand }: StockRow, show: StockShow): boolean {
  if (show === 'counted') return counted || onHand !== null;
  return show === 'all' || low || short;
}

function isFound({ id, name, number, tray }: Thing, words: readonly string[]): boolean {
  const text = [id, name, number, tray].join(' ').toLowerCase();
  return words.every((word) => text.includes(word));
}
