/** Invoices in the book: numbers that never come twice and leave no gap, papers that stay as they are. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUp, restore } from '#bench/book/backup.ts';
import { change, type Change } from '#bench/book/change.ts';
import { findEntry, history } from '#bench/book/entry.ts';
import { erase, overdueForErasing } from '#bench/book/erase.ts';
import { isInvoiceContent, taxWithin, type InvoiceContent } from '#bench/book/invoiceContent.ts';
import { findInvoice, invoicesOf, missingInvoices, standing } from '#bench/book/invoices.ts';
import { openBook, type Book } from '#bench/book/open.ts';
import { receive } from '#bench/book/receive.ts';
import { makeNumber } from '#order/number.ts';
import { sample } from '../../order/orders.ts';

const AT = '2026-11-25T19:00:00.000Z';
const FIGURE = { minor: 6450, currency: 'GBP' };
const content: InvoiceContent = {
  version: 1,
  lang: 'en',
  seller: { shop: 'Test Bench', name: 'A. Maker', address: ['Nowhere 1'], taxNumber: null },
  buyer: { name: 'Quillfeather', address: ['Osier Lane 3', 'Reedham'] },
  orderedOn: '2026-11-25',
  issuedOn: '2026-11-25',
  items: [{ text: 'Weir Light', quantity: 1, eachMinor: 6450, sumMinor: 6450 }],
  currency: 'GBP',
  totalMinor: 6450,
  tax: { text: 'none', hundredths: null, minor: null },
  payments: [],
  openMinor: 6450,
  reason: '',
};
let folder: string;
let book: Book;
let seed = 7;
const random = () => (seed = (seed * 48271) % 2147483647) & 255;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'invoices-'));
  book = openBook(join(folder, 'orders.sqlite'), { busyMs: 50 });
});
afterEach(() => {
  if (book.db.isOpen) book.db.close();
  rmSync(folder, { recursive: true });
});

/** A new order, agreed on. */
function agreed(): string {
  const number = makeNumber(random);
  receive(book, [{ document: { ...sample, number }, way: 'desk', at: AT, now: null }]);
  make(number, { kind: 'state', state: 'agreed' });
  return number;
}
const make = (number: string, wanted: Change, at = AT) =>
  change(book, number, findEntry(book, number)?.version ?? 0, at, wanted, FIGURE);
const issue = (number: string, prefix = '2026-', at = AT) =>
  make(number, { kind: 'invoice', prefix, content }, at);
const takeBack = (number: string, corrects: string, reason = 'Wrong address') =>
  make(number, { kind: 'credit-note', prefix: '2026-', corrects, reason });
const all = (): string[] =>
  book.db
    .prepare('SELECT invoice FROM invoice ORDER BY rowid')
    .all()
    .map(({ invoice }) => String(invoice));

