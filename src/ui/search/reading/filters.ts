/** What was asked for, as the index's own filters. */
import { fitsFilter } from '../marks.ts';
import type { Pair } from './vocabulary.ts';
import type { Ask } from './reading.ts';

/** Pagefind's filters: values by name, or several such joined. */
export type Filters = { readonly [name: string]: unknown };

const one = ([name, value]: Pair): Filters => ({ [name]: value });

/** True where nothing is asked for but what lies there. @param status of that, as the index has it */
export const asksReady = (asks: readonly Ask[], status: string): boolean =>
  asks.some(
    (ask) =>
      ask.by === 'pairs' &&
      ask.group === 'status' &&
      !ask.not &&
      ask.any.every(([, value]) => value === status),
  );

/**
 * Filters of one thing asked for; null for a word or a price, which aren't any.
 * @param ready true where nothing is asked for but what lies there
 */
export function filterOf(ask: Ask, ready: boolean): Filters | null {
  if (ask.by === 'word' || ask.by === 'cost') return null;
  if (ask.by === 'fits') return fitsFilter(ask.of, ask.leastMm, ask.mostMm, ready);
  const any = { any: ask.any.map(one) };
  return ask.not ? { none: [any] } : any;
}
