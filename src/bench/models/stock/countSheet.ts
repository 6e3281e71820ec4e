/** The count sheet: everything of one tray or of all, with what was typed where it could not be entered. */
import type { StockProblem } from '#words/stockCodes.ts';
import { onReelOf } from '../../book/movements.ts';
import { countField } from '../../intake/stockForm.ts';
import { unitsOf } from '../../stock/amount.ts';
import type { StockNow } from '../../stock/stockNow.ts';
import type { Thing } from '../../stock/things.ts';

export type CountRow = {
  readonly thing: Thing;
  /** By the book, of wire on the reel; null where nobody counts it. */
  readonly there: number | null;
  readonly lastId: number;
  readonly typed: string;
  readonly unit: string;
  readonly problem: StockProblem | null;
};

export type CountSheet = {
  readonly rows: readonly CountRow[];
  /** Of all things, for the choice; null for none. */
  readonly trays: readonly string[];
  /** The one that is shown; null for all. */
  readonly tray: string | null;
  /** What was sent could not be entered. */
  readonly again: boolean;
  /** How many counts were entered just now; null where none were. */
  readonly done: number | null;
};

type Sent = {
  readonly form: URLSearchParams;
  readonly problems: Readonly<Record<string, StockProblem>>;
};

export function countSheet(
  stock: StockNow,
  things: readonly Thing[],
  query: URLSearchParams,
  sent: Sent | null,
): CountSheet {
  const trays = [...new Set(things.flatMap(({ tray }) => (tray === null ? [] : [tray])))];
  const tray = trays.find((one) => one === query.get('tray')) ?? null;
  const done = Number(query.get('done') ?? '');
  return {
    trays,
    tray,
    again: sent !== null,
    done: query.has('done') && Number.isInteger(done) && done >= 0 ? done : null,
    rows: things
      .filter((thing) => tray === null || thing.tray === tray)
      .map((thing) => {
        const balance = stock.balance(thing.key);
        const [usual = 'piece'] = unitsOf(thing);
        return {
          thing,
          there: balance === null ? thing.inFile : onReelOf(balance),
          lastId: balance?.lastId ?? 0,
          typed: sent?.form.get(countField.amount(thing.key)) ?? '',
          unit: sent?.form.get(countField.unit(thing.key)) ?? usual,
          problem: sent?.problems[thing.key] ?? null,
        };
      }),
  };
}
