/** `POST`: puts a backup in the book's place, the book beside it first. */
import { writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { bookProblem, troubleResponse } from '#bench/access/refusal.ts';
import { backUp, restore } from '#bench/book/backup.ts';
import { copyName } from '#bench/book/copies.ts';
import { BookError } from '#bench/book/problem.ts';
import { inWorkFolder } from '#bench/book/workFolder.ts';
import { readFileForm, seeOther } from '#bench/http/readForm.ts';

export const prerender = false;

/** A book of a hundred thousand orders. */
const MOST_BYTES = 512 * 1024 * 1024;

export const POST: APIRoute = async ({ request }) => {
  const { book, nowMs } = bench();
  const form = await readFileForm(request, MOST_BYTES);
  if (form === null) return troubleResponse({ code: 'upload-too-large' }, 413, request);
  const file = form.get('backup');
  if (!(file instanceof Blob) || form.get('sure') !== 'yes') {
    return troubleResponse({ code: 'bad-form' }, 400, request);
  }
  try {
    const kept = copyName(new Date(nowMs()).toISOString());
    const count = await inWorkFolder(book(), 'restore', async (folder) => {
      const source = join(folder, 'orders.sqlite');
      await writeFile(source, Buffer.from(await file.arrayBuffer()));
      backUp(book(), join(dirname(book().file), kept));
      return restore(book(), source);
    });
    return seeOther(`/bench/keep/?done=restored&count=${count}&kept=${kept}`);
  } catch (error) {
    if (!(error instanceof BookError)) throw error;
    return troubleResponse(bookProblem(error.problem), 422, request);
  }
};
