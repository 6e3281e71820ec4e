import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUp, restore } from '#bench/book/backup.ts';
import { change } from '#bench/book/change.ts';
import { isDay } from '#words/day.ts';
import { findEntry, history } from '#bench/book/entry.ts';
import { erase, overdueForErasing } from '#bench/book/erase.ts';
import { APPLICATION_ID, MIGRATIONS } from '#bench/book/migrations.ts';
import { openBook, type Book } from '#bench/book/open.ts';
import { openInbox } from '#bench/book/inbox.ts';
import { receive } from '#bench/book/receive.ts';
import { countByState, search } from '#bench/book/search.ts';
import { sha256 } from '#bench/book/snapshot.ts';
import type { OrderDocument } from '#order/document.ts';
import { makeNumber } from '#order/number.ts';
import { sample } from '../../order/orders.ts';

const AT = '2026-11-25T19:00:00.000Z';
let folder: string;
let book: Book;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'book-'));
  book = openBook(join(folder, 'inner', 'orders.sqlite'), { busyMs: 50 });
});
afterEach(() => {
  if (book.db.isOpen) book.db.close();
  rmSync(folder, { recursive: true });
});

let seed = 1;
const random = () => (seed = (seed * 48271) % 2147483647) & 255;
const order = (fields: Partial<OrderDocument> = {}): OrderDocument => ({
  ...sample,
  number: makeNumber(random),
  ...fields,
});
const take = (document: OrderDocument, at = AT) =>
  receive(book, [{ document, way: 'desk', at, now: null }])[0];

describe('receiving', () => {
  it('keeps what came in', () => {
    expect(take(sample)).toEqual({ outcome: 'received', number: sample.number, receivedAt: AT });
    expect(findEntry(book, sample.number)?.document).toEqual(sample);
    expect(history(book, sample.number)).toEqual([{ at: AT, kind: 'received', text: 'desk' }]);
  });

  it('takes the same order once, however its fields are ordered', () => {
    take(sample);
    const shuffled = Object.fromEntries(Object.entries(sample).reverse()) as OrderDocument;
    expect(take(shuffled, '2026-11-26T08:00:00.000Z')).toEqual({
      outcome: 'same',
      number: sample.number,
      receivedAt: AT,
    });
    expect(history(book, sample.number)).toHaveLength(1);
  });

  it('refuses another order with the same number', () => {
    take(sample);
    expect(take({ ...sample, quantity: 2 })?.outcome).toBe('number-taken');
    expect(findEntry(book, sample.number)?.document.quantity).toBe(1);
  });

  it('writes orders of one moment together and answers each', async () => {
    const inbox = openInbox(book);
    const documents = Array.from({ length: 150 }, () => order());
    const [first] = documents;
    const answers = await Promise.all(
      [...documents, first as OrderDocument].map((document) =>
        inbox({ document, way: 'desk', at: AT, now: null }),
      ),
    );
    expect(answers.map((one) => one.number)).toEqual([...documents, first].map((one) => one?.number));
    expect(answers.at(-1)?.outcome).toBe('same');
    expect(search(book, { text: '', state: 'all', today: '2026-11-25', page: 0 }).total).toBe(150);
  });
});

describe('a book that can not be written', () => {
  it('says that it is locked', async () => {
    const other = new DatabaseSync(book.file);
    other.exec('BEGIN IMMEDIATE');
    expect(() => take(sample)).toThrow('order book: locked');
    const inbox = openInbox(book);
    await expect(inbox({ document: sample, way: 'desk', at: AT, now: null })).rejects.toThrow(
      'order book: locked',
    );
    other.exec('ROLLBACK');
    other.close();
    expect(take(sample)?.outcome).toBe('received');
  });

  it('says that the disk is full, and holds no half of an order', () => {
    const pages = Number(book.db.prepare('PRAGMA page_count').get()?.page_count);
    book.db.exec(`PRAGMA max_page_count = ${pages + 2}`);
    const large = { ...sample.buyer, note: 'x'.repeat(900) };
    let taken = 0;
    const fill = (): void => {
      for (; taken < 100; taken += 1) take(order({ buyer: large }));
    };
    expect(fill).toThrow('order book: full');
    expect(taken).toBeGreaterThan(0);
    const { total } = search(book, { text: '', state: 'all', today: '2026-11-25', page: 0 });
    expect(total).toBe(taken);
    expect(book.db.prepare('SELECT count(*) AS n FROM event').get()?.n).toBe(taken);
    expect(book.db.prepare('PRAGMA integrity_check').get()?.integrity_check).toBe('ok');
  });

  it('says what else a file is', () => {
    const text = join(folder, 'letter.txt');
    writeFileSync(text, 'Dear Wren, '.repeat(200));
    expect(() => openBook(text)).toThrow('order book: not-a-book');
    const foreign = new DatabaseSync(join(folder, 'foreign.sqlite'));
    foreign.exec('CREATE TABLE song (title TEXT)');
    foreign.close();
    expect(() => openBook(join(folder, 'foreign.sqlite'))).toThrow('order book: not-a-book');
    book.db.exec(`PRAGMA user_version = ${MIGRATIONS.length + 1}`);
    expect(() => openBook(book.file)).toThrow('order book: newer-book');
    expect(() => openBook(join(text, 'orders.sqlite'))).toThrow('order book: unreachable');
  });
});

