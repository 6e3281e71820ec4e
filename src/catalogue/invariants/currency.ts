/** Every amount is in the shop's one currency. */
import type { Money } from '../fields/money.ts';
import type { Entry } from '../read/entry.ts';
import type { FieldPath, Problem } from '../read/problem.ts';

/** Problems of an amount in another currency than the shop's; passes where there is none, and where the shop couldn't be read. */
export function assertCurrency(
  entry: Pick<Entry<unknown>, 'problemAt'>,
  path: FieldPath,
  amount: Money | undefined,
  currency: string | null,
): Problem[] {
  if (amount === undefined || currency === null || amount.currency === currency) return [];
  return [entry.problemAt(path, { code: 'currency-other', value: amount.written, currency })];
}
