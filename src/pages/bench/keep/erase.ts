/** `POST`: erases the buyers' data of the orders that were shown as past their time. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { erase, overdueForErasing } from '#bench/book/erase.ts';
import { readForm, seeOther } from '#bench/http/readForm.ts';
import { erasedLocation, invoicesSince, keptSince } from '#bench/models/keeping.ts';
import { readShop } from '#catalogue/collections.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request }) => {
  const { book, nowMs } = bench();
  const form = await readForm(request);
  if (form === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  const at = new Date(nowMs()).toISOString();
  const shop = await readShop();
  const invoicesBefore = invoicesSince(at, shop);
  const overdue = new Set(overdueForErasing(book(), keptSince(at, shop.orders.keepMonths), invoicesBefore));
  // Only what she saw on the page, and only what is still past its time.
  const numbers = (form.get('numbers') ?? '').split(' ').filter((number) => overdue.has(number));
  return seeOther(erasedLocation(erase(book(), numbers, at, invoicesBefore)));
};
