/** The whole book as JSON. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { allOrders } from '#bench/book/search.ts';
import { dated, download } from '#bench/http/download.ts';
import { toExport } from '#bench/export/json.ts';

export const prerender = false;

export const GET: APIRoute = () => {
  const { book, nowMs } = bench();
  const all = toExport(book(), allOrders(book()));
  return download(JSON.stringify(all, null, 2), 'application/json', dated('orders', nowMs(), 'json'));
};
