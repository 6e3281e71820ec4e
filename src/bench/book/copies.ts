/** Copies of the book that the bench itself keeps beside it: what it held before a backup was restored, and files that were damaged. */
import { readdirSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { filesOf, isSound, openBook, type Book } from './open.ts';
import { BookError } from './problem.ts';

const COPY = /^(before|damaged)-[\dTZ-]+\.sqlite$/;

export type Copy = {
  readonly name: string;
  readonly file: string;
  /** When it was made, ISO 8601. */
  readonly at: string;
};

const inName = (at: string): string => at.replace(/[:.]/g, '-');

/** Name of the copy made at an instant, ISO 8601. */
export const copyName = (at: string): string => `before-${inName(at)}.sqlite`;

/** Name of a damaged book that was set aside at an instant, ISO 8601. */
export const damagedName = (at: string): string => `damaged-${inName(at)}.sqlite`;

/** Whether a name is that of such a copy. */
export const isCopyName = (name: string): boolean => COPY.test(name);

/** Deletes a copy with what SQLite keeps beside it. @returns false where there is none of that name */
export function deleteCopy(book: Pick<Book, 'file'>, name: string): boolean {
  const copy = copiesOf(book).find((one) => one.name === name);
  if (copy === undefined) return false;
  for (const file of filesOf(copy.file)) rmSync(file, { force: true });
  return true;
}

/** The copies beside a book, oldest first. */
export function copiesOf(book: Pick<Book, 'file'>): Copy[] {
  const home = dirname(book.file);
  return readdirSync(home)
    .filter((name) => COPY.test(name))
    .toSorted()
    .map((name) => {
      const file = join(home, name);
      return { name, file, at: statSync(file).mtime.toISOString() };
    });
}

/**
 * Does the same in every copy as in the book.
 * @returns names of the copies that could not be opened or written, which she has to delete herself
 */
export function inEveryCopy(book: Book, work: (copy: Book) => void): string[] {
  return copiesOf(book).flatMap(({ file }) => {
    try {
      const copy = openBook(file);
      try {
        work(copy);
        // In pages that SQLite no longer finds, what was to go may stand still.
        if (!isSound(copy)) return [basename(file)];
      } finally {
        copy.db.close();
      }
      return [];
    } catch (error) {
      if (!(error instanceof BookError)) throw error;
      return [basename(file)];
    }
  });
}
