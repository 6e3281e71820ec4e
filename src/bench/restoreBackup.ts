/** An uploaded backup in the place of the book, whatever state that is in; what lies there is kept beside it first. */
import { writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { backUp, restore } from './book/backup.ts';
import { checkBackup } from './book/checkBackup.ts';
import { copyName } from './book/copies.ts';
import { replaceBook, type Replaced } from './book/replace.ts';
import { inWorkFolder } from './book/workFolder.ts';
import type { Bench } from './context/bench.ts';

/**
 * @param told `markOf` the harm in it that she was told of and wants all the same; '' for none
 * @param at ISO 8601
 * Rejects with BookError or HarmedBackup, all as it was.
 */
export function restoreBackup(
  { usable, check, settings: { bookFile } }: Pick<Bench, 'usable' | 'check' | 'settings'>,
  file: Blob,
  told: string,
  at: string,
): Promise<Replaced> {
  return inWorkFolder({ file: bookFile }, 'restore', async (folder) => {
    const source = join(folder, 'orders.sqlite');
    await writeFile(source, Buffer.from(await file.arrayBuffer()), { mode: 0o600 });
    const book = usable();
    if (book === null) return replaceBook(bookFile, source, at, told);
    // Before a copy is made that nothing is restored over.
    checkBackup(source, told);
    const aside = copyName(at);
    backUp(book, join(dirname(bookFile), aside));
    const count = restore(book, source, told);
    check.start();
    return { count, aside, carried: true };
  });
}
