/** `POST`: puts a backup in the book's place, whatever state that is in; what lies there is kept beside it first. */
import { writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { backupProblem, troubleResponse } from '#bench/access/refusal.ts';
import { backUp, restore } from '#bench/book/backup.ts';
import { copyName } from '#bench/book/copies.ts';
import { BookError } from '#bench/book/problem.ts';
import { replaceBook } from '#bench/book/replace.ts';
import { inWorkFolder } from '#bench/book/workFolder.ts';
import { readFileForm, seeOther } from '#bench/http/readForm.ts';
import { restoredLocation } from '#bench/models/keeping.ts';

export const prerender = false;

/** A book of a hundred thousand orders. */
const MOST_BYTES = 512 * 1024 * 1024;

export const POST: APIRoute = async ({ request }) => {
  const { usable, settings, nowMs } = bench();
  const { bookFile } = settings;
  const form = await readFileForm(request, MOST_BYTES);
  if ('code' in form) return troubleResponse({ code: form.code }, form.status, request);
  const file = form.get('backup');
  if (!(file instanceof Blob) || form.get('sure') !== 'yes') {
    return troubleResponse({ code: 'bad-form' }, 400, request);
  }
  const at = new Date(nowMs()).toISOString();
  try {
    const replaced = await inWorkFolder({ file: bookFile }, 'restore', async (folder) => {
      const source = join(folder, 'orders.sqlite');
      await writeFile(source, Buffer.from(await file.arrayBuffer()), { mode: 0o600 });
      const book = usable();
      if (book === null) return replaceBook(bookFile, source, at);
      const aside = copyName(at);
      backUp(book, join(dirname(bookFile), aside));
      return { count: restore(book, source), aside, carried: true };
    });
    return seeOther(restoredLocation(replaced));
  } catch (error) {
    if (!(error instanceof BookError)) throw error;
    return troubleResponse(backupProblem(error.problem), 422, request);
  }
};
