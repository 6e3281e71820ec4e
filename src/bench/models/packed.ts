/** What the packing slip says an order comes to. */
import type { Sum } from '../book/entry.ts';
import type { OrderDetail } from './orderDetail.ts';

export type Packed = {
  /** Price of one piece; null where what was agreed on doesn't part evenly. */
  readonly eachMinor: number | null;
  readonly postageMinor: number;
  /** What was agreed on, else the maker's own figure of today. */
  readonly total: Sum;
};

/** Parts the sum of an order into its pieces and the postage. */
export function packed({ entry, now, money }: Pick<OrderDetail, 'entry' | 'now' | 'money'>): Packed {
  const { quantity } = entry.document;
  const { postageMinor } = now.checked;
  const each = (money.price.minor - postageMinor) / quantity;
  return { eachMinor: each >= 0 && Number.isInteger(each) ? each : null, postageMinor, total: money.price };
}
