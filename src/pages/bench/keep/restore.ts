/** `POST`: puts a backup in the book's place, the book beside it first. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { bookProblem, troubleResponse } from '#bench/access/refusal.ts';
import { backUp, restore } from '#bench/book/backup.ts';
import { BookError } from '#bench/book/problem.ts';
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
  const home = dirname(book().file);
  const folder = await mkdtemp(join(home, 'restore-'));
  try {
    const source = join(folder, 'orders.sqlite');
    await writeFile(source, Buffer.from(await file.arrayBuffer()));
    const kept = join(home, `before-${new Date(nowMs()).toISOString().replace(/[:.]/g, '-')}.sqlite`);
    backUp(book(), kept);
    const count = restore(book(), source);
    return seeOther(`/bench/keep/?done=restored&count=${count}&kept=${basename(kept)}`);
  } catch (error) {
    if (!(error instanceof BookError)) throw error;
    return troubleResponse(bookProblem(error.problem), 422, request);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
};
