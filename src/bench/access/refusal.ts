/** The answers to those who are not let in, or who meet a book that can't be opened. */
import { benchWords } from '#words/words.ts';
import type { BenchProblem } from '#words/benchCodes.ts';
import { formatFor } from '#words/format.ts';
import { languageOf } from '../models/frame.ts';
import { plainPage } from '../http/plainPage.ts';
import { problemResponse } from '../desk/problem.ts';
import type { BookProblem } from '../book/problem.ts';
import type { Refusal } from './guard.ts';

const STATUS: Readonly<Record<Refusal, number>> = {
  // Misdirected Request (RFC 9110, 15.5.20).
  'wrong-host': 421,
  'cross-site': 403,
  'no-passphrase': 403,
  'needs-https': 403,
  'sign-in': 401,
};

/** One who only has to sign in is shown the door. */
export function refusalResponse(refusal: Refusal, request: Request): Response {
  if (refusal === 'sign-in' && request.method === 'GET') {
    return new Response(null, { status: 303, headers: { location: '/bench/enter/' } });
  }
  return troubleResponse({ code: refusal }, STATUS[refusal], request);
}

const BOOK = {
  locked: 'book-locked',
  full: 'book-full',
  'read-only': 'book-read-only',
  'not-a-book': 'not-a-book',
  'newer-book': 'newer-book',
  broken: 'book-broken',
  unreachable: 'book-unreachable',
} as const satisfies Readonly<Record<BookProblem, BenchProblem['code']>>;

/** The bench's problem for one of the book's. */
export function bookProblem(problem: BookProblem): BenchProblem {
  return { code: BOOK[problem] };
}

/** The answer where the book could not be read or written. */
export function bookTroubleResponse(problem: BookProblem, request: Request): Response {
  if (new URL(request.url).pathname.startsWith('/desk')) {
    return problemResponse({ code: 'book-closed' }, languageOf(request));
  }
  return troubleResponse(bookProblem(problem), 503, request);
}

/** A page that names what went wrong, in the reader's language. */
export function troubleResponse(problem: BenchProblem, status: number, request: Request): Response {
  const lang = languageOf(request);
  const words = benchWords(lang);
  // No sentence here writes a length or a price, so unit and currency don't matter.
  const text = words.problem(problem, formatFor(lang, 'cm', 'EUR'));
  return plainPage(status, lang, words.problemTitle, text, { href: '/bench/', label: words.back });
}
