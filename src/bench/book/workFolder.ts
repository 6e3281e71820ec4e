/**
 * Folders beside the book in which copies of it lie for a moment. A process that
 * is killed meanwhile leaves its folder behind; the next one takes it away, so
 * that no copy outlives the erasing of a buyer unseen.
 */
import { readdirSync, rmSync, statSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Book } from './open.ts';

/** Named after the process, so that another bench's present work is left alone. */
const FOLDER = /^(?:backup|restore)-(?:(\d+)-)?\w{6}$/;
/** A folder that names no process, of an older version, is left over after an hour. */
const LEFT_OVER_MS = 3_600_000;

/** Runs `work` in a new folder beside the book, private to the maker's account, and removes it with all it holds. */
export async function inWorkFolder<T>(
  book: Pick<Book, 'file'>,
  purpose: 'backup' | 'restore',
  work: (folder: string) => Promise<T>,
): Promise<T> {
  const folder = await mkdtemp(join(dirname(book.file), `${purpose}-${process.pid}-`));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/**
 * Removes what processes that are gone have left beside the book.
 * @returns the names of the folders removed
 */
export function sweepWorkFolders(bookFile: string, nowMs: number): string[] {
  const home = dirname(bookFile);
  const left = readdirSync(home).filter((name) => {
    const found = FOLDER.exec(name);
    if (found === null) return false;
    const [, pid] = found;
    if (pid !== undefined) return !isRunning(Number(pid));
    return nowMs - statSync(join(home, name)).mtimeMs > LEFT_OVER_MS;
  });
  for (const name of left) rmSync(join(home, name), { recursive: true, force: true });
  return left;
}

function isRunning(pid: number): boolean {
  if (pid === process.pid) return true;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // A process of another account is one all the same.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
