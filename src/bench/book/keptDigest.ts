/** Whether orders and stock are what was kept of them, and the noting of it, in the write that changes them. */
import { KEPT, type KeptKind } from './keptSql.ts';
import { prepared, type Book } from './open.ts';
import { named } from './problem.ts';

/** Which of some orders, or things, aren't what was kept of them. Throws BookError. */
export function unkept(book: Book, kind: KeptKind, keys: readonly string[]): ReadonlySet<string> {
  return named(() => new Set(keys.filter((key) => !isKept(book, kind, key))));
}

/** True where it is what was kept, and where no digest of it was. */
export function isKept(book: Book, kind: KeptKind, key: string): boolean {
  const { one, digest } = KEPT[kind];
  const kept = `(SELECT digest FROM kept_digest WHERE kind = '${kind}' AND of = ?)`;
  return prepared(book, `SELECT 1 FROM ${one} WHERE ${kept} <> ${digest}`).get(key, key) === undefined;
}

/** Does work that changes what is kept, and notes the digest of it then. Call inside a write. */
export function keeping<T>(book: Book, kind: KeptKind, key: string, work: () => T): T {
  const was = isKept(book, kind, key);
  const result = work();
  if (was) vouch(book, kind, key);
  return result;
}

/** Notes the digest of what stands now, whatever stood before. Call inside a write. */
export function vouch(book: Book, kind: KeptKind, key: string): void {
  const { one, digest } = KEPT[kind];
  prepared(
    book,
    `INSERT OR REPLACE INTO kept_digest (kind, of, digest) SELECT '${kind}', ?, ${digest} FROM ${one}`,
  ).run(key, key);
}
