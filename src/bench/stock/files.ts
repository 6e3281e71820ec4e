/** The numbers that files say beside those of the book: to take over, changed by hand, or still to be written out. */
import type { Book } from '../book/open.ts';
import { writtenStock } from '../book/writtenStock.ts';
import type { StockNow } from './stockNow.ts';
import type { Thing } from './things.ts';

/** What the shop shall size with: what is free, and never less than nothing. */
export const toWrite = (stock: StockNow, key: string): number => Math.max(0, stock.free(key) ?? 0);

export type FileStanding = {
  /** Their files have a number, and nobody has counted them in the book. */
  readonly toBegin: readonly Thing[];
  /** Their files say something else than when they were last in step: she wrote it there by hand. */
  readonly byHand: readonly { readonly thing: Thing; readonly free: number }[];
  /** What is to be written out at the next publishing. */
  readonly toWrite: readonly { readonly thing: Thing; readonly free: number }[];
};

/**
 * How files and book stand to each other; wires have no number in their files.
 * @param things with the numbers of the files as they lie there now
 */
export function fileStanding(book: Book, stock: StockNow, things: readonly Thing[]): FileStanding {
  const written = writtenStock(book);
  const parts = things.filter(({ wire }) => !wire);
  const counted = parts.filter(({ key }) => stock.balance(key) !== null);
  const inStep = ({ key, inFile }: Thing): boolean => (written.get(key) ?? null) === inFile;
  const withFree = (thing: Thing) => ({ thing, free: toWrite(stock, thing.key) });
  return {
    toBegin: parts.filter(({ key, inFile }) => inFile !== null && stock.balance(key) === null),
    byHand: counted
      .filter((thing) => !inStep(thing))
      .map(withFree)
      .filter(({ thing, free }) => thing.inFile !== free),
    toWrite: counted
      .filter((thing) => inStep(thing))
      .map(withFree)
      .filter(({ thing, free }) => thing.inFile !== free),
  };
}
