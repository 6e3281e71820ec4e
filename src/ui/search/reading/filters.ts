/** What was asked for, as the index's own filters. */
import { fitsFilter } from '../marks.ts';
import type { Pair, Vocabulary } from './vocabulary.ts';
import type { Ask } from './reading.ts';

/** Pagefind's filters: values by name, or several such joined. */
export type Filters = { readonly [name: string]: unknown };

const one = ([name, value]: Pair): Filters => ({ [name]: value });

/** Filters of one thing asked for; null for a word, which isn't one. */
export function filterOf(ask: Ask, { figures }: Pick<Vocabulary, 'figures'>): Filters | null {
  if (ask.by === 'word') return null;
  if (ask.by === 'fits') return fitsFilter(ask.of, ask.leastMm, ask.mostMm);
  if (ask.by === 'cost') {
    const within = figures.cost.filter((cost) => Number(cost) >= ask.least && Number(cost) <= ask.most);
    // A price that nothing has: asked for all the same, so that nothing is found.
    return { cost: { any: within.length > 0 ? within : ['-'] } };
  }
  const any = { any: ask.any.map(one) };
  return ask.not ? { none: [any] } : any;
}
