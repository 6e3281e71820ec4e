/** Copies of the book beside it: private, swept, and reached by erasing. */
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUp } from '#bench/book/backup.ts';
import { copiesOf, copyName, inEveryCopy } from '#bench/book/copies.ts';
import { erase } from '#bench/book/erase.ts';
import { isFolderOpen, openBook, type Book } from '#bench/book/open.ts';
import { receive } from '#bench/book/receive.ts';
import { inWorkFolder, sweepWorkFolders } from '#bench/book/workFolder.ts';
import { catalogue, orderFor } from '../shop.ts';

const AT = '2026-11-25T19:00:00.000Z';
let folder: string;
let book: Book;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'copies-'));
  book = openBook(join(folder, 'orders.sqlite'));
});
afterEach(() => {
  book.db.close();
  rmSync(folder, { recursive: true, force: true });
});

const modeOf = (name: string): number => statSync(join(folder, name)).mode & 0o777;

describe('the book’s files', () => {
  it('are the maker’s alone, in a folder that is open to all', () => {
    chmodSync(folder, 0o755);
    book.db.exec('CREATE TABLE t (x); DROP TABLE t');
    backUp(book, join(folder, 'backup.sqlite'));
    for (const name of readdirSync(folder)) expect([name, modeOf(name)]).toEqual([name, 0o600]);
    expect(readdirSync(folder)).toContain('orders.sqlite-wal');
    expect(isFolderOpen(book)).toBe(true);
    chmodSync(folder, 0o700);
    expect(isFolderOpen(book)).toBe(false);
  });

  it('become so where an older version left them open', () => {
    chmodSync(join(folder, 'orders.sqlite'), 0o644);
    openBook(join(folder, 'orders.sqlite')).db.close();
    expect(modeOf('orders.sqlite')).toBe(0o600);
  });
});

describe('a folder for a copy at work', () => {
  it('is gone with what it held, whether the work is done or fails', async () => {
    const seen: string[] = [];
    const work = (at: string): Promise<void> => {
      seen.push(at);
      writeFileSync(join(at, 'copy'), 'x');
      return Promise.resolve();
    };
    await inWorkFolder(book, 'backup', work);
    await expect(inWorkFolder(book, 'restore', () => Promise.reject(new Error('full')))).rejects.toThrow(
      'full',
    );
    expect(seen.map((at) => existsSync(at))).toEqual([false]);
    expect(readdirSync(folder).filter((name) => !name.startsWith('orders'))).toEqual([]);
  });

  it('is swept where its process is gone, and left where it runs', () => {
    // Above any process number that a system gives out.
    const [gone, mine] = ['backup-99999999-aB3xYz', `restore-${process.pid}-aB3xYz`];
    const old = 'backup-aB3xYz';
    for (const name of [gone, mine, old, 'restore-cD4xYz', 'backup-of-mine']) {
      mkdirSync(join(folder, name));
      writeFileSync(join(folder, name, 'orders.sqlite'), 'x');
    }
    const now = Date.now();
    utimesSync(join(folder, old), (now - 7_200_000) / 1000, (now - 7_200_000) / 1000);
    expect(sweepWorkFolders(book.file, now).toSorted()).toEqual([gone, old].toSorted());
    expect(existsSync(join(folder, mine, 'orders.sqlite'))).toBe(true);
    expect(existsSync(join(folder, 'backup-of-mine'))).toBe(true);
    expect(existsSync(join(folder, gone))).toBe(false);
  });
});

describe('copies kept beside the book', () => {
  it('are named, and a buyer who is erased is erased in them too', () => {
    const order = orderFor(catalogue, 'weir-light', 165.1, { name: 'Zebedee Quill' });
    receive(book, [{ document: order, way: 'desk', at: AT, now: null }]);
    const name = copyName(AT);
    backUp(book, join(folder, name));
    expect(copiesOf(book).map((copy) => copy.name)).toEqual([name]);
    expect(readFileSync(join(folder, name), 'latin1')).toContain('Zebedee');
    expect(erase(book, [order.number], AT).count).toBe(1);
    for (const file of readdirSync(folder)) {
      expect(readFileSync(join(folder, file), 'latin1').includes('Zebedee'), file).toBe(false);
    }
  });

  it('that can’t be opened are told by name, and the rest is reached', () => {
    const [broken, whole] = [copyName('2026-01-01T00:00:00.000Z'), copyName('2026-02-01T00:00:00.000Z')];
    writeFileSync(join(folder, broken), 'no database, '.repeat(100));
    backUp(book, join(folder, whole));
    const reached: string[] = [];
    expect(inEveryCopy(book, (copy) => reached.push(copy.file))).toEqual([broken]);
    expect(reached).toEqual([join(folder, whole)]);
  });
});
