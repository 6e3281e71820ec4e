/** The whole book as CSV. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { paymentsOf } from '#bench/book/payments.ts';
import { allOrders } from '#bench/book/search.ts';
import { toCsv } from '#bench/export/csv.ts';
import { dated, download } from '#bench/http/download.ts';

export const prerender = false;

export const GET: APIRoute = () => {
  const { book, nowMs } = bench();
  // RFC 4180, 3: `header` says that the first line names the columns.
  return download(
    toCsv(allOrders(book()), (number) => paymentsOf(book(), number)),
    'text/csv; charset=utf-8; header=present',
    dated('orders', nowMs(), 'csv'),
  );
};
