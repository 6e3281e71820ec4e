/** Money in the book: written down, struck out, kept in a backup and after its buyer is forgotten. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUp, restore } from '#bench/book/backup.ts';
import { change, dueOf, type Change } from '#bench/book/change.ts';
import { findEntry, history } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { openBook, type Book } from '#bench/book/open.ts';
import { ledgerFor, paymentsOf, type Entered } from '#bench/book/payments.ts';
import { receive } from '#bench/book/receive.ts';
import { sample } from '../../order/orders.ts';

const AT = '2026-11-25T19:00:00.000Z';
const { number } = sample;
const FIGURE = { minor: 6450, currency: 'GBP' };
let folder: string;
let book: Book;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'money-'));
  book = openBook(join(folder, 'orders.sqlite'), { busyMs: 50 });
  receive(book, [{ document: sample, way: 'desk', at: AT, now: null }]);
});
afterEach(() => {
  book.db.close();
  rmSync(folder, { recursive: true });
});

const versionNow = (): number => findEntry(book, number)?.version ?? 0;
const make = (wanted: Change, version = versionNow()) => change(book, number, version, AT, wanted, FIGURE);
const entered = (minor: number, kind: Entered['kind'] = 'paid'): Entered => ({
  kind,
  minor,
  currency: 'GBP',
  day: '2026-11-24',
  way: 'transfer',
});
const pay = (minor: number, really = false): Change => ({ kind: 'payment', entered: entered(minor), really });
const payBack = (minor: number): Change => ({
  kind: 'payment',
  entered: entered(minor, 'refunded'),
  really: false,
});
const ledger = () => {
  const entry = findEntry(book, number);
  const due = entry === null ? null : dueOf(entry, FIGURE);
  return due === null ? null : ledgerFor(due, paymentsOf(book, number));
};

describe('payments', () => {
  it('are kept with day, sum and way, and stand in the history', () => {
    expect(make(pay(3000))).toBe('done');
    expect(paymentsOf(book, number)).toEqual([{ ...entered(3000), id: 1, number, at: AT, struckAt: null }]);
    expect(history(book, number).map(({ kind, text }) => [kind, text])).toEqual([
      ['received', 'desk'],
      ['payment', '1'],
    ]);
    expect(ledger()).toMatchObject({ openMinor: 3450, standing: 'part-paid' });
  });

  it('of more than is open are refused by name, with nothing written, unless it really was more', () => {
    expect(make(pay(7000))).toEqual({ code: 'more-than-open', openMinor: 6450, currency: 'GBP' });
    expect(paymentsOf(book, number)).toEqual([]);
    expect(versionNow()).toBe(1);
    expect(make(pay(7000, true))).toBe('done');
    expect(ledger()).toMatchObject({ openMinor: -550, standing: 'to-pay-back' });
    expect(make(payBack(7001))).toMatchObject({ code: 'more-than-paid', hereMinor: 7000 });
    expect(make(payBack(550))).toBe('done');
    expect(ledger()).toMatchObject({ openMinor: 0, standing: 'settled' });
  });

  it('can’t be doubled from two windows', () => {
    const seen = versionNow();
    expect(make(pay(3000), seen)).toBe('done');
    expect(make(pay(3000), seen)).toBe('changed-meanwhile');
    expect(paymentsOf(book, number)).toHaveLength(1);
  });

  it('entered by mistake are struck out with a reason, and never below what went back', () => {
    make(pay(3000));
    make(payBack(1000));
    expect(make({ kind: 'strike', id: 1, reason: '' })).toEqual({ code: 'reason-missing' });
    expect(make({ kind: 'strike', id: 1, reason: 'twice' })).toEqual({ code: 'refund-rests-on-it' });
    expect(make({ kind: 'strike', id: 2, reason: 'other order' })).toBe('done');
    expect(make({ kind: 'strike', id: 1, reason: 'twice' })).toBe('done');
    expect(ledger()).toMatchObject({ paidMinor: 0, refundedMinor: 0, openMinor: 6450 });
    expect(paymentsOf(book, number).map(({ struckAt }) => struckAt)).toEqual([AT, AT]);
    expect(
      history(book, number)
        .slice(3)
        .map(({ kind, text }) => [kind, text]),
    ).toEqual([
      ['struck', '2'],
      ['reason', 'other order'],
      ['struck', '1'],
      ['reason', 'twice'],
    ]);
  });

  it('in another currency are kept and not counted', () => {
    make(pay(3000));
    const euros = { minor: 7500, currency: 'EUR' };
    expect(ledgerFor(euros, paymentsOf(book, number))).toMatchObject({ paidMinor: 0, openMinor: 7500 });
  });

  it('come back with a backup, and stay when the buyer is erased', () => {
    make(pay(3000));
    make({ kind: 'strike', id: 1, reason: 'Iris paid in cash' });
    make(pay(6450));
    const all = paymentsOf(book, number);
    const file = join(folder, 'backup.sqlite');
    backUp(book, file);
    make(payBack(6450));
    restore(book, file);
    expect(paymentsOf(book, number)).toEqual(all);
    erase(book, [number], AT);
    expect(paymentsOf(book, number)).toEqual(all);
    expect(history(book, number).find(({ kind }) => kind === 'reason')?.text).toBe('');
  });
});

describe('the sum of an order', () => {
  it('stands from agreement on, whatever the piece costs later, and is free again before it', () => {
    make({ kind: 'state', state: 'agreed' });
    expect(findEntry(book, number)?.agreed).toEqual(FIGURE);
    const dearer = { minor: 9900, currency: 'GBP' };
    change(book, number, versionNow(), AT, { kind: 'state', state: 'strung' }, dearer);
    expect(findEntry(book, number)?.agreed).toEqual(FIGURE);
    make({ kind: 'state', state: 'asked', reason: 'another clasp' });
    expect(findEntry(book, number)?.agreed).toBeNull();
    change(book, number, versionNow(), AT, { kind: 'state', state: 'agreed' }, dearer);
    expect(findEntry(book, number)?.agreed).toEqual(dearer);
  });

  it('of a cancelled order is nothing: what was paid has to go back', () => {
    make({ kind: 'state', state: 'agreed' });
    make(pay(3000));
    make({ kind: 'state', state: 'cancelled' });
    expect(ledger()).toMatchObject({ openMinor: -3000, standing: 'to-pay-back' });
  });
});

describe('an order that goes back', () => {
  it('needs a reason, which stands in the history', () => {
    make({ kind: 'state', state: 'strung' });
    expect(make({ kind: 'state', state: 'agreed' })).toEqual({ code: 'reason-missing' });
    expect(findEntry(book, number)?.state).toBe('strung');
    expect(make({ kind: 'state', state: 'agreed', reason: 'A crimp gave way' })).toBe('done');
    expect(make({ kind: 'state', state: 'cancelled' })).toBe('done');
    expect(make({ kind: 'state', state: 'new' })).toEqual({ code: 'reason-missing' });
    expect(history(book, number).map(({ kind, text }) => `${kind} ${text}`)).toEqual([
      'received desk',
      'state strung',
      'state agreed',
      'reason A crimp gave way',
      'state cancelled',
    ]);
  });
});
