/** A book of an older version, as that version wrote it, comes to today's with nothing lost. */
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, it, onTestFinished } from 'vitest';
import { isPassphrase } from '#bench/access/passphrase.ts';
import { backUp, restore } from '#bench/book/backup.ts';
import { change } from '#bench/book/change.ts';
import { pairedDevices } from '#bench/book/devices.ts';
import { findEntry, history } from '#bench/book/entry.ts';
import { MIGRATIONS } from '#bench/book/migrations.ts';
import { balances } from '#bench/book/movements.ts';
import { openBook } from '#bench/book/open.ts';
import { findPlace, timeAtBoard } from '#bench/book/place.ts';
import { allEntries } from '#bench/book/search.ts';
import { checkWhole } from '#bench/book/wholeCheck.ts';
import { tabletsOn } from '#bench/tablets/listener.ts';

/** Made by the program of version 4: five orders, of which one is agreed and partly paid, one strung, one sent and erased. */
const SAMPLE_4 = new URL('../../fixtures/books/v4.sqlite', import.meta.url).pathname;

/** Made by the program of version 7: one order, agreed, partly paid, with a note, and stock of one bead. */
const SAMPLE_7 = new URL('../../fixtures/books/v7.sqlite', import.meta.url).pathname;

/** Made by the program of version 6: one order, twelve and a half minutes into stringing it, and a passphrase. */
const SAMPLE_6 = new URL('../../fixtures/books/v6.sqlite', import.meta.url).pathname;

/** Made by the program of version 5: two orders, one with a note, and three strands received of one bead. */
const SAMPLE_5 = new URL('../../fixtures/books/v5.sqlite', import.meta.url).pathname;

/** Made by the program of version 2: six orders, in five states, one erased, with snapshots, notes, days, messages. */
const SAMPLE = new URL('../../fixtures/books/v2.sqlite', import.meta.url).pathname;

const OLD_TABLES = {
  snapshot: 'id, piece, revision, digest, content, seen_at',
  orders: 'number, document, digest, received_at, way, state, due_on, snapshot, version, erased_at',
  event: 'id, number, at, kind, text',
};

/** All rows of the tables that version 2 had, in the columns that it had. */
function rowsOf(db: DatabaseSync): unknown[][] {
  return Object.entries(OLD_TABLES).map(([table, columns]) =>
    db.prepare(`SELECT ${columns} FROM ${table} ORDER BY 1`).all(),
  );
}

/** All rows of a table without columns that came in version 8, in which nothing of before has anything. */
function rowsAsThen(db: DatabaseSync, table: string): unknown[] {
  return db
    .prepare(`SELECT * FROM ${table} ORDER BY 1`)
    .all()
    .map(({ agreed_snapshot: agreedSnapshot = null, ...row }) => {
      expect(agreedSnapshot).toBeNull();
      return row;
    });
}

