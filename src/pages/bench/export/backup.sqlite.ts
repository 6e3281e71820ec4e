/** The whole book as one file. */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { backUp } from '#bench/book/backup.ts';
import { dated, download } from '#bench/http/download.ts';

export const prerender = false;

export const GET: APIRoute = async () => {
  const { book, nowMs } = bench();
  // Beside the book, in its private folder: a public one may be read by others.
  const folder = await mkdtemp(join(dirname(book().file), 'backup-'));
  try {
    const file = join(folder, 'orders.sqlite');
    backUp(book(), file);
    return download(await readFile(file), 'application/vnd.sqlite3', dated('orders', nowMs(), 'sqlite'));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
};
