/** The order document as it came in. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { findEntry } from '#bench/book/entry.ts';
import { download } from '#bench/http/download.ts';
import { numberOf } from '#bench/models/numberOf.ts';

export const prerender = false;

export const GET: APIRoute = ({ request, params }) => {
  const entry = findEntry(bench().book(), numberOf(params.number));
  if (entry === null) return troubleResponse({ code: 'no-such-order' }, 404, request);
  const { document } = entry;
  return download(JSON.stringify(document, null, 2), 'application/json', `${document.number}.json`);
};
