/** Copies of the book that the bench itself keeps beside it: what it held before a backup was restored. */
import { readdirSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { openBook, type Book } from './open.ts';
import { BookError } from './problem.ts';

const COPY = /^before-[\dTZ-]+\.sqlite$/;

export type Copy = {
  readonly name: string;
  readonly file: string;
  /** When it was made, ISO 8601. */
  readonly at: string;
};

/** Name of the copy made at an instant, ISO 8601. */
export const copyName = (at: string): string => `before-${at.replace(/[:.]/g, '-')}.sqlite`;

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
