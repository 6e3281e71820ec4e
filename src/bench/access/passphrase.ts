/** The passphrase that opens the bench from elsewhere, kept as its scrypt hash. */
import { randomBytes, scrypt, timingSafeEqual } from 'node:crypto';
import type { Book } from '../book/open.ts';
import { inOneWrite } from '../book/open.ts';
import { named } from '../book/problem.ts';

/** Cost of one try: OWASP Password Storage Cheat Sheet, scrypt N = 2^17, r = 8, p = 1 (128 MiB). */
const COST = { N: 2 ** 17, r: 8, p: 1, maxmem: 160 * 1024 * 1024 };
const SALT_BYTES = 16;
const KEY_BYTES = 32;
/** Short words are guessed; four words or twelve letters are not. */
export const LEAST_LENGTH = 12;
/** Longer ones are cut off before they cost anything. */
export const MOST_LENGTH = 200;

/** Sets the passphrase and ends every visit. Throws RangeError for one that is too short or long, BookError. */
export async function setPassphrase(book: Book, passphrase: string): Promise<void> {
  if (passphrase.length < LEAST_LENGTH || passphrase.length > MOST_LENGTH) throw new RangeError('passphrase');
  const salt = randomBytes(SALT_BYTES);
  const key = await derive(passphrase, salt);
  const value = `scrypt:17:8:1:${salt.toString('base64url')}:${key.toString('base64url')}`;
  inOneWrite(book, () => {
    book.db.prepare(`INSERT OR REPLACE INTO setting VALUES ('passphrase', ?)`).run(value);
    book.db.exec('DELETE FROM visit');
  });
}

/** Takes the passphrase away: the bench is open at this machine only. Throws BookError. */
export function removePassphrase(book: Book): void {
  inOneWrite(book, () => {
    book.db.exec(`DELETE FROM setting WHERE name = 'passphrase'; DELETE FROM visit`);
  });
}

export function hasPassphrase(book: Book): boolean {
  return stored(book) !== null;
}

/** True for the passphrase that was set. Takes as long for a wrong one. Throws BookError. */
export async function isPassphrase(book: Book, tried: string): Promise<boolean> {
  const kept = stored(book)?.split(':');
  if (kept === undefined || tried.length > MOST_LENGTH) return false;
  const salt = Buffer.from(kept[4] ?? '', 'base64url');
  const key = Buffer.from(kept[5] ?? '', 'base64url');
  return timingSafeEqual(await derive(tried, salt), key);
}

function stored(book: Book): string | null {
  return named(() => {
    const row = book.db.prepare(`SELECT value FROM setting WHERE name = 'passphrase'`).get();
    return row === undefined ? null : String(row.value);
  });
}

function derive(passphrase: string, salt: Buffer): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    scrypt(passphrase.normalize('NFC'), salt, KEY_BYTES, COST, (error, key) => {
      if (error === null) resolve(key);
      else reject(error);
    });
  });
}
