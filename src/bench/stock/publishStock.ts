/** For a publishing, which is a process of its own: the book that lies there, opened for as long as its numbers are written out. */
import { statSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { contentFolder } from '#ui/site/contentFolder.ts';
import { MIGRATIONS } from '../book/migrations.ts';
import { openBook } from '../book/open.ts';
import { historyFile } from '../content/history.ts';
import { openContent } from '../content/store.ts';
import { writeOutStock, type WrittenOut } from './writeOut.ts';

const NOTHING: WrittenOut = { written: 0, failed: [] };

/** True for a book of today's version; another is left alone, for a publishing begins none and changes none. */
function isOfToday(bookFile: string): boolean {
  if ((statSync(bookFile, { throwIfNoEntry: false })?.size ?? 0) === 0) return false;
  const db = new DatabaseSync(bookFile, { readOnly: true });
  try {
    return Number(db.prepare('PRAGMA user_version').get()?.user_version) === MIGRATIONS.length;
  } finally {
    db.close();
  }
}

/**
 * Writes out what is free into the content folder.
 * @throws Error where the book can't be read
 */
export function writeOutFrom(bookFile: string, nowMs: () => number): WrittenOut {
  if (!isOfToday(bookFile)) return NOTHING;
  const book = openBook(bookFile);
  try {
    const store = openContent({ folder: contentFolder(), historyFile: historyFile(bookFile), nowMs });
    return writeOutStock(book, store, new Date(nowMs()).toISOString());
  } finally {
    book.db.close();
  }
}
