/** `POST`: erases the buyer's data in one order. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { findEntry } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { seeOther } from '#bench/http/readForm.ts';
import { numberOf } from '#bench/models/numberOf.ts';

export const prerender = false;

export const POST: APIRoute = ({ request, params }) => {
  const { book, nowMs } = bench();
  const number = numberOf(params.number);
  if (findEntry(book(), number) === null) return troubleResponse({ code: 'no-such-order' }, 404, request);
  erase(book(), [number], new Date(nowMs()).toISOString());
  return seeOther(`/bench/orders/${number}/`);
};
