/** Writes what is free into the files of what is counted, so that the shop sizes with it. */
import type { ContentStore } from '../content/store.ts';
import { inOneWrite, type Book } from '../book/open.ts';
import { noteWritten } from '../book/writtenStock.ts';
import { fileStanding, toWrite } from './files.ts';
import { stockNow } from './stockNow.ts';
import { thingsOf } from './things.ts';

export type WrittenOut = {
  /** How many numbers stand in their files now. */
  readonly written: number;
  /** Short names of those that could not be written: their files say what they said. */
  readonly failed: readonly string[];
};

/**
 * Writes out whatever isn't in step, save what she changed by hand: that waits
 * for her. A file is written before it is noted, so that a crash between the
 * two asks her once too often and overwrites nothing.
 * @param only these components alone, by hand changed or not; null for all that wait
 * @throws BookError
 */
export function writeOutStock(
  book: Book,
  store: ContentStore,
  at: string,
  only: readonly string[] | null = null,
): WrittenOut {
  const { catalogue } = store.reading();
  if (catalogue === null) return { written: 0, failed: only ?? [] };
  const stock = stockNow(book, catalogue);
  const wanted =
    only ?? fileStanding(book, stock, thingsOf(catalogue, 'en')).toWrite.map(({ thing }) => thing.key);
  const numbers = new Map(wanted.map((key) => [key, toWrite(stock, key)]));
  const written = new Set<string>();
  for (const { ids, saved } of store.saveStock(numbers)) {
    if (!saved.ok) continue;
    inOneWrite(book, () => {
      for (const id of ids) noteWritten(book, id, numbers.get(id) ?? 0, at);
    });
    for (const id of ids) written.add(id);
  }
  return { written: written.size, failed: wanted.filter((id) => !written.has(id)) };
}
