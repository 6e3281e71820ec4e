/** `POST`: begins a new book where there is none that can be used; what lies there is set aside. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { beginAnew } from '#bench/book/replace.ts';
import { readForm, seeOther } from '#bench/http/readForm.ts';
import { restoredLocation } from '#bench/models/keeping.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request }) => {
  const { usable, settings, nowMs } = bench();
  const form = await readForm(request);
  if (form?.get('sure') !== 'yes') return troubleResponse({ code: 'bad-form' }, 400, request);
  // A page that was left open: the book has been put back meanwhile.
  if (usable() !== null) return seeOther('/bench/keep/');
  const aside = beginAnew(settings.bookFile, new Date(nowMs()).toISOString());
  return seeOther(restoredLocation({ count: 0, aside, carried: false }));
};
