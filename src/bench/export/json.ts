/** Orders as JSON, each with its state, money, parcels and history: what another program, or this bench again, can read. */
import {
  damageOf,
  history,
  remainsOf,
  type Damage,
  type Entry,
  type Event,
  type Unreadable,
} from '../book/entry.ts';
import { invoicesOf, type Invoice } from '../book/invoices.ts';
import type { Book } from '../book/open.ts';
import { parcelsOf, type Parcel } from '../book/parcels.ts';
import type { AllOrders } from '../book/search.ts';
import { paymentsOf, type Payment } from '../book/payments.ts';

type Around = {
  /** In the events of these kinds, `text` is the id of one of them: payment, struck, parcel. */
  readonly payments: readonly Omit<Payment, 'number'>[];
  readonly parcels: readonly Parcel[];
  readonly invoices: readonly Omit<Invoice, 'number'>[];
  readonly history: readonly Event[];
  /** '' where all is as it was written. */
  readonly damage: Damage;
};

export type Exported =
  | (Omit<Entry, 'snapshotId' | 'version' | 'damaged'> & Around)
  /** `document`: what is left of it, as text. */
  | (Unreadable & Around & { readonly document: string | null });

/** The oldest first; those that can't be read come last. */
export function toExport(book: Book, { entries, unreadable, altered }: AllOrders): Exported[] {
  return [
    ...entries.map((entry) => {
      const { snapshotId: _snapshot, version: _version, damaged: _damaged, ...rest } = entry;
      return {
        ...rest,
        ...around(book, entry.document.number),
        damage: damageOf(entry, altered.has(entry.document.number)),
      };
    }),
    ...unreadable.map((one) => ({
      ...one,
      ...around(book, one.number),
      document: remainsOf(book, one.number),
      damage: damageOf(one),
    })),
  ];
}

function around(book: Book, number: string): Omit<Around, 'damage'> {
  return {
    payments: paymentsOf(book, number).map(({ number: _number, ...one }) => one),
    parcels: parcelsOf(book, number),
    invoices: invoicesOf(book, number).map(({ number: _number, ...one }) => one),
    history: history(book, number),
  };
}