describe('an invoice', () => {
  it('gets the next number in the write that keeps it, with its line of history', () => {
    const [one, two] = [agreed(), agreed()];
    expect(issue(one)).toBe('done');
    expect(issue(two)).toBe('done');
    expect(all()).toEqual(['2026-0001', '2026-0002']);
    expect(findInvoice(book, '2026-0002')).toEqual({
      invoice: '2026-0002',
      number: two,
      kind: 'invoice',
      corrects: null,
      issuedAt: AT,
      content,
      erasedAt: null,
    });
    expect(history(book, two).at(-1)).toMatchObject({ kind: 'invoice', text: '2026-0002' });
    expect(issue(agreed(), '2027-')).toBe('done');
    expect(all().at(-1)).toBe('2027-0001');
  });

  it('leaves no gap where it could not be issued', () => {
    const number = agreed();
    expect(issue(number)).toBe('done');
    expect(issue(number)).toEqual({ code: 'invoice-stands', invoice: '2026-0001' });
    expect(change(book, number, 1, AT, { kind: 'invoice', prefix: '2026-', content })).toBe(
      'changed-meanwhile',
    );
    const broken = { ...content, toJSON: () => 1n } as unknown as InvoiceContent;
    expect(() => make(agreed(), { kind: 'invoice', prefix: '2026-', content: broken })).toThrow(TypeError);
    expect(issue(agreed())).toBe('done');
    expect(all()).toEqual(['2026-0001', '2026-0002']);
    expect(missingInvoices(book)).toEqual([]);
  });

  it('is for what was agreed on, and for somebody', () => {
    const number = makeNumber(random);
    receive(book, [{ document: { ...sample, number }, way: 'desk', at: AT, now: null }]);
    expect(issue(number)).toEqual({ code: 'not-agreed' });
    make(number, { kind: 'state', state: 'cancelled' });
    expect(issue(number)).toEqual({ code: 'not-agreed' });
    const gone = agreed();
    erase(book, [gone], AT);
    expect(issue(gone)).toEqual({ code: 'buyer-erased' });
  });

  it('fixes the sum of an order that was agreed on before the book kept money', () => {
    const number = agreed();
    book.db.exec('UPDATE orders SET agreed_minor = NULL, agreed_currency = NULL');
    issue(number);
    expect(findEntry(book, number)?.agreed).toEqual(FIGURE);
  });

  it('is taken back by a credit note with a number of its own, once, and then another can be issued', () => {
    const number = agreed();
    issue(number);
    expect(takeBack(number, '2026-0001', '')).toEqual({ code: 'reason-missing' });
    expect(takeBack(number, '2026-0001')).toBe('done');
    expect(takeBack(number, '2026-0001')).toEqual({ code: 'changed-meanwhile' });
    expect(standing(invoicesOf(book, number))).toBeNull();
    expect(issue(number)).toBe('done');
    expect(invoicesOf(book, number).map(({ invoice, kind, corrects }) => [invoice, kind, corrects])).toEqual([
      ['2026-0001', 'invoice', null],
      ['2026-0002', 'credit-note', '2026-0001'],
      ['2026-0003', 'invoice', null],
    ]);
    expect(findInvoice(book, '2026-0002')?.content).toMatchObject({
      totalMinor: 6450,
      reason: 'Wrong address',
    });
    expect(findInvoice(book, '2026-0001')?.content).toEqual(content);
  });

  it('is numbered without gap or repeat whatever is asked for in whatever order', () => {
    let issued = 0;
    let refused = 0;
    const ask = fc.tuple(fc.constantFrom('issue', 'back'), fc.nat({ max: 2 }));
    fc.assert(
      fc.property(fc.array(ask, { minLength: 5, maxLength: 20 }), (asks) => {
        book.db.exec('DELETE FROM invoice; DELETE FROM invoice_count');
        const orders = [agreed(), agreed(), agreed()];
        for (const [what, at] of asks) {
          const number = orders[at] ?? '';
          const stands = standing(invoicesOf(book, number))?.invoice ?? 'none';
          const outcome = what === 'issue' ? issue(number) : takeBack(number, stands);
          if (outcome === 'done') issued += 1;
          else refused += 1;
        }
        const numbers = all();
        expect(numbers).toEqual(numbers.map((_, at) => `2026-${String(at + 1).padStart(4, '0')}`));
      }),
      { numRuns: 30 },
    );
    expect(issued).toBeGreaterThan(100);
    expect(refused).toBeGreaterThan(50);
  });
});

