/** Pagefind behind the one question the page asks. Its files are fetched at the first call, not before. */
import { costs, FIGURES, rankBy, type Figures, type Prices } from '../figures.ts';
import { LIST_FILES, listFile, listName, readList, type Lists } from '../lists.ts';
import type { FitsFilter } from '../marks.ts';
import type { Sort } from '../query.ts';
import type { Ask } from '../reading/reading.ts';

type Pairs = Pick<Extract<Ask, { readonly by: 'pairs' }>, 'any' | 'not'>;

/** What the index keeps of a piece for showing it. */
export type Hit = { readonly url: string };

type Result = { readonly id: string; readonly data: () => Promise<Hit> };
type SearchResult = { readonly results: readonly Result[] };

type Pagefind = {
  /** Path, below the index's, of what goes by the pieces' places in it. */
  readonly placed: string;
  readonly options: (options: object) => Promise<void>;
  readonly init: () => Promise<void>;
  readonly search: (words: string | null, options: object) => Promise<SearchResult>;
};

/** Pieces that hold all the words, have what is asked for, can be made to every size and cost what is within all the bounds. */
export type Wanted = {
  readonly words: string;
  readonly pairs: readonly Pairs[];
  readonly sizes: readonly FitsFilter[];
  /** Minor units. */
  readonly prices: readonly Prices[];
};

export type Engine = {
  /** Starts fetching what any search needs. */
  readonly warm: () => Promise<void>;
  readonly search: (wanted: Wanted, sort: Sort) => Promise<readonly Result[]>;
};

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
  async function fetchPlaced<Content>(name: string): Promise<Content> {
    const { placed } = await load();
    const answer = await fetch(`${folder}/${placed}/${name}`);
    if (!answer.ok) throw new Error(`got ${answer.status} for ${name}, expected a part of the index`);
    return (await answer.json()) as Content;
  }
  const knowFigures = once(() => fetchPlaced<Figures>(FIGURES));
  const files = Array.from({ length: LIST_FILES }, (_, file) =>
    once(() => fetchPlaced<Lists>(listName(file))),
  );
  /** A piece's place by what the index calls it. */
  const knowPlaces = once(async () => {
    // Asked for nothing, the index answers with all it has, in its own order.
    const { results } = await (await load()).search(null, {});
    return new Map(results.map(({ id }, place) => [id, place]));
  });
  /** Tells of a place whether the piece there has what is asked for. */
  async function hasOf({ any, not }: Pairs): Promise<(place: number) => boolean> {
    const lists = await Promise.all(
      any.map(async (pair) => readList((await files[listFile(pair)]?.()) ?? {}, pair)),
    );
    return (place) => lists.some((has) => has(place)) !== not;
  }

  return {
    warm: async () => void (await load()),
    search: async ({ words, pairs, sizes, prices }, sort) => {
      const pagefind = await load();
      const ordered = sort === 'best' || (sort === 'newest' && words === '');
      const measured = prices.length > 0 || !ordered;
      const [{ results }, figures, asked] = await Promise.all([
        pagefind.search(words === '' ? null : words, { filters: { all: sizes } }),
        measured ? knowFigures() : null,
        Promise.all(pairs.map(hasOf)),
      ]);
      if (figures === null && asked.length === 0) return results;
      const places = await knowPlaces();
      const found = results
        .map((result) => ({ result, place: places.get(result.id) ?? 0 }))
        .filter(({ place }) => asked.every((has) => has(place)))
        .filter(({ place }) => costs(figures?.priceMinor[place] ?? null, prices));
      const rank = figures && rankBy(ordered ? 'best' : sort, figures);
      if (rank !== null)
        found.sort((one, other) => rank(one.place) - rank(other.place) || one.place - other.place);
      return found.map(({ result }) => result);
    },
  };
}
