/** The order document as it came in, or what is left of it. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { findReadable, remainsOf } from '#bench/book/entry.ts';
import { download } from '#bench/http/download.ts';
import { numberOf } from '#bench/models/numberOf.ts';

export const prerender = false;

export const GET: APIRoute = ({ request, params }) => {
  const { book } = bench();
  const number = numberOf(params.number);
  const entry = findReadable(book(), number);
  if (entry !== null) {
    const { document } = entry;
    return download(JSON.stringify(document, null, 2), 'application/json', `${document.number}.json`);
  }
  const remains = remainsOf(book(), number);
  if (remains === null) return troubleResponse({ code: 'no-such-order' }, 404, request);
  return download(remains, 'text/plain; charset=utf-8', `${number}.txt`);
};
