/** From an address to an order, or to the answer that there is none. */
import { readNumber } from '#order/number.ts';

/** The number of an address as the book writes it; '' where it is none. */
export function numberOf(text: string | undefined): string {
  const read = readNumber(text ?? '');
  return 'number' in read ? read.number : '';
}
