/** Visits from elsewhere: begun with the passphrase, ended by leaving or by time. */
import { randomBytes } from 'node:crypto';
import { inOneWrite, type Book } from '../book/open.ts';
import { named } from '../book/problem.ts';
import { sha256 } from '../book/snapshot.ts';
import { COOKIE } from './visitor.ts';

/** A working day. */
const VISIT_MS = 12 * 60 * 60 * 1000;
const TOKEN_BYTES = 32;

/** Begins a visit. The book keeps only the token's hash. @returns the token. Throws BookError. */
export function beginVisit(book: Book, nowMs: number): string {
  const token = randomBytes(TOKEN_BYTES).toString('base64url');
  inOneWrite(book, () => {
    book.db.prepare('DELETE FROM visit WHERE ends_at <= ?').run(nowMs);
    book.db.prepare('INSERT INTO visit VALUES (?, ?)').run(sha256(token), nowMs + VISIT_MS);
  });
  return token;
}

/** True for the token of a visit that has not ended. Throws BookError. */
export function isVisiting(book: Book, token: string, nowMs: number): boolean {
  return named(() => {
    const row = book.db.prepare('SELECT ends_at FROM visit WHERE token_hash = ?').get(sha256(token));
    return row !== undefined && Number(row.ends_at) > nowMs;
  });
}

/** Ends a visit. Throws BookError. */
export function endVisit(book: Book, token: string): void {
  inOneWrite(book, () => book.db.prepare('DELETE FROM visit WHERE token_hash = ?').run(sha256(token)));
}

/** Set-Cookie for a visit; an empty token takes the cookie away. */
export function visitCookie(token: string): string {
  const age = token === '' ? 0 : VISIT_MS / 1000;
  return `${COOKIE}=${token}; Path=/; Max-Age=${age}; Secure; HttpOnly; SameSite=Strict`;
}
