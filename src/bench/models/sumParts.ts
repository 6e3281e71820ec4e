/** The parts of an order's sum, as invoice and packing slip tell them. */
import { orderTotalMinor } from '#core/sizing/price/total.ts';
import type { OrderDetail } from './orderDetail.ts';

export type SumParts = {
  /** Of one piece. */
  readonly priceMinor: number;
  /** Of the whole order. */
  readonly postageMinor: number;
};

/** The price and the postage that the book knows and that add up to the sum; null where none do, as after a sum was agreed on by word. */
export function sumParts({
  entry,
  now,
  then,
  money,
}: Pick<OrderDetail, 'entry' | 'now' | 'then' | 'money'>): SumParts | null {
  const { quantity, shown } = entry.document;
  const known = [now, then].flatMap((way) => {
    const candidate = way?.checked.candidate ?? null;
    if (way === null || candidate === null) return [];
    return [{ priceMinor: candidate.priceMinor, postageMinor: way.checked.postageMinor }];
  });
  return [...known, shown].find((one) => orderTotalMinor(one, quantity) === money.price.minor) ?? null;
}
