/** Another book in the place of one that can't be used. What lay there is set aside, not deleted. */
import { existsSync, renameSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { forgetBegun } from './begun.ts';
import { checkBackup } from './checkBackup.ts';
import { damagedName } from './copies.ts';
import { BESIDE, openBook, type Book } from './open.ts';
import { BookError, named, type BookProblem } from './problem.ts';

/** A book with one of these is replaced as a file; with any other it is waited for, or its folder is mended. */
const REPLACED: readonly BookProblem[] = ['broken', 'not-a-book', 'gone'];

export const isReplaceable = (problem: BookProblem): boolean => REPLACED.includes(problem);

export type Replaced = {
  /** How many orders the book holds now. */
  readonly count: number;
  /** Name of what was set aside; null where nothing lay there. */
  readonly aside: string | null;
  /** Whether passphrase and count of invoices could be read from what lay there, and were taken over. */
  readonly carried: boolean;
};

/**
 * Puts a backup in the place of a book that can't be used.
 * @param source beside the book; it is checked, brought to this version and moved
 * @param at ISO 8601
 * @param told `markOf` the harm in it that she was told of and wants all the same; '' for none
 * @throws BookError, HarmedBackup, all as it was
 */
export function replaceBook(file: string, source: string, at: string, told = ''): Replaced {
  checkBackup(source, told);
  openBook(source).db.close();
  const aside = setAside(file, at);
  named(() => renameSync(source, file));
  const book = openBook(file);
  try {
    const carried = aside !== null && carryOver(book, join(dirname(file), aside));
    const row = named(() => book.db.prepare('SELECT count(*) AS many FROM orders').get());
    return { count: Number(row?.many), aside, carried };
  } finally {
    book.db.close();
  }
}

/** Begins a new, empty book. @returns the name of what was set aside; null where nothing lay there. Throws BookError. */
export function beginAnew(file: string, at: string): string | null {
  const aside = setAside(file, at);
  forgetBegun(file);
  openBook(file).db.close();
  return aside;
}

function setAside(file: string, at: string): string | null {
  if (!existsSync(file)) return null;
  const name = damagedName(at);
  try {
    for (const end of ['', ...BESIDE]) {
      if (existsSync(file + end)) renameSync(file + end, join(dirname(file), name + end));
    }
  } catch (error) {
    throw new BookError('read-only', { cause: error });
  }
  return name;
}

/** Passphrase, the tablets' switch and count of invoices stay with the machine, as far as they can still be read; devices are paired anew. */
function carryOver(book: Book, from: string): boolean {
  try {
    const old = new DatabaseSync(from, { readOnly: true });
    try {
      const counts = old.prepare('SELECT prefix, last FROM invoice_count').all();
      const settings = old.prepare('SELECT name, value FROM setting').all();
      const keepCount = book.db.prepare(
        `INSERT INTO invoice_count VALUES (?, ?) ON CONFLICT (prefix) DO UPDATE SET last = max(last, excluded.last)`,
      );
      const keepSetting = book.db.prepare('INSERT OR REPLACE INTO setting VALUES (?, ?)');
      for (const { prefix, last } of counts) keepCount.run(String(prefix), Number(last));
      for (const { name, value } of settings) keepSetting.run(String(name), String(value));
      return true;
    } finally {
      old.close();
    }
  } catch {
    return false;
  }
}