describe('two benches on one book', () => {
  it('see each other’s orders, and neither overwrites a change unseen', () => {
    const other = openBook(book.file, { busyMs: 50 });
    take(sample);
    const seen = findEntry(other, sample.number);
    expect(seen?.version).toBe(1);
    expect(change(book, sample.number, 1, AT, { kind: 'state', state: 'agreed' })).toBe('done');
    expect(change(other, sample.number, 1, AT, { kind: 'state', state: 'cancelled' })).toBe(
      'changed-meanwhile',
    );
    expect(findEntry(other, sample.number)?.state).toBe('agreed');
    expect(receive(other, [{ document: sample, way: 'file', at: AT, now: null }])[0]?.outcome).toBe('same');
    other.db.close();
  });
});

describe('changes', () => {
  it('leave their history', () => {
    take(sample);
    change(book, sample.number, 1, AT, { kind: 'state', state: 'asked' });
    change(book, sample.number, 2, AT, { kind: 'due', on: '2026-12-20' });
    change(book, sample.number, 3, AT, { kind: 'note', text: 'She rang: leave the tag off.' });
    change(book, sample.number, 4, AT, { kind: 'message', message: 'agreed' });
    expect(history(book, sample.number).map((one) => [one.kind, one.text])).toEqual([
      ['received', 'desk'],
      ['state', 'asked'],
      ['due', '2026-12-20'],
      ['note', 'She rang: leave the tag off.'],
      ['message', 'agreed'],
    ]);
    expect(findEntry(book, sample.number)).toMatchObject({ state: 'asked', dueOn: '2026-12-20', version: 5 });
  });

  it('keep their order when the clock has gone back', () => {
    take(sample, '2036-01-01T00:00:00.000Z');
    change(book, sample.number, 1, '2026-01-01T00:00:00.000Z', { kind: 'state', state: 'sent' });
    expect(history(book, sample.number).map((one) => one.kind)).toEqual(['received', 'state']);
  });

  it('refuse what no form sends', () => {
    take(sample);
    expect(change(book, 'TX2-FYF-HTW', 1, AT, { kind: 'state', state: 'new' })).toBe('no-such-order');
    expect(() => change(book, sample.number, 1, AT, { kind: 'state', state: 'lost' as 'new' })).toThrow(
      RangeError,
    );
    expect(() => change(book, sample.number, 1, AT, { kind: 'due', on: '2026-02-30' })).toThrow(RangeError);
    expect(() => change(book, sample.number, 1, AT, { kind: 'note', text: '' })).toThrow(RangeError);
    expect(isDay('2028-02-29')).toBe(true);
  });
});

describe('searching', () => {
  it('finds by name, number, note and the maker’s notes, without accents or case', () => {
    take(sample);
    take(order({ buyer: { name: 'Zoë Straße', email: 'zoe@example.org', note: '' } }));
    change(book, sample.number, 1, AT, { kind: 'note', text: 'Porch box, blue door' });
    const numbers = (text: string) =>
      search(book, { text, state: 'all', today: '2026-11-25', page: 0 }).entries.map(
        (one) => one.document.buyer.name,
      );
    expect(numbers('iris moller')).toEqual(['Iris Møller']);
    expect(numbers('ZOE STRASSE')).toEqual(['Zoë Straße']);
    expect(numbers('tx2fyf')).toEqual(['Iris Møller']);
    expect(numbers('blue door')).toEqual(['Iris Møller']);
    expect(numbers("%' OR 1=1 --")).toEqual([]);
  });

  it('filters by state and lateness, soonest due day first', () => {
    const [late, soon, sent] = [order(), order(), order()];
    for (const one of [late, soon, sent]) take(one);
    change(book, late.number, 1, AT, { kind: 'due', on: '2026-11-20' });
    change(book, soon.number, 1, AT, { kind: 'due', on: '2026-12-01' });
    change(book, sent.number, 1, AT, { kind: 'state', state: 'sent' });
    const found = (state: 'open' | 'late' | 'sent') =>
      search(book, { text: '', state, today: '2026-11-25', page: 0 }).entries.map(
        (one) => one.document.number,
      );
    expect(found('open')).toEqual([late.number, soon.number]);
    expect(found('late')).toEqual([late.number]);
    expect(found('sent')).toEqual([sent.number]);
    expect(countByState(book)).toMatchObject({ new: 2, sent: 1, cancelled: 0 });
  });
});

