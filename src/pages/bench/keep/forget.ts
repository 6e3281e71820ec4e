/** `POST`: deletes one copy of the book that lies beside it. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { deleteCopy } from '#bench/book/copies.ts';
import { readForm, seeOther } from '#bench/http/readForm.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request }) => {
  const form = await readForm(request);
  if (form?.get('sure') !== 'yes') return troubleResponse({ code: 'bad-form' }, 400, request);
  deleteCopy({ file: bench().settings.bookFile }, form.get('name') ?? '');
  return seeOther('/bench/keep/#copies');
};
