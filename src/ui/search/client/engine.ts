/** Pagefind behind the one question the page asks. Its files are fetched at the first call, not before. */
import type { Sort } from '../query.ts';

type Filters = Readonly<Record<string, unknown>>;
type Order = Readonly<Record<string, 'asc' | 'desc'>>;

/** What the index keeps of a piece for showing it. */
export type Hit = {
  readonly url: string;
  readonly meta: Readonly<Record<string, string | undefined>>;
  readonly filters: Readonly<Record<string, readonly string[] | undefined>>;
};

type SearchResult = { readonly results: readonly { readonly data: () => Promise<Hit> }[] };

type Pagefind = {
  readonly options: (options: object) => Promise<void>;
  readonly init: () => Promise<void>;
  readonly preload: (words: string, options?: object) => Promise<void>;
  readonly search: (words: string | null, options: object) => Promise<SearchResult>;
};

export type Engine = {
  /** Starts fetching what any search needs. */
  readonly warm: () => Promise<void>;
  /** Pieces that hold all the words and pass every one of the filters. */
  readonly search: (
    words: string,
    filters: readonly Filters[],
    sort: Sort,
  ) => Promise<SearchResult['results']>;
};

const ORDERS: Readonly<Record<Sort, Order | null>> = {
  best: null,
  newest: { made: 'desc' },
  cheapest: { price: 'asc' },
  dearest: { price: 'desc' },
  shortest: { length: 'asc' },
};

/** @param address where the index's script lies */
export function searchEngine(address: string): Engine {
  let loading: Promise<Pagefind> | null = null;

  const load = (): Promise<Pagefind> => {
    loading ??= (async () => {
      const pagefind = (await import(/* @vite-ignore */ address)) as Pagefind;
      // In a worker it would fetch its own code a second time, and a search takes a few milliseconds.
      await pagefind.options({ excerptLength: 0, noWorker: true });
      await pagefind.init();
      return pagefind;
    })();
    // A failed load may be tried again: the network may be back.
    loading.catch(() => (loading = null));
    return loading;
  };

  return {
    warm: async () => void (await load()),
    search: async (words, filters, sort) => {
      const pagefind = await load();
      const order = ORDERS[words === '' && sort === 'best' ? 'newest' : sort];
      const found = await pagefind.search(words === '' ? null : words, {
        filters: { all: filters.filter((one) => Object.keys(one).length > 0) },
        ...(order !== null && { sort: order }),
      });
      return found.results;
    },
  };
}
