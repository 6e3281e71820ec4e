/** What there is as CSV: to count in, and to bring back. */
import type { APIRoute } from 'astro';
import { toStockCsv } from '#bench/export/stockCsv.ts';
import { dated, download } from '#bench/http/download.ts';
import { stockPlace } from '#bench/stockPages.ts';

export const prerender = false;

export const GET: APIRoute = async ({ request, locals }) => {
  const { things, stock, frame } = await stockPlace(request, locals.visitor);
  return download(
    toStockCsv(things, stock, frame.shop.rules.currency),
    'text/csv; charset=utf-8; header=present',
    dated('stock', Date.parse(frame.now), 'csv'),
  );
};
