/** The lengths of a piece's strands, as they are read: from the shortest on, those that read alike once. */
import type { OrderFacts } from './orderFacts.ts';
import type { Format } from './format.ts';

/** Each length that can be told from the others, the shortest first. */
export function strandLengths(f: Pick<Format, 'length'>, lengthsMm: readonly number[]): string[] {
  return [...new Set(lengthsMm.toSorted((one, other) => one - other).map(f.length))];
}

/** The same in one line. */
export const strandLengthsText = (f: Pick<Format, 'length'>, lengthsMm: readonly number[]): string =>
  strandLengths(f, lengthsMm).join(' · ');

/** True where an order's strands differ in length, so that a length is that of the shortest; older orders don't tell, and are taken to. */
export function strandsDiffer(
  f: Pick<Format, 'length'>,
  { counts, strandsMm }: Pick<OrderFacts['shown'], 'counts' | 'strandsMm'>,
): boolean {
  if (counts.length < 2) return false;
  return strandsMm.length === 0 || strandLengths(f, strandsMm).length > 1;
}
