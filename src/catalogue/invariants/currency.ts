/** Every amount is in the shop's one currency. */
import type { Money } from '../fields/money.ts';
import type { Entry } from '../read/entry.ts';
import type { FieldPath, Problem } from '../read/problem.ts';

/** Problems of an amount in another currency than the shop's; passes where the shop couldn't be read. */
export function assertCurrency(
  entry: Pick<Entry<unknown>, 'problemAt'>,
  path: FieldPath,
  amount: Money,
  currency: string | null,
): Problem[] {
  if (currency === null || amount.currency === currency) return [];
  return [entry.problemAt(path, { code: 'currency-other', value: amount.written, currency })];
}
