/** Pairing a device: a code used once, and what the device keeps of it. */
import type { BenchProblem } from '#words/benchCodes.ts';
import { DEVICE_NAME_CAP, pairDevice } from '../book/devices.ts';
import type { Bench } from '../context/bench.ts';
import { seeOther } from '../http/readForm.ts';
import { DEVICE_COOKIE } from './visitor.ts';

/** As long as browsers keep any cookie: 400 days (RFC 6265bis, 5.5). */
const DEVICE_DAYS = 400;
const DAY_S = 86_400;

const deviceCookie = (token: string): string =>
  `${DEVICE_COOKIE}=${token}; Path=/; Max-Age=${DEVICE_DAYS * DAY_S}; Secure; HttpOnly; SameSite=Strict`;

/** A name as she may give one: a line of text, without what doesn't show. */
export function readDeviceName(text: string): string | null {
  const name = text.trim().replace(/\s+/g, ' ');
  const shows = !/[\p{Cc}\p{Cf}\p{Co}\p{Cs}]/u.test(name);
  return name !== '' && name.length <= DEVICE_NAME_CAP && shows ? name : null;
}

/**
 * Pairs a device by its code.
 * @param address of the one who tries, for the limit
 * @returns the way in with its cookie, or why not
 * @throws BookError
 */
export function pairTablet(
  { book, nowMs, pairThrottle }: Bench,
  token: string,
  name: string,
  address: string,
): Response | BenchProblem {
  const seconds = pairThrottle.take(address, nowMs());
  if (seconds > 0) return { code: 'too-many-tries', seconds };
  const named = readDeviceName(name);
  if (named === null) return { code: 'device-name' };
  const own = pairDevice(book(), token, named, nowMs());
  if (own === null) return { code: 'pairing-over' };
  const response = seeOther('/bench/steps/');
  response.headers.set('set-cookie', deviceCookie(own));
  return response;
}
