/** The piece as it stood: what an order can be sized by again at any later time. */
import { createHash } from 'node:crypto';
import type { Alternatives } from '#core/design/alternatives.ts';
import type { PostRules } from '#core/post/rules.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Design } from '#core/design/design.ts';
import { prepared, type Book } from './open.ts';
import { named } from './problem.ts';

/** All that `size()` needs, and the piece's name. */
export type Snapshot = {
  readonly piece: string;
  readonly revision: string;
  readonly name: string;
  readonly design: Design;
  readonly rules: Rules;
  readonly listedMinor: number;
  /** What could be chosen instead of clasp and pendant; left out where nothing was offered. */
  readonly alternatives?: Alternatives;
  /** What the listed price is for, where `design` has another clasp or pendant: of one order, and never kept. */
  readonly listed?: Design;
  /** What posting cost; null where buyers weren't asked, left out in books of before there were such rules. */
  readonly post?: PostRules | null;
};

type Written = { readonly content: string; readonly digest: string };
/** Written out once for each copy: every order of a piece brings the same. */
const written = new WeakMap<Snapshot, Written>();

function writtenOf(snapshot: Snapshot): Written {
  const known = written.get(snapshot);
  if (known !== undefined) return known;
  const content = JSON.stringify(snapshot);
  const one = { content, digest: sha256(content) };
  written.set(snapshot, one);
  return one;
}

/** Keeps a snapshot, once for the same content. Call inside a write. @returns its id */
export function keepSnapshot(book: Book, snapshot: Snapshot, at: string): number {
  const { content, digest } = writtenOf(snapshot);
  const known = prepared(book, 'SELECT id FROM snapshot WHERE digest = ?').get(digest);
  if (known !== undefined) return Number(known.id);
  const made = book.db
    .prepare('INSERT INTO snapshot (piece, revision, digest, content, seen_at) VALUES (?, ?, ?, ?, ?)')
    .run(snapshot.piece, snapshot.revision, digest, content, at);
  return Number(made.lastInsertRowid);
}

/** The newest kept snapshot of one revision of a piece; null where none was. */
export function snapshotOfRevision(book: Book, piece: string, revision: string): number | null {
  const row = book.db
    .prepare('SELECT max(id) AS id FROM snapshot WHERE piece = ? AND revision = ?')
    .get(piece, revision);
  return (row?.id as number | null | undefined) ?? null;
}

/** Reads a snapshot; null where there is none, or its bytes are not those that were kept. Throws BookError. */
export function findSnapshot(book: Book, id: number): Snapshot | null {
  return named(() => {
    const row = book.db.prepare('SELECT content, digest FROM snapshot WHERE id = ?').get(id);
    if (row === undefined || sha256(String(row.content)) !== row.digest) return null;
    return JSON.parse(String(row.content)) as Snapshot;
  });
}

export function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
