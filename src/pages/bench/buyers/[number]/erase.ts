/** `POST`: erases a buyer's data in all her orders. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { erase } from '#bench/book/erase.ts';
import { seeOther } from '#bench/http/readForm.ts';
import { ordersOfBuyer } from '#bench/models/buyers.ts';
import { erasedLocation, invoicesSince } from '#bench/models/keeping.ts';
import { numberOf } from '#bench/models/numberOf.ts';
import { readShop } from '#catalogue/collections.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request, params }) => {
  const { book, nowMs } = bench();
  const numbers = ordersOfBuyer(book(), numberOf(params.number)).map(({ document }) => document.number);
  if (numbers.length === 0) return troubleResponse({ code: 'no-such-buyer' }, 404, request);
  const at = new Date(nowMs()).toISOString();
  const erased = erase(book(), numbers, at, invoicesSince(at, await readShop()));
  if (erased.unreached.length > 0) return seeOther(erasedLocation(erased));
  return seeOther(`/bench/buyers/?erased=${erased.count}`);
};
