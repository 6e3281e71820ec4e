/** `POST`: takes over due days that the week proposed. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { troubleResponse } from '#bench/access/refusal.ts';
import { change } from '#bench/book/change.ts';
import { readForm, seeOther } from '#bench/http/readForm.ts';
import { readTaken } from '#bench/intake/takeDue.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request }) => {
  const { book, nowMs } = bench();
  const form = await readForm(request);
  const taken = form === null ? null : readTaken(form);
  if (taken === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  const at = new Date(nowMs()).toISOString();
  const outcomes = taken.map(({ number, version, on }) =>
    change(book(), number, version, at, { kind: 'due', on }),
  );
  // The others are taken over all the same; the page shows which still are proposals.
  if (outcomes.includes('changed-meanwhile')) {
    return troubleResponse({ code: 'changed-meanwhile' }, 409, request);
  }
  if (outcomes.includes('no-such-order')) return troubleResponse({ code: 'no-such-order' }, 404, request);
  return seeOther('/bench/week/');
};
