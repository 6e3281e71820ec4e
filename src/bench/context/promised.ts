/** For the build of the shop: which pieces that lay finished are promised, by the order book beside it. */
import { existsSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { promisedPieces } from '../book/ready.ts';

/** None where there is no book here, or it can't be read: a shop can be built without one, and the desk knows all the same. */
export function promisedIn(bookFile: string): ReturnType<typeof promisedPieces> {
  if (!existsSync(bookFile)) return [];
  try {
    const db = new DatabaseSync(bookFile, { readOnly: true });
    try {
      return promisedPieces({ db, file: bookFile });
    } finally {
      db.close();
    }
  } catch {
    return [];
  }
}
