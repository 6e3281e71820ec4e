/** All that came into and went out of the trays, as CSV. */
import type { APIRoute } from 'astro';
import { allMovements } from '#bench/book/movements.ts';
import { bench } from '#bench/context/bench.ts';
import { toLinesCsv } from '#bench/export/stockCsv.ts';
import { dated, download } from '#bench/http/download.ts';

export const prerender = false;

export const GET: APIRoute = () => {
  const { book, nowMs } = bench();
  return download(
    toLinesCsv(allMovements(book())),
    'text/csv; charset=utf-8; header=present',
    dated('stock-lines', nowMs(), 'csv'),
  );
};
