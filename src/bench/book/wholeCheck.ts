/** A check of the whole book, every byte of it, in a thread of its own while the bench goes on. */
import { Worker } from 'node:worker_threads';
import { unkeptSql } from './keptSql.ts';

/** What was found wrong; nothing in any of them where all is well. */
export type Findings = {
  /** In SQLite's own words: pages, indexes or references of the file. */
  readonly structure: readonly string[];
  /** Numbers of orders that are not what came in. */
  readonly orders: readonly string[];
  /** Numbers of orders of which state, days, money, papers or notes are not what was entered. */
  readonly kept: readonly string[];
  /** Numbers of invoices that can't be read. */
  readonly invoices: readonly string[];
  /** Things whose lines of stock aren't those that were entered, or don't hold together: one takes back what it doesn't match. */
  readonly stock: readonly string[];
  /** How many copies of pieces as they stood can't be used. */
  readonly snapshots: number;
};

/**
 * Checks a book's file.
 * @throws Error where it can't be opened at all
 */
export function checkWhole(file: string): Promise<Findings> {
  // As source text: a thread's own file would have to be found again beside whatever the build makes of this one.
  const given: Given = { file, unkept: { order: unkeptSql('order'), stock: unkeptSql('stock') } };
  const worker = new Worker(`(${inThread.toString()})()`, { eval: true, workerData: given });
  return new Promise((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', () => reject(new Error('the check ended early')));
    worker.unref();
  });
}

/** What the thread is handed. */
type Given = { readonly file: string; readonly unkept: { readonly order: string; readonly stock: string } };

/** Runs from its text alone: it may use nothing that stands outside of it. */
function inThread(): void {
  const { DatabaseSync } = process.getBuiltinModule('node:sqlite');
  const { createHash } = process.getBuiltinModule('node:crypto');
  const { parentPort, workerData } = process.getBuiltinModule('node:worker_threads');
  const { file, unkept } = workerData as Given;
  const db = new DatabaseSync(file, { readOnly: true, timeout: 2_000 });
  const sha256 = (text: unknown): string => createHash('sha256').update(String(text)).digest('hex');
  db.function('sha256', { deterministic: true }, sha256);
  const structure: string[] = [];
  const orders: string[] = [];
  const invoices: string[] = [];
  const kept: string[] = [];
  const stock = new Set<string>();
  let snapshots = 0;
  const isJson = (text: unknown): boolean => {
    try {
      JSON.parse(String(text));
      return true;
    } catch {
      return false;
    }
  };
  const isKept = (text: unknown, digest: unknown): boolean =>
    digest === null ? isJson(text) : sha256(text) === String(digest);
  // A table that can't be read to its end has been named by then.
  const part = (look: () => void): void => {
    try {
      look();
    } catch (error) {
      structure.push(error instanceof Error ? error.message : String(error));
    }
  };
  part(() => {
    for (const row of db.prepare('PRAGMA integrity_check(20)').all()) {
      const line = String(row.integrity_check);
      // What a row holds is told by its number below.
      if (line !== 'ok' && !/^CHECK constraint failed/.test(line)) structure.push(line);
    }
  });
  part(() => {
    for (const row of db.prepare('PRAGMA foreign_key_check').all()) {
      structure.push(`${String(row.table)} refers to what is missing in ${String(row.parent)}`);
    }
  });
  part(() => {
    for (const row of db.prepare('SELECT number, document, digest, delivery FROM orders').iterate()) {
      const delivery = row.delivery === null || isJson(row.delivery);
      if (!delivery || !isKept(row.document, row.digest)) orders.push(String(row.number));
    }
  });
  part(() => {
    for (const row of db.prepare('SELECT invoice, content FROM invoice').iterate()) {
      if (!isJson(row.content)) invoices.push(String(row.invoice));
    }
  });
  part(() => {
    const rows = db.prepare(
      `SELECT DISTINCT one.thing FROM movement one LEFT JOIN movement other ON other.id = one.strikes
       WHERE one.kind = 'struck' AND (other.id IS NULL OR other.thing <> one.thing OR other.amount <> -one.amount
         OR other.offcut IS NOT one.offcut)`,
    );
    for (const row of rows.iterate()) stock.add(String(row.thing));
    for (const row of db.prepare(unkept.stock).iterate()) stock.add(String(row.key));
  });
  part(() => {
    for (const row of db.prepare(unkept.order).iterate()) kept.push(String(row.key));
  });
  part(() => {
    for (const row of db.prepare('SELECT content, digest FROM snapshot').iterate()) {
      if (!isKept(row.content, row.digest)) snapshots += 1;
    }
  });
  db.close();
  parentPort?.postMessage({
    structure: structure.slice(0, 20),
    ...{ orders, kept, invoices, stock: [...stock], snapshots },
  } satisfies Findings);
}