describe('erasing a buyer', () => {
  it('leaves no byte of her in the file, and the figures', () => {
    const buyer = { name: 'Quillfeather', email: 'quill@feather.example', note: 'xylophone' };
    const document = order({ buyer, choices: { 'gift-for': 'Zebedee' } });
    take(document);
    change(book, document.number, 1, AT, { kind: 'note', text: 'marmalade' });
    expect(erase(book, [document.number, document.number], AT).count).toBe(1);
    const entry = findEntry(book, document.number);
    expect(entry?.document).toEqual({ ...document, choices: {}, buyer: { name: '', email: '', note: '' } });
    expect(entry?.erasedAt).toBe(AT);
    expect(take(document)?.outcome).toBe('same');
    book.db.close();
    const bytes = ['', '-wal'].map((end) => {
      try {
        return readFileSync(book.file + end, 'latin1');
      } catch {
        return '';
      }
    });
    for (const word of ['Quillfeather', 'feather.example', 'xylophone', 'Zebedee', 'marmalade']) {
      expect(bytes.join('')).not.toContain(word);
    }
  });

  it('is due for closed orders only, once their time is over', () => {
    const [open, old, fresh] = [order(), order(), order()];
    for (const one of [open, old, fresh]) take(one, '2020-01-01T00:00:00.000Z');
    change(book, old.number, 1, '2020-02-01T00:00:00.000Z', { kind: 'state', state: 'sent' });
    change(book, fresh.number, 1, AT, { kind: 'state', state: 'sent' });
    expect(overdueForErasing(book, '2024-01-01T00:00:00.000Z')).toEqual([old.number]);
  });
});

describe('backup', () => {
  it('brings the whole book back, and nothing that opens the bench', () => {
    take(sample);
    change(book, sample.number, 1, AT, { kind: 'note', text: 'kept' });
    book.db.exec(`INSERT INTO setting VALUES ('passphrase', 'secret-hash')`);
    const file = join(folder, 'backup.sqlite');
    backUp(book, file);
    expect(readFileSync(file, 'latin1')).not.toContain('secret-hash');
    const other = order();
    take(other);
    expect(restore(book, file)).toBe(1);
    expect(findEntry(book, other.number)).toBe(null);
    expect(history(book, sample.number).map((one) => one.text)).toEqual(['desk', 'kept']);
    expect(book.db.prepare('SELECT value FROM setting').get()?.value).toBe('secret-hash');
    expect(take(sample)?.outcome).toBe('same');
  });

  it('of an older version is brought up to date', () => {
    const file = join(folder, 'old.sqlite');
    const old = new DatabaseSync(file);
    old.exec(MIGRATIONS[0] as string);
    old.exec(`PRAGMA application_id = ${APPLICATION_ID}; PRAGMA user_version = 1`);
    old
      .prepare(`INSERT INTO orders VALUES (?, ?, NULL, ?, 'desk', 'new', NULL, NULL, 1, NULL)`)
      .run(sample.number, JSON.stringify(sample), AT);
    old.close();
    expect(restore(book, file)).toBe(1);
    expect(findEntry(book, sample.number)?.document).toEqual(sample);
  });

  it.each<[string, (db: DatabaseSync) => void, string]>([
    ['a stranger', (db) => db.exec('PRAGMA application_id = 1'), 'not-a-book'],
    [
      'a trigger in it',
      (db) => db.exec('CREATE TRIGGER t AFTER INSERT ON event BEGIN SELECT 1; END'),
      'not-a-book',
    ],
    ['a later version', (db) => db.exec('PRAGMA user_version = 99'), 'newer-book'],
    [
      'an order that is none, with a digest that fits',
      (db) => {
        const none = '{"format":"x"}';
        db.prepare('UPDATE orders SET document = ?, digest = ?').run(none, sha256(none));
      },
      'broken',
    ],
    ['a view in it', (db) => db.exec('CREATE VIEW others AS SELECT * FROM orders'), 'not-a-book'],
    [
      'an event without its order',
      (db) => db.exec(`PRAGMA foreign_keys = OFF; INSERT INTO event VALUES (99, 'X', '', 'note', '')`),
      'broken',
    ],
  ])('is refused with %s, the book as it was', (_, spoil, problem) => {
    take(sample);
    const file = join(folder, 'backup.sqlite');
    backUp(book, file);
    const db = new DatabaseSync(file);
    spoil(db);
    db.close();
    const kept = order();
    take(kept);
    expect(() => restore(book, file)).toThrow(`order book: ${problem}`);
    expect(findEntry(book, kept.number)?.document).toEqual(kept);
  });

  it('is refused where its pages are damaged or cut', () => {
    take(sample);
    const file = join(folder, 'backup.sqlite');
    backUp(book, file);
    const bytes = readFileSync(file);
    writeFileSync(file, bytes.subarray(0, bytes.length - 5000));
    expect(() => restore(book, file)).toThrow('order book: broken');
    writeFileSync(file, 'not a database at all, '.repeat(100));
    expect(() => restore(book, file)).toThrow('order book: not-a-book');
    expect(findEntry(book, sample.number)?.document).toEqual(sample);
  });
});
