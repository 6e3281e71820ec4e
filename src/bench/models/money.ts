/** An order's money as its page shows it. */
import type { Shop } from '#catalogue/model/catalogue.ts';
import { orderTotalMinor } from '#core/sizing/price/total.ts';
import { dueOf } from '../book/change.ts';
import type { Entry, Sum } from '../book/entry.ts';
import type { Ledger } from '../book/ledger.ts';
import { counts, ledgerFor, type Payment } from '../book/payments.ts';
import type { Recheck } from '../check/recheck.ts';

/** What the sum goes by: what was agreed; the piece now, or as it stood then; else what the buyer was shown. */
export type SumBasis = 'agreed' | 'now' | 'then' | 'shown';

export type Money = {
  /** By the maker's own figures of today, whatever was agreed. */
  readonly figure: Sum;
  /** What the order comes to: what was agreed on, else that figure. */
  readonly price: Sum;
  /** The same, or nothing where the order is cancelled. */
  readonly due: Sum;
  readonly basis: SumBasis;
  readonly payments: readonly Payment[];
  readonly ledger: Ledger;
  /** False for an order that was sent before the book kept money: nothing can be said of it. */
  readonly kept: boolean;
};

/** Adds up an order's money. `then`: the order computed by the piece as it stood; null where that is not known. */
export function moneyOf(
  entry: Entry,
  now: Recheck,
  then: Recheck | null,
  payments: readonly Payment[],
  { rules }: Pick<Shop, 'rules'>,
): Money {
  const reckoned = figureOf(entry, now, then, rules.currency);
  const due = dueOf(entry, reckoned.figure) ?? reckoned.figure;
  return {
    figure: reckoned.figure,
    price: entry.agreed ?? reckoned.figure,
    due,
    basis: entry.agreed === null ? reckoned.basis : 'agreed',
    payments,
    ledger: ledgerFor(due, payments),
    kept: entry.agreed !== null || entry.state !== 'sent' || payments.some((one) => counts(one, due)),
  };
}

/** Price and postage by the maker's own figures, never the buyer's where there are any. */
function figureOf(
  { document }: Entry,
  now: Recheck,
  then: Recheck | null,
  currency: string,
): { readonly figure: Sum; readonly basis: SumBasis } {
  const { shown, quantity } = document;
  for (const [basis, checked] of [
    ['now', now],
    ['then', then],
  ] as const) {
    const each = checked?.candidate?.priceMinor;
    if (checked === null || each === undefined) continue;
    const { postageMinor } = checked;
    return {
      figure: { minor: orderTotalMinor({ priceMinor: each, postageMinor }, quantity), currency },
      basis,
    };
  }
  return {
    figure: { minor: orderTotalMinor(shown, quantity), currency: shown.currency },
    basis: 'shown',
  };
}
