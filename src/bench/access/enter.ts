/** Coming in from elsewhere with the passphrase. */
import type { BenchProblem } from '#words/benchCodes.ts';
import type { Bench } from '../context/bench.ts';
import { seeOther } from '../http/readForm.ts';
import { isPassphrase } from './passphrase.ts';
import { beginVisit, visitCookie } from './visit.ts';

/** One try is hashed at a time, whoever tries: each takes 128 MiB and much of a second. */
let lastTry: Promise<unknown> = Promise.resolve();

/**
 * Tries a passphrase.
 * @param address of the one who tries, for the limit
 * @returns the way in with its cookie, or why not
 */
export async function enter(
  { book, nowMs, entryThrottle }: Bench,
  tried: string,
  address: string,
): Promise<Response | BenchProblem> {
  const seconds = entryThrottle.take(address, nowMs());
  if (seconds > 0) return { code: 'too-many-tries', seconds };
  const right = lastTry.then(() => isPassphrase(book(), tried));
  lastTry = right.catch(() => false);
  if (!(await right)) return { code: 'wrong-passphrase' };
  const response = seeOther('/bench/');
  response.headers.set('set-cookie', visitCookie(beginVisit(book(), nowMs())));
  return response;
}
