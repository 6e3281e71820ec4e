/** What an order's money comes to. Nothing of it is stored: it follows from the total and the payments. Sums in minor units. */
import type { LedgerProblem, MoneyStanding, PaymentKind } from '#words/benchCodes.ts';

export type Movement = { readonly kind: PaymentKind; readonly minor: number };

export type Ledger = {
  readonly totalMinor: number;
  readonly paidMinor: number;
  readonly refundedMinor: number;
  /** Still to be paid; below 0 what has to go back. */
  readonly openMinor: number;
  readonly standing: MoneyStanding;
};

/** Adds up. @param totalMinor what the order comes to, 0 or more */
export function ledgerOf(totalMinor: number, movements: readonly Movement[]): Ledger {
  const paidMinor = sumOf(movements, 'paid');
  const refundedMinor = sumOf(movements, 'refunded');
  const openMinor = totalMinor - paidMinor + refundedMinor;
  return { totalMinor, paidMinor, refundedMinor, openMinor, standing: standingOf(openMinor, totalMinor) };
}

/**
 * Why a movement can't be written down; null where it can.
 * @param really the maker says that more came in than was open
 */
export function refusalOf(
  ledger: Ledger,
  { kind, minor }: Movement,
  really: boolean,
  currency: string,
): LedgerProblem | null {
  const hereMinor = ledger.paidMinor - ledger.refundedMinor;
  if (kind === 'refunded') {
    return minor > hereMinor ? { code: 'more-than-paid', hereMinor, currency } : null;
  }
  const openMinor = Math.max(0, ledger.openMinor);
  return minor > openMinor && !really ? { code: 'more-than-open', openMinor, currency } : null;
}

function sumOf(movements: readonly Movement[], kind: PaymentKind): number {
  return movements.reduce((sum, one) => (one.kind === kind ? sum + one.minor : sum), 0);
}

function standingOf(openMinor: number, totalMinor: number): MoneyStanding {
  if (openMinor < 0) return 'to-pay-back';
  if (openMinor === 0) return 'settled';
  return openMinor === totalMinor ? 'unpaid' : 'part-paid';
}
