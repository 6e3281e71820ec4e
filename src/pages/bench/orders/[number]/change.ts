/** `POST`: one change to an order. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { change } from '#bench/book/change.ts';
import { readChange } from '#bench/intake/changeForm.ts';
import { readForm, seeOther } from '#bench/http/readForm.ts';
import { numberOf } from '#bench/models/numberOf.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request, params }) => {
  const { book, nowMs } = bench();
  const number = numberOf(params.number);
  const form = await readForm(request);
  const wanted = form === null ? null : readChange(form);
  if (wanted === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  const at = new Date(nowMs()).toISOString();
  const outcome = change(book(), number, wanted.version, at, wanted.change);
  if (outcome === 'no-such-order') return troubleResponse({ code: outcome }, 404, request);
  if (outcome === 'changed-meanwhile') return troubleResponse({ code: outcome }, 409, request);
  return seeOther(`/bench/orders/${number}/`);
};
