/** The whole book as one file. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { backUp } from '#bench/book/backup.ts';
import { inWorkFolder } from '#bench/book/workFolder.ts';
import { dated, download } from '#bench/http/download.ts';

export const prerender = false;

export const GET: APIRoute = () => {
  const { book, nowMs } = bench();
  // Beside the book, in its private folder: a public one may be read by others.
  return inWorkFolder(book(), 'backup', async (folder) => {
    const file = join(folder, 'orders.sqlite');
    backUp(book(), file);
    return download(await readFile(file), 'application/vnd.sqlite3', dated('orders', nowMs(), 'sqlite'));
  });
};
