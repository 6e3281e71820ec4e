/** One thing of the stock: its figures, what came and went, and the form as it was filled in. */
import type { StockProblem } from '#words/stockCodes.ts';
import { movementsOf, onReelOf, type Movement } from '../../book/movements.ts';
import type { Book } from '../../book/open.ts';
import type { StockNow } from '../../stock/stockNow.ts';
import type { Thing } from '../../stock/things.ts';
import { stockRow, type StockRow } from './stockList.ts';

/** A form that could not be done, as it was filled in. */
export type StockAttempt = { readonly form: URLSearchParams; readonly problem: StockProblem };

export type ThingLine = {
  readonly line: Movement;
  /** What there was after it. */
  readonly after: number;
  /** She entered it herself, and it counts still. */
  readonly strikable: boolean;
};

export type ThingSheet = StockRow & {
  /** Of wire, what is on the reel. */
  readonly onReel: number;
  /** Lengths of offcuts, mm, the longest first. */
  readonly offcuts: readonly number[];
  readonly reservedBy: ReturnType<StockNow['reservedBy']>;
  /** The newest first. */
  readonly lines: readonly ThingLine[];
  readonly lastId: number;
  readonly attempt: StockAttempt | null;
  /** What was entered just now is done. */
  readonly done: boolean;
};

/** Throws BookError. */
export function thingSheet(
  book: Book,
  stock: StockNow,
  thing: Thing,
  said: { readonly attempt: StockAttempt | null; readonly done: boolean },
): ThingSheet {
  const balance = stock.balance(thing.key);
  let after = balance?.amount ?? 0;
  const lines = movementsOf(book, thing.key).map((line): ThingLine => {
    const { kind, number, struckBy } = line;
    const one = { line, after, strikable: kind !== 'struck' && number === null && struckBy === null };
    after -= line.amount;
    return one;
  });
  return {
    ...stockRow(thing, stock),
    onReel: balance === null ? 0 : onReelOf(balance),
    offcuts: balance?.offcuts ?? [],
    reservedBy: stock.reservedBy(thing.key),
    lines,
    lastId: balance?.lastId ?? 0,
    ...said,
  };
}
