/** Devices that were paired at the machine, each known by the hash of its token, and the codes that pair them. */
import { randomBytes } from 'node:crypto';
import { inOneWrite, prepared, type Book } from './open.ts';
import { named } from './problem.ts';
import { sha256 } from './snapshot.ts';

export type Device = {
  readonly id: number;
  /** As whoever paired it wrote it. */
  readonly name: string;
  /** ISO 8601, by the maker's clock. */
  readonly pairedAt: string;
  /** When it last asked for something, to the minute. */
  readonly seenAt: string;
};

/** Long enough to fetch the tablet from the kitchen. */
export const PAIRING_MINUTES = 10;
const MINUTE_MS = 60_000;
const TOKEN_BYTES = 32;
/** Longest name of a device. */
export const DEVICE_NAME_CAP = 40;

/** Begins a pairing; one that was begun before and not used is over. The book keeps only the token's hash. @returns the token. Throws BookError. */
export function beginPairing(book: Book, nowMs: number): string {
  const token = randomBytes(TOKEN_BYTES).toString('base64url');
  inOneWrite(book, () => {
    book.db.exec('DELETE FROM pairing');
    book.db
      .prepare('INSERT INTO pairing (token_hash, begun_at, ends_at) VALUES (?, ?, ?)')
      .run(sha256(token), nowMs, nowMs + PAIRING_MINUTES * MINUTE_MS);
  });
  return token;
}

/** Neither before it was begun, as under a clock set back, nor after its end. */
const OPEN = 'token_hash = ? AND begun_at <= ? AND ends_at > ?';

/** True for the token of a pairing that isn't over. Throws BookError. */
export function isPairing(book: Book, token: string, nowMs: number): boolean {
  return named(
    () =>
      book.db.prepare(`SELECT 1 FROM pairing WHERE ${OPEN}`).get(sha256(token), nowMs, nowMs) !== undefined,
  );
}

/** Pairs a device; the code is used up by it. @returns the device's own token; null where the code is over. Throws BookError. */
export function pairDevice(book: Book, token: string, name: string, nowMs: number): string | null {
  const own = randomBytes(TOKEN_BYTES).toString('base64url');
  return inOneWrite(book, () => {
    const used = book.db.prepare(`DELETE FROM pairing WHERE ${OPEN}`).run(sha256(token), nowMs, nowMs);
    if (used.changes === 0) return null;
    const at = new Date(nowMs).toISOString();
    book.db
      .prepare('INSERT INTO device (token_hash, name, paired_at, seen_at) VALUES (?, ?, ?, ?)')
      .run(sha256(own), name, at, at);
    return own;
  });
}

/** The device of a token; null for one that was never paired, or was sent away. Throws BookError. */
export function deviceOf(book: Book, token: string): Device | null {
  return named(() => {
    const row = prepared(book, 'SELECT * FROM device WHERE token_hash = ?').get(sha256(token));
    return row === undefined ? null : toDevice(row);
  });
}

/** Notes that a device asked for something; at most once a minute, for each is a write to disk. Throws BookError. */
export function noteSeen(book: Book, { id, seenAt }: Device, nowMs: number): void {
  if (Math.abs(nowMs - Date.parse(seenAt)) < MINUTE_MS) return;
  const at = new Date(nowMs).toISOString();
  inOneWrite(book, () => book.db.prepare('UPDATE device SET seen_at = ? WHERE id = ?').run(at, id));
}

/** All that are paired, the latest last. Throws BookError. */
export function pairedDevices(book: Book): Device[] {
  return named(() => book.db.prepare('SELECT * FROM device ORDER BY id').all().map(toDevice));
}

/** Sends a device away: its next request is refused. Throws BookError. */
export function sendAway(book: Book, id: number): void {
  inOneWrite(book, () => book.db.prepare('DELETE FROM device WHERE id = ?').run(id));
}

const toDevice = (row: Readonly<Record<string, unknown>>): Device => ({
  id: Number(row.id),
  name: String(row.name),
  pairedAt: String(row.paired_at),
  seenAt: String(row.seen_at),
});

/** Switches the tablets' door on or off. Off, all pairings begun are over; devices stay paired. Throws BookError. */
export function setTablets(book: Book, on: boolean): void {
  inOneWrite(book, () => {
    if (on) book.db.exec(`INSERT OR REPLACE INTO setting VALUES ('tablets', 'on')`);
    else book.db.exec(`DELETE FROM setting WHERE name = 'tablets'; DELETE FROM pairing`);
  });
}
