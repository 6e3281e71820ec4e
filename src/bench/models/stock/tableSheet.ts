/** A table that is to be brought in: what it would do, line by line, before anything is done. */
import type { StockProblem, TableProblem } from '#words/stockCodes.ts';
import { balances } from '../../book/movements.ts';
import type { Book } from '../../book/open.ts';
import type { BadRow, GoodRow, TableKind } from '../../stock/table.ts';

export type TableSheet = {
  /** As it was pasted or read; '' before that. */
  readonly text: string;
  readonly kind: TableKind;
  /** Why it gives nothing, or was not entered; null where it did and was. */
  readonly problem: TableProblem | StockProblem | null;
  /** null before a table was looked at. */
  readonly rows: {
    readonly good: readonly GoodRow[];
    readonly bad: readonly BadRow[];
    readonly skipped: number;
  } | null;
  /** The newest line of stock when it was looked at; of a table that was entered already it is another. */
  readonly seen: number;
  /** How many lines were entered just now; null where none were. */
  readonly done: number | null;
};

/** The newest line of all; 0 for none. Throws BookError. */
export const newestLine = (book: Book): number =>
  Math.max(0, ...[...balances(book).values()].map(({ lastId }) => lastId));
