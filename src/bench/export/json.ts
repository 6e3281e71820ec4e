/** Orders as JSON, each with its state, money, parcels and history: what another program, or this bench again, can read. */
import { history, type Entry, type Event } from '../book/entry.ts';
import { invoicesOf, type Invoice } from '../book/invoices.ts';
import type { Book } from '../book/open.ts';
import { parcelsOf, type Parcel } from '../book/parcels.ts';
import { paymentsOf, type Payment } from '../book/payments.ts';

export type Exported = Omit<Entry, 'snapshotId' | 'version'> & {
  /** In the events of these kinds, `text` is the id of one of them: payment, struck, parcel. */
  readonly payments: readonly Omit<Payment, 'number'>[];
  readonly parcels: readonly Parcel[];
  readonly invoices: readonly Omit<Invoice, 'number'>[];
  readonly history: readonly Event[];
};

export function toExport(book: Book, entries: readonly Entry[]): Exported[] {
  return entries.map(({ snapshotId: _snapshot, version: _version, ...entry }) => {
    const { number } = entry.document;
    return {
      ...entry,
      payments: paymentsOf(book, number).map(({ number: _number, ...one }) => one),
      parcels: parcelsOf(book, number),
      invoices: invoicesOf(book, number).map(({ number: _number, ...one }) => one),
      history: history(book, number),
    };
  });
}
