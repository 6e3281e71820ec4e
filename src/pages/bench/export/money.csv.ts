/** Payments, refunds and invoices of a month as CSV: `?month=2026-11`. */
import type { APIRoute } from 'astro';
import { troubleResponse } from '#bench/access/refusal.ts';
import { bench } from '#bench/context/bench.ts';
import { moneyOfMonth } from '#bench/book/moneyMonths.ts';
import { toMoneyCsv } from '#bench/export/moneyCsv.ts';
import { download } from '#bench/http/download.ts';

export const prerender = false;

export const GET: APIRoute = ({ request, url }) => {
  const month = url.searchParams.get('month') ?? '';
  if (!/^2\d{3}-(0[1-9]|1[0-2])$/.test(month)) return troubleResponse({ code: 'bad-form' }, 400, request);
  const { payments, invoices } = moneyOfMonth(bench().book(), month);
  const csv = toMoneyCsv(payments, invoices);
  // RFC 4180, 3: `header` says that the first line names the columns.
  return download(csv, 'text/csv; charset=utf-8; header=present', `money-${month}.csv`);
};
