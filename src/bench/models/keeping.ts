/** How long buyers' data is kept. */
import type { Shop } from '#catalogue/model/catalogue.ts';
import type { BenchWords } from '#words/words.ts';
import { isCopyName } from '../book/copies.ts';
import type { Erased } from '../book/erase.ts';
import type { Replaced } from '../book/replace.ts';

/** ISO 8601 instant `months` before `nowIso`: what was closed before it is past its time. */
export function keptSince(nowIso: string, months: number): string {
  const date = new Date(nowIso);
  const day = date.getUTCDate();
  date.setUTCDate(1);
  date.setUTCMonth(date.getUTCMonth() - months);
  const lastDay = new Date(Date.UTC(date.getUTCFullYear(), date.getUTCMonth() + 1, 0)).getUTCDate();
  date.setUTCDate(Math.min(day, lastDay));
  return date.toISOString();
}

/** Invoices issued before this instant lose name and address with their order; null where none has to keep them. */
export function invoicesSince(nowIso: string, { orders }: Pick<Shop, 'orders'>): string | null {
  return orders.keepInvoicesMonths === null ? null : keptSince(nowIso, orders.keepInvoicesMonths);
}

/** Where Safe-keeping tells what was erased, and in which copies it could not be. */
export function erasedLocation({ count, unreached }: Erased): `/${string}` {
  const query = new URLSearchParams({ done: 'erased', count: String(count), unreached: unreached.join(' ') });
  return `/bench/keep/?${query.toString()}`;
}

/** Names of copies in an address; anything else is left out. */
export function copyNamesOf(query: URLSearchParams, field: string): string[] {
  return (query.get(field) ?? '').split(' ').filter(isCopyName);
}

/** Where Safe-keeping tells what the book holds now, and where that is which lay there before. */
export function restoredLocation({ count, aside, carried }: Replaced): `/${string}` {
  const query = new URLSearchParams({ done: 'restored', count: String(count), kept: aside ?? '' });
  if (!carried) query.set('lost', 'yes');
  return `/bench/keep/?${query.toString()}`;
}

/** What an address says was just done, a sentence each. */
export function doneSentences(query: URLSearchParams, { keep }: BenchWords): string[] {
  const count = Number(query.get('count') ?? 0);
  if (query.get('done') === 'erased') return [keep.erased(count)];
  if (query.get('done') !== 'restored') return [];
  const aside = copyNamesOf(query, 'kept');
  return [
    keep.restored(count),
    ...aside.map((name) => keep.setAside(name)),
    ...(query.has('lost') && aside.length > 0 ? [keep.lost] : []),
  ];
}
