/** `POST`: erases the buyer's data in one order. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { remainsOf } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { seeOther } from '#bench/http/readForm.ts';
import { erasedLocation, invoicesSince } from '#bench/models/keeping.ts';
import { numberOf } from '#bench/models/numberOf.ts';
import { readShop } from '#catalogue/collections.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request, params }) => {
  const { book, nowMs } = bench();
  const number = numberOf(params.number);
  // One that can't be read any more can still be erased.
  if (remainsOf(book(), number) === null) return troubleResponse({ code: 'no-such-order' }, 404, request);
  const at = new Date(nowMs()).toISOString();
  const erased = erase(book(), [number], at, invoicesSince(at, await readShop()));
  return seeOther(erased.unreached.length > 0 ? erasedLocation(erased) : `/bench/orders/${number}/`);
};
