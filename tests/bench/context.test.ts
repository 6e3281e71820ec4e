/** The joined bench when the book's file is damaged, gone, replaced or put back. */
import {
  mkdtempSync,
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { backUp } from '#bench/book/backup.ts';
import { copiesOf, deleteCopy } from '#bench/book/copies.ts';
import { findEntry } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { refusesWrites } from '#bench/book/open.ts';
import { beginAnew, replaceBook } from '#bench/book/replace.ts';
import { allEntries } from '#bench/book/search.ts';
import { checkWhole } from '#bench/book/wholeCheck.ts';
import { joinBench, type Bench } from '#bench/context/bench.ts';
import { settingsFrom } from '#bench/context/settings.ts';
import { answerOrder } from '#bench/desk/desk.ts';
import { throttle } from '#bench/http/throttle.ts';
import { catalogue, NOW_MS, orderFor, post } from './shop.ts';

const AT = '2026-11-25T19:00:00.000Z';
let folder: string;
let file: string;
let joined: Bench[];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'context-'));
  file = join(folder, 'orders.sqlite');
  joined = [];
});
afterEach(() => {
  for (const { usable } of joined) usable()?.db.close();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

/** A bench as a process that starts now joins it. */
function start(): Bench {
  const bench = joinBench(settingsFrom({ CLASPWISE_BOOK: file }, '/'), () => NOW_MS);
  joined.push(bench);
  return bench;
}

async function send(bench: Bench, order = orderFor(catalogue, 'weir-light', 165.1)) {
  const desk = {
    inbox: bench.inbox,
    pieceNow: () => Promise.resolve(null),
    standing: () => Promise.resolve(null),
    there: () => Promise.resolve(() => null),
    origins: ['http://127.0.0.1:4321'],
    throttle: throttle(0),
    nowMs: bench.nowMs,
  };
  const answer = await answerOrder(desk, post(JSON.stringify(order)), '192.0.2.1');
  return { order, status: answer.status, body: (await answer.json()) as Record<string, unknown> };
}

/** Stops a bench with everything in the one file: its check reads that too, and while it does the log stays. */
async function stop(bench: Bench): Promise<void> {
  await vi.waitFor(() => expect(bench.check.last().state).not.toBe('running'), { timeout: 10_000 });
  bench.book().db.close();
  joined = joined.filter((one) => one !== bench);
}

/** Spoils a page that holds orders, past SQLite. */
function spoil(): void {
  const bytes = readFileSync(file);
  const at = bytes.indexOf('claspwise-order');
  // The head of the page in which the first order lies.
  bytes.fill(0xa5, at - (at % 4096), at - (at % 4096) + 64);
  writeFileSync(file, bytes);
}

describe('a book whose file', () => {
  it.each<[string, () => void]>([
    ['is gone', () => rmSync(file)],
    ['is empty', () => truncateSync(file)],
  ])('%s is told, and nothing is begun in its place', async (_, harm) => {
    const before = start();
    await send(before);
    await stop(before);
    harm();
    const bench = start();
    expect(() => bench.book()).toThrow('order book: gone');
    expect(bench.usable()).toBe(null);
    expect(bench.whyNot()).toBe('gone');
    const { status, body } = await send(bench);
    expect([status, body.code]).toEqual([503, 'book-closed']);
    expect(existsSync(file) && readFileSync(file).length > 0).toBe(false);
  });

  it('is taken away while the bench runs takes no order more, and takes them again once it is back', async () => {
    const bench = start();
    const first = await send(bench);
    bench.book().db.exec('PRAGMA wal_checkpoint(TRUNCATE)');
    renameSync(file, join(folder, 'away'));
    expect((await send(bench)).status).toBe(503);
    renameSync(join(folder, 'away'), file);
    expect((await send(bench)).status).toBe(201);
    expect(findEntry(bench.book(), first.order.number)?.document).toEqual(first.order);
    expect(allEntries(bench.book())).toHaveLength(2);
  });

  it.each<[string, () => void]>([
    ['has a spoilt page', spoil],
    ['is cut', () => truncateSync(file, 4096 * 5)],
    ['is another’s', () => writeFileSync(file, 'Dear Wren, '.repeat(900))],
  ])('%s takes no order, and the buyer keeps hers', async (_, harm) => {
    const before = start();
    for (let many = 0; many < 12; many += 1) await send(before);
    await stop(before);
    harm();
    const bytes = readFileSync(file);
    const bench = start();
    const { status, body } = await send(bench);
    expect([status, body.code]).toEqual([503, 'book-closed']);
    expect(String(body.detail)).toContain('kept on your device');
    expect(bench.usable()).toBe(null);
    expect(['broken', 'not-a-book']).toContain(bench.whyNot());
    // Nothing more was written into it.
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });
});

describe('a backup', () => {
  it('takes the place of a damaged book, which is set aside, and the bench goes on', async () => {
    const before = start();
    const { order } = await send(before);
    const backup = join(folder, 'backup.sqlite');
    backUp(before.book(), backup);
    before.book().db.exec(`
      INSERT INTO setting VALUES ('passphrase', 'its hash'); INSERT INTO invoice_count VALUES ('2026-', 7)`);
    await stop(before);
    spoil();
    const bench = start();
    expect(bench.usable()).toBe(null);
    const replaced = replaceBook(file, backup, AT);
    expect(replaced).toEqual({ count: 1, aside: 'damaged-2026-11-25T19-00-00-000Z.sqlite', carried: true });
    // The same process, and one that has the old file open still.
    expect(findEntry(bench.book(), order.number)?.document).toEqual(order);
    expect((await send(bench)).status).toBe(201);
    // What stays with the machine was read out of the damaged one.
    expect(bench.book().db.prepare('SELECT * FROM setting').all()).toMatchObject([{ value: 'its hash' }]);
    expect(bench.book().db.prepare('SELECT * FROM invoice_count').all()).toMatchObject([{ last: 7 }]);
    // Erasing says that it can't vouch for the damaged one, which can be deleted.
    expect(erase(bench.book(), [order.number], AT)).toEqual({ count: 1, unreached: [replaced.aside] });
    expect(deleteCopy({ file }, String(replaced.aside))).toBe(true);
    expect(copiesOf({ file })).toEqual([]);
    expect(deleteCopy({ file }, 'orders.sqlite')).toBe(false);
  });

  it('takes the place of one that is gone, or of a text', async () => {
    const before = start();
    const { order } = await send(before);
    const backup = join(folder, 'backup.sqlite');
    backUp(before.book(), backup);
    await stop(before);
    rmSync(file);
    expect(replaceBook(file, backup, AT)).toEqual({ count: 1, aside: null, carried: false });
    expect(findEntry(start().book(), order.number)?.document).toEqual(order);
  });

  it('that is itself damaged leaves all as it was', async () => {
    const before = start();
    await send(before);
    await stop(before);
    spoil();
    const [bytes, bad] = [readFileSync(file), join(folder, 'backup.sqlite')];
    writeFileSync(bad, bytes);
    expect(() => replaceBook(file, bad, AT)).toThrow('order book: broken');
    expect(readFileSync(file).equals(bytes)).toBe(true);
    expect(readdirSync(folder).filter((name) => name.startsWith('damaged-'))).toEqual([]);
  });

  it('is not needed to begin anew on purpose', async () => {
    const before = start();
    await send(before);
    await stop(before);
    spoil();
    expect(beginAnew(file, AT)).toBe('damaged-2026-11-25T19-00-00-000Z.sqlite');
    const bench = start();
    expect(allEntries(bench.book())).toEqual([]);
    expect((await send(bench)).status).toBe(201);
  });
});

describe('the check of the whole book', () => {
  it('runs at start and on request, and finds all whole', async () => {
    const bench = start();
    await send(bench);
    expect(bench.check.last().state).toBe('running');
    await vi.waitFor(() => expect(bench.check.last().state).toBe('done'), 20_000);
    const findings = { structure: [], orders: [], invoices: [], stock: [], snapshots: 0 };
    bench.check.start();
    await vi.waitFor(
      () => expect(bench.check.last()).toMatchObject({ state: 'done', at: AT, findings }),
      20_000,
    );
    expect(refusesWrites(bench.book())).toBe(false);
  });

  it('names orders, invoices, stock and copies of pieces that were changed, none of which closes the desk', async () => {
    const bench = start();
    const [one, other] = [await send(bench), await send(bench)];
    const { db } = bench.book();
    db.exec('PRAGMA ignore_check_constraints = ON');
    db.prepare(`UPDATE orders SET document = replace(document, 'Iris', 'Isis') WHERE number = ?`).run(
      one.order.number,
    );
    db.prepare(`UPDATE orders SET delivery = '{' WHERE number = ?`).run(other.order.number);
    db.prepare(`INSERT INTO invoice VALUES ('2026-0001', ?, 'invoice', NULL, ?, '{', NULL)`).run(
      one.order.number,
      AT,
    );
    db.exec(
      `INSERT INTO movement VALUES
         (1, 'agate-6', 'received', 64, NULL, NULL, '', NULL, NULL, '', 'machine', ''),
         (2, 'agate-6', 'struck', -46, NULL, NULL, '', NULL, 1, '', 'machine', ''),
         (3, 'jet-4', 'received', 9, NULL, NULL, '', NULL, NULL, '', 'machine', ''),
         (4, 'jet-4', 'struck', -9, NULL, NULL, '', NULL, 3, '', 'machine', '')`,
    );
    db.exec(`INSERT INTO snapshot VALUES (1, 'weir-light', 'r', 'd', '{}', '')`);
    expect(await checkWhole(file)).toEqual({
      structure: [],
      orders: expect.arrayContaining([one.order.number, other.order.number]) as string[],
      // The address of one, and a paper of the other, stand beside their documents.
      kept: expect.arrayContaining([one.order.number, other.order.number]) as string[],
      invoices: ['2026-0001'],
      stock: ['agate-6'],
      snapshots: 1,
    });
    await stop(bench);
    expect((await send(start())).status).toBe(201);
  });

  it('that finds the file itself damaged closes the book for writing', async () => {
    const before = start();
    for (let many = 0; many < 12; many += 1) await send(before);
    await stop(before);
    const bench = start();
    bench.book();
    await vi.waitFor(() => expect(bench.check.last().state).toBe('done'), 20_000);
    // A line of history of no order: the quick look at the start doesn't see it.
    const db = new DatabaseSync(file, { enableForeignKeyConstraints: false });
    db.exec(`INSERT INTO event (number, at, kind, text) VALUES ('gone', '', 'note', '')`);
    db.close();
    bench.check.start();
    await vi.waitFor(() => expect(bench.check.last().state).toBe('done'), 20_000);
    const last = bench.check.last();
    expect(last.state === 'done' && last.findings.structure.length).toBeGreaterThan(0);
    expect((await send(bench)).body.code).toBe('book-closed');
    expect(bench.usable()).toBe(null);
  });

  it('rejects for a file that is none', async () => {
    await expect(checkWhole(join(folder, 'nowhere.sqlite'))).rejects.toThrow();
  });
});

it('orders that were turned away are told of until one is taken again', async () => {
  const bench = start();
  await send(bench);
  expect(bench.turnedAway()).toBe(null);
  const other = new DatabaseSync(file);
  other.exec('BEGIN IMMEDIATE');
  expect((await send(bench)).body.code).toBe('book-locked');
  expect(bench.turnedAway()).toEqual({ since: AT, problem: 'locked' });
  other.exec('ROLLBACK');
  other.close();
  expect((await send(bench)).status).toBe(201);
  expect(bench.turnedAway()).toBe(null);
});
