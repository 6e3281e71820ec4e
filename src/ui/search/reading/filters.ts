/** What was asked for, as the index's own filters. */
import { fitsFilter } from '../marks.ts';
import type { Pair } from './vocabulary.ts';
import type { Ask } from './reading.ts';

/** Pagefind's filters: values by name, or several such joined. */
export type Filters = { readonly [name: string]: unknown };

const one = ([name, value]: Pair): Filters => ({ [name]: value });

/** Filters of one thing asked for; null for a word or a price, which aren't any. */
export function filterOf(ask: Ask): Filters | null {
  if (ask.by === 'word' || ask.by === 'cost') return null;
  if (ask.by === 'fits') return fitsFilter(ask.of, ask.leastMm, ask.mostMm);
  const any = { any: ask.any.map(one) };
  return ask.not ? { none: [any] } : any;
}
