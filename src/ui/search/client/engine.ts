/** Pagefind behind the one question the page asks. Its files are fetched at the first call, not before. */
import { costs, FIGURES, rankBy, type Figures, type Prices } from '../figures.ts';
import type { Sort } from '../query.ts';

type Filters = Readonly<Record<string, unknown>>;

/** What the index keeps of a piece for showing it. */
export type Hit = {
  readonly url: string;
  readonly filters: Readonly<Record<string, readonly string[] | undefined>>;
};

type Result = { readonly id: string; readonly data: () => Promise<Hit> };
type SearchResult = { readonly results: readonly Result[] };

type Pagefind = {
  readonly options: (options: object) => Promise<void>;
  readonly init: () => Promise<void>;
  readonly search: (words: string | null, options: object) => Promise<SearchResult>;
};

/** Pieces that hold all the words, pass every one of the filters and cost what is within all the bounds. */
export type Wanted = {
  readonly words: string;
  readonly filters: readonly Filters[];
  /** Minor units. */
  readonly prices: readonly Prices[];
};

export type Engine = {
  /** Starts fetching what any search needs. */
  readonly warm: () => Promise<void>;
  readonly search: (wanted: Wanted, sort: Sort) => Promise<readonly Result[]>;
};

/** Figures of every piece, and its place among them by what the index calls it. */
type Known = { readonly figures: Figures; readonly places: ReadonlyMap<string, number> };

/** What is asked for once; a failed load may be tried again: the network may be back. */
function once<Loaded>(load: () => Promise<Loaded>): () => Promise<Loaded> {
  let loading: Promise<Loaded> | null = null;
  return () => {
    loading ??= load();
    loading.catch(() => (loading = null));
    return loading;
  };
}

/** @param folder address of the index, no slash at its end */
export function searchEngine(folder: string): Engine {
  const load = once(async () => {
    const pagefind = (await import(/* @vite-ignore */ `${folder}/pagefind.js`)) as Pagefind;
    // In a worker it would fetch its own code a second time, and a search takes a few milliseconds.
    await pagefind.options({ excerptLength: 0, noWorker: true });
    await pagefind.init();
    return pagefind;
  });
  const know = once(async (): Promise<Known> => {
    const answer = await fetch(`${folder}/${FIGURES}`);
    if (!answer.ok) throw new Error(`got ${answer.status} for ${FIGURES}, expected prices and lengths`);
    const figures = (await answer.json()) as Figures;
    // Asked for nothing, the index answers with all it has, in its own order.
    const { results } = await (await load()).search(null, {});
    return { figures, places: new Map(results.map(({ id }, place) => [id, place])) };
  });

  return {
    warm: async () => void (await load()),
    search: async ({ words, filters, prices }, sort) => {
      const pagefind = await load();
      const all = filters.filter((one) => Object.keys(one).length > 0);
      const { results } = await pagefind.search(words === '' ? null : words, { filters: { all } });
      const ordered = sort === 'best' || (sort === 'newest' && words === '');
      if (prices.length === 0 && ordered) return results;
      const { figures, places } = await know();
      const rank = rankBy(ordered ? 'best' : sort, figures);
      const found = results
        .map((result) => ({ result, place: places.get(result.id) ?? 0 }))
        .filter(({ place }) => costs(figures.priceMinor[place] ?? null, prices));
      if (rank !== null)
        found.sort((one, other) => rank(one.place) - rank(other.place) || one.place - other.place);
      return found.map(({ result }) => result);
    },
  };
}
