/** Why the desk doesn't take an order, as problem details (RFC 9457). */
import { underBase } from '#ui/site/base.ts';
import type { DeskProblem } from '#words/deskProblem.ts';
import type { Lang } from '#words/lang.ts';
import { deskWords } from '#words/words.ts';

const STATUS: Readonly<Record<DeskProblem['code'], number>> = {
  'origin-not-allowed': 403,
  'method-not-allowed': 405,
  'content-type': 415,
  'too-large': 413,
  'not-utf8': 400,
  'not-json': 400,
  'not-an-order': 422,
  'newer-version': 422,
  'unknown-version': 422,
  'wrong-field': 422,
  robot: 422,
  'number-taken': 409,
  'ready-gone': 409,
  'too-many': 429,
  'book-locked': 503,
  'book-full': 503,
  'book-closed': 503,
};
/** When to try again, where it is worth trying. */
const RETRY_S: Partial<Record<DeskProblem['code'], number>> = {
  'book-locked': 5,
  'book-full': 300,
  'book-closed': 300,
};

/** The answer for a problem, in the reader's language. */
export function problemResponse(problem: DeskProblem, lang: Lang): Response {
  const words = deskWords(lang);
  const status = STATUS[problem.code];
  const headers = new Headers({ 'content-type': 'application/problem+json', 'content-language': lang });
  const retry = problem.code === 'too-many' ? problem.seconds : RETRY_S[problem.code];
  if (retry !== undefined) headers.set('retry-after', String(retry));
  if (status === 405) headers.set('allow', 'POST, OPTIONS');
  const body = {
    type: underBase(`/schema/desk-openapi.json#${problem.code}`),
    title: words.title,
    status,
    detail: words.sentence(problem),
    ...problem,
  };
  return new Response(JSON.stringify(body), { status, headers });
}
