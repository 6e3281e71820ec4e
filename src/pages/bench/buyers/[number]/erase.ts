/** `POST`: erases a buyer's data in all her orders. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { erase } from '#bench/book/erase.ts';
import { seeOther } from '#bench/http/readForm.ts';
import { ordersOfBuyer } from '#bench/models/buyers.ts';
import { numberOf } from '#bench/models/numberOf.ts';

export const prerender = false;

export const POST: APIRoute = ({ request, params }) => {
  const { book, nowMs } = bench();
  const numbers = ordersOfBuyer(book(), numberOf(params.number)).map(({ document }) => document.number);
  if (numbers.length === 0) return troubleResponse({ code: 'no-such-buyer' }, 404, request);
  const count = erase(book(), numbers, new Date(nowMs()).toISOString());
  return seeOther(`/bench/buyers/?erased=${count}`);
};