function copyOfSample(name: string, sample = SAMPLE): string {
  const folder = mkdtempSync(join(tmpdir(), 'migration-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = join(folder, name);
  copyFileSync(sample, file);
  return file;
}

it('keeps every row of a book of version 2, in the tables of today', () => {
  const file = copyOfSample('orders.sqlite');
  const before = new DatabaseSync(file, { readOnly: true });
  expect(before.prepare('PRAGMA user_version').get()?.user_version).toBe(2);
  const rows = rowsOf(before);
  before.close();
  expect(rows.map((table) => table.length)).toEqual([2, 6, 16]);

  const book = openBook(file);
  onTestFinished(() => book.db.close());
  expect(rowsOf(book.db)).toEqual(rows);
  expect(book.db.prepare('PRAGMA user_version').get()?.user_version).toBe(MIGRATIONS.length);
  expect(book.db.prepare('PRAGMA integrity_check').get()?.integrity_check).toBe('ok');
  expect(book.db.prepare('PRAGMA foreign_key_check').all()).toEqual([]);
});

it('reads its orders and their history as they were', () => {
  const book = openBook(copyOfSample('orders.sqlite'));
  onTestFinished(() => book.db.close());
  expect(allEntries(book).map(({ state, way }) => `${state} ${way}`)).toEqual([
    'new desk',
    'asked paste',
    'agreed file',
    'strung link',
    'sent desk',
    'sent desk',
  ]);
  expect(findEntry(book, '3N6-H37-7JR')).toMatchObject({ dueOn: '2026-12-18', version: 4 });
  expect(findEntry(book, 'M6M-TNH-T6R')?.erasedAt).toBe('2026-11-14T09:30:00.000Z');
  expect(history(book, '3N6-H37-7JR').map(({ kind, text }) => [kind, text])).toEqual([
    ['received', 'file'],
    ['state', 'agreed'],
    ['due', '2026-12-18'],
    ['note', 'Second tray,\nblue tissue'],
  ]);
});

it('is a backup that today’s book takes back, and gives again', () => {
  const sample = copyOfSample('backup.sqlite');
  const book = openBook(copyOfSample('orders.sqlite'));
  onTestFinished(() => book.db.close());
  const rows = rowsOf(book.db);
  expect(restore(book, sample)).toBe(6);
  expect(rowsOf(book.db)).toEqual(rows);
  const again = `${sample}.again`;
  backUp(book, again);
  expect(restore(book, again)).toBe(6);
  expect(rowsOf(book.db)).toEqual(rows);
});

it('keeps every row of a book of version 4, counts nothing in it, and takes nothing after the fact', () => {
  const file = copyOfSample('orders.sqlite', SAMPLE_4);
  const tables = ['snapshot', 'orders', 'event', 'payment', 'invoice', 'parcel'];
  const rows = (db: DatabaseSync): unknown[][] => tables.map((table) => rowsAsThen(db, table));
  const before = new DatabaseSync(file, { readOnly: true });
  expect(before.prepare('PRAGMA user_version').get()?.user_version).toBe(4);
  const kept = rows(before);
  before.close();
  expect(kept.map((table) => table.length)).toEqual([2, 5, 15, 1, 0, 0]);
  const book = openBook(file);
  onTestFinished(() => book.db.close());
  expect(rows(book.db)).toEqual(kept);
  expect(book.db.prepare('PRAGMA integrity_check').get()?.integrity_check).toBe('ok');
  expect(balances(book).size).toBe(0);
  const again = copyOfSample('backup.sqlite', SAMPLE_4);
  expect(restore(book, again)).toBe(5);
  expect(rows(book.db)).toEqual(kept);
  const strung = allEntries(book).find(({ state }) => state === 'strung')!;
  const { number } = strung.document;
  const at = '2026-11-28T10:00:00.000Z';
  expect(change(book, number, strung.version, at, { kind: 'state', state: 'sent' })).toBe('done');
  expect(balances(book).size).toBe(0);
});

it('keeps every row of a book of version 5, in which nothing has been begun', () => {
  const file = copyOfSample('orders.sqlite', SAMPLE_5);
  const tables = ['snapshot', 'orders', 'event', 'movement', 'written_stock'];
  const rows = (db: DatabaseSync): unknown[][] => tables.map((table) => rowsAsThen(db, table));
  const before = new DatabaseSync(file, { readOnly: true });
  expect(before.prepare('PRAGMA user_version').get()?.user_version).toBe(5);
  const kept = rows(before);
  before.close();
  expect(kept.map((table) => table.length)).toEqual([2, 2, 3, 1, 0]);
  const book = openBook(file);
  onTestFinished(() => book.db.close());
  expect(rows(book.db)).toEqual(kept);
  const [entry] = allEntries(book);
  const { number } = entry!.document;
  expect(findPlace(book, number)).toBeNull();
  expect(timeAtBoard(book, number)).toEqual([]);
  expect(restore(book, copyOfSample('backup.sqlite', SAMPLE_5))).toBe(2);
  expect(rows(book.db)).toEqual(kept);
});

it('keeps every row of a book of version 6, and lets no tablet in by it', async () => {
  const file = copyOfSample('orders.sqlite', SAMPLE_6);
  const tables = ['orders', 'event', 'place', 'board_time', 'setting'];
  const rows = (db: DatabaseSync): unknown[][] => tables.map((table) => rowsAsThen(db, table));
  const before = new DatabaseSync(file, { readOnly: true });
  expect(before.prepare('PRAGMA user_version').get()?.user_version).toBe(6);
  const kept = rows(before);
  before.close();
  expect(kept.map((table) => table.length)).toEqual([1, 1, 1, 1, 1]);
  const book = openBook(file);
  onTestFinished(() => book.db.close());
  expect(rows(book.db)).toEqual(kept);
  const [entry] = allEntries(book);
  expect(findPlace(book, entry!.document.number)).toMatchObject({ place: 11, version: 1 });
  expect(await isPassphrase(book, 'osier thimble barge noon')).toBe(true);
  expect(pairedDevices(book)).toEqual([]);
  expect(tabletsOn(file)).toBe(false);
});

it('keeps every row of a book of version 7, and notes a digest of each order and thing', async () => {
  const file = copyOfSample('orders.sqlite', SAMPLE_7);
  const tables = ['orders', 'event', 'payment', 'movement'];
  const rows = (db: DatabaseSync): unknown[][] => tables.map((table) => rowsAsThen(db, table));
  const before = new DatabaseSync(file, { readOnly: true });
  expect(before.prepare('PRAGMA user_version').get()?.user_version).toBe(7);
  const kept = rows(before);
  before.close();
  expect(kept.map((table) => table.length)).toEqual([1, 4, 1, 1]);
  const book = openBook(file);
  onTestFinished(() => book.db.close());
  expect(rows(book.db)).toEqual(kept);
  expect(book.db.prepare('SELECT kind, count(*) AS n FROM kept_digest GROUP BY kind').all()).toEqual([
    { kind: 'order', n: 1 },
    { kind: 'stock', n: 1 },
  ]);
  expect(await checkWhole(file)).toMatchObject({ orders: [], kept: [], stock: [], structure: [] });
  expect(restore(book, copyOfSample('backup.sqlite', SAMPLE_7))).toBe(1);
  expect(rows(book.db)).toEqual(kept);
});

/** Opens a book in a process that may write no file longer than so many kilobytes, as on a disk that is full by then. */
function openWithin(file: string, kilobytes: number): string {
  const open = new URL('../../../src/bench/book/open.ts', import.meta.url).href;
  const program = `
    const { openBook } = await import('${open}');
    try { openBook(process.argv[1]); console.log('opened'); }
    catch (error) { console.log(error.message); }`;
  const limited = ['-c', `ulimit -f ${kilobytes}; exec "$0" "$@"`, process.execPath];
  return spawnSync('bash', [...limited, '--input-type=module', '-e', program, file])
    .stdout.toString()
    .trim();
}

it.skipIf(process.platform === 'win32')(
  'says that the disk is full, not that the book is broken, and is brought to today’s version once there is room',
  () => {
    const file = copyOfSample('orders.sqlite', SAMPLE_7);
    const old = new DatabaseSync(file);
    // So that there is something to write.
    old.exec(`
      INSERT INTO event (number, at, kind, text)
      SELECT number, '', 'note', hex(randomblob(100)) FROM orders, json_each('[${'0,'.repeat(3000)}0]')`);
    old.close();
    expect(openWithin(file, 60)).toBe('order book: full');
    const left = new DatabaseSync(file, { readOnly: true });
    expect(left.prepare('PRAGMA user_version').get()?.user_version).toBe(7);
    left.close();
    expect(openWithin(file, 4000)).toBe('opened');
    const book = openBook(file);
    onTestFinished(() => book.db.close());
    expect(allEntries(book)).toHaveLength(1);
  },
);