describe('a backup', () => {
  it('brings invoices back, and no number that went out after it comes twice', () => {
    const [one, two] = [agreed(), agreed()];
    issue(one);
    const file = join(folder, 'backup.sqlite');
    backUp(book, file);
    issue(two);
    restore(book, file);
    expect(all()).toEqual(['2026-0001']);
    expect(missingInvoices(book)).toEqual(['2026-0002']);
    issue(two);
    expect(all()).toEqual(['2026-0001', '2026-0003']);
  });

  it('with a paper that no bench wrote is refused', () => {
    issue(agreed());
    const file = join(folder, 'backup.sqlite');
    backUp(book, file);
    const db = new DatabaseSync(file);
    db.exec(`UPDATE invoice SET content = '{"version":1}'`);
    db.close();
    expect(() => restore(book, file)).toThrow('order book: broken');
    const payment = join(folder, 'payment.sqlite');
    backUp(book, payment);
    const other = new DatabaseSync(payment);
    other.exec('DROP TABLE payment; CREATE TABLE payment (a, b, c, d, e, f, g, h, i)');
    other.exec(`INSERT INTO payment SELECT 1, number, 'gift', 1, 'GBP', '', '', '', NULL FROM orders`);
    other.close();
    expect(() => restore(book, payment)).toThrow('order book: broken');
    expect(all()).toEqual(['2026-0001']);
  });
});

describe('erasing a buyer', () => {
  const bytes = (): string => {
    book.db.close();
    return readFileSync(book.file, 'latin1');
  };

  it('takes name and address out of the invoices too, and leaves their sums', () => {
    const number = agreed();
    issue(number);
    takeBack(number, '2026-0001', 'marmalade');
    erase(book, [number], AT);
    expect(
      invoicesOf(book, number).map((one) => [one.content.buyer, one.content.totalMinor, one.erasedAt]),
    ).toEqual([
      [{ name: '', address: [] }, 6450, AT],
      [{ name: '', address: [] }, 6450, AT],
    ]);
    const file = bytes();
    for (const word of ['Quillfeather', 'Osier Lane', 'marmalade']) expect(file).not.toContain(word);
  });

  it('leaves them as they are while they have to be kept, and comes back for them', () => {
    const number = agreed();
    issue(number, '2026-', '2026-11-25T19:00:00.000Z');
    make(number, { kind: 'state', state: 'sent' });
    const later = '2028-12-01T00:00:00.000Z';
    const since = '2022-12-01T00:00:00.000Z';
    expect(erase(book, [number], later, since).count).toBe(1);
    expect(findInvoice(book, '2026-0001')?.content).toEqual(content);
    expect(overdueForErasing(book, later, since)).toEqual([]);
    const muchLater = '2032-12-01T00:00:00.000Z';
    const sinceThen = '2026-12-01T00:00:00.000Z';
    expect(overdueForErasing(book, muchLater, sinceThen)).toEqual([number]);
    expect(erase(book, [number], muchLater, sinceThen).count).toBe(1);
    expect(overdueForErasing(book, muchLater, sinceThen)).toEqual([]);
    expect(findEntry(book, number)?.erasedAt).toBe(later);
    expect(bytes()).not.toContain('Quillfeather');
  });
});

it('believes only what an invoice may say', () => {
  expect(isInvoiceContent(content)).toBe(true);
  for (const wrong of [
    null,
    { ...content, more: 1 },
    { ...content, issuedOn: '2026-02-30' },
    { ...content, totalMinor: 1.5 },
    { ...content, buyer: { name: 'x' } },
    { ...content, lang: 'xx' },
  ]) {
    expect(isInvoiceContent(wrong)).toBe(false);
  }
});

it('reckons the tax within a sum to the nearest minor unit', () => {
  expect(taxWithin(12_000, 2000)).toBe(2000);
  expect(taxWithin(6450, 1900)).toBe(1030);
  expect(taxWithin(999, 810)).toBe(75);
  fc.assert(
    fc.property(fc.nat({ max: 1_000_000_000 }), fc.integer({ min: 0, max: 9999 }), (sum, hundredths) => {
      const tax = taxWithin(sum, hundredths);
      // Against the exact quotient, in whole numbers.
      const twice = 2n * BigInt(sum) * BigInt(hundredths);
      const by = 10_000n + BigInt(hundredths);
      const off = 2n * BigInt(tax) * by - twice;
      expect(off <= by && -off <= by).toBe(true);
    }),
  );
});
