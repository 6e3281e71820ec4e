/** The answers to those who are not let in, or who meet a book that can't be opened. */
import { atBoardWords, benchWords } from '#words/words.ts';
import type { BenchProblem } from '#words/benchCodes.ts';
import { formatFor } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { escapeXml } from '#draw/svg/text.ts';
import { languageOf } from '../models/frame.ts';
import { doorOf } from '../tablets/door.ts';
import { seeOther } from '../http/readForm.ts';
import { insideBase, underBase } from '#ui/site/base.ts';
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
  unpaired: 401,
  'not-on-tablet': 403,
};

/** The path that was asked for, within the shop. */
const pathIn = (request: Request): string => insideBase(new URL(request.url).pathname);

/** One who only has to sign in is shown the door. */
export function refusalResponse(refusal: Refusal, request: Request): Response {
  if (refusal === 'sign-in' && request.method === 'GET') {
    return seeOther('/bench/enter/');
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
  gone: 'book-gone',
  'order-damaged': 'order-damaged',
  unreachable: 'book-unreachable',
} as const satisfies Readonly<Record<BookProblem, BenchProblem['code']>>;

/** The bench's problem for one of the book's. */
export function bookProblem(problem: BookProblem): BenchProblem {
  return { code: BOOK[problem] };
}

/** The same for an uploaded backup, where that is what is wrong. */
export function backupProblem(problem: BookProblem): BenchProblem {
  return { code: problem in BACKUP ? BACKUP[problem as keyof typeof BACKUP] : BOOK[problem] };
}

const BACKUP = {
  'not-a-book': 'no-backup',
  'newer-book': 'backup-newer',
  broken: 'backup-broken',
  'order-damaged': 'backup-broken',
} as const satisfies Partial<Readonly<Record<BookProblem, BenchProblem['code']>>>;

/** The answer where the book could not be read or written. */
export function bookTroubleResponse(problem: BookProblem, request: Request): Response {
  if (pathIn(request).startsWith('/desk')) {
    return problemResponse({ code: 'book-closed' }, languageOf(request));
  }
  return troubleResponse(bookProblem(problem), 503, request);
}

type WayOn = { readonly path: `/${string}`; readonly label: string };

/** A page that names what went wrong, in the reader's language. */
export function troubleResponse(problem: BenchProblem, status: number, request: Request): Response {
  const lang = languageOf(request);
  const words = benchWords(lang);
  // No sentence here writes a length or a price, so unit and currency don't matter.
  const text = words.problem(problem, formatFor(lang, 'cm', 'EUR'));
  if (doorOf(request) === 'tablets') return tabletPage(problem, status, lang, text);
  const list: WayOn = { path: '/bench/', label: words.back };
  if (problem.code === 'order-damaged') {
    const number = /^\/bench\/orders\/([\w-]+)\//.exec(pathIn(request))?.[1];
    const remains: WayOn = { path: `/bench/orders/${number ?? ''}/order.json`, label: words.remains };
    return plainPage(status, lang, words.damagedTitle, text, number === undefined ? [list] : [remains, list]);
  }
  // Safe-keeping opens without a book, the list does not.
  const noBook = status === 503 && NO_BOOK.some((code) => code === problem.code);
  if (noBook) {
    return plainPage(status, lang, words.keep.broken, text, [{ path: '/bench/keep/', label: words.mend }]);
  }
  return plainPage(status, lang, words.problemTitle, text, [list]);
}

/** On a paired device there is but one way on, and on another none. */
function tabletPage(problem: BenchProblem, status: number, lang: Lang, text: string): Response {
  const steps: WayOn = { path: '/bench/steps/', label: atBoardWords(lang).title };
  const isOut = ['unpaired', 'pairing-over', 'wrong-host'].includes(problem.code);
  return plainPage(status, lang, benchWords(lang).problemTitle, text, isOut ? [] : [steps]);
}

const NO_BOOK: readonly BenchProblem['code'][] = ['book-broken', 'book-gone', 'not-a-book'];

/** An HTML answer with a title, a sentence and ways on. */
function plainPage(
  status: number,
  lang: Lang,
  title: string,
  text: string,
  onward: readonly WayOn[],
): Response {
  const links = onward
    .map(({ path, label }) => `<p><a href="${escapeXml(underBase(path))}">${escapeXml(label)}</a></p>`)
    .join('');
  const html = `<!doctype html>
<html lang="${lang}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta name="robots" content="noindex">
<title>${escapeXml(title)}</title>
<link rel="stylesheet" href="${underBase('/bench/assets/bench.css')}">
</head>
<body><main id="content"><h1>${escapeXml(title)}</h1><p role="alert">${escapeXml(text)}</p>${links}</main></body>
</html>
`;
  return new Response(html, { status, headers: { 'content-type': 'text/html; charset=utf-8' } });
}
