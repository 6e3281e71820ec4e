/** Asks the index for what a query means, and for what comes nearest where nothing is found. */
import type { ShownUnit } from '#core/units/unit.ts';
import type { Query } from '../query.ts';
import type { Ask, Part, Reading } from '../reading/reading.ts';
import type { Engine } from './engine.ts';
import type { Opened } from './reader.ts';

type Hits = Awaited<ReturnType<Engine['search']>>;

/** Filters that were set by hand, and the size that a piece shall be right for; null for any. */
export type SetByHand = {
  readonly filters: Query['filters'];
  readonly size: Extract<Ask, { readonly by: 'fits' }> | null;
};

const NOTHING: Reading = { parts: [], sort: null, said: [], hopeless: false };

export type Answer = {
  readonly reading: Reading;
  readonly found: Hits;
  readonly near: Hits;
  /** The words alone ask for nothing that tells one piece from another. */
  readonly tooLittle: boolean;
};

export type Search = {
  /** Starts fetching what any search needs. */
  readonly warm: () => Promise<void>;
  /**
   * @param unit of bare numbers
   * @param live true while the last word is being written
   */
  readonly answer: (query: Query, set: SetByHand, unit: ShownUnit, live: boolean) => Promise<Answer>;
};

/**
 * @param folder address of the index
 * @param vocabularyAddress of the page's language
 */
export function shopSearch(folder: string, vocabularyAddress: string): Search {
  type Loaded = typeof import('./reader.ts') & {
    readonly opened: Opened;
    readonly engine: Engine;
  };
  let loading: Promise<Loaded> | null = null;
  const load = (): Promise<Loaded> => {
    loading ??= (async () => {
      const reader = await import('./reader.ts');
      const engine = reader.searchEngine(folder);
      const [opened] = await Promise.all([reader.fetchVocabulary(vocabularyAddress), engine.warm()]);
      return { ...reader, opened, engine };
    })();
    // A failed load may be tried again: the network may be back.
    loading.catch(() => (loading = null));
    return loading;
  };

  return {
    warm: async () => void (await load()),
    answer: async (query, { filters: set, size }, unit, live) => {
      const reader = await load();
      const { lang, currency, ready } = reader.opened.vocabulary;
      const reading =
        query.words === '' ? NOTHING : reader.readQuery(query.words, reader.opened, { unit, live });
      const sort = query.sort === 'best' ? (reading.sort ?? 'best') : query.sort;
      const byHand = Object.entries(set).map(([group, value]): Ask => ({
        by: 'pairs',
        group,
        any: [[group, value]],
        not: false,
      }));
      const ask = (parts: readonly Part[]): Promise<Hits> => {
        const asks = [...parts.map((part) => part.ask), ...byHand, ...(size === null ? [] : [size])];
        const isReady = reader.asksReady(asks, ready);
        const words = asks.flatMap((one) =>
          one.by === 'word' ? reader.stem(reader.fold(one.word), lang) : [],
        );
        const pairs = asks.filter((one) => one.by === 'pairs');
        const sizes = asks.flatMap((one) =>
          one.by === 'fits' ? [reader.fitsFilter(one.of, one.leastMm, one.mostMm, isReady)] : [],
        );
        const prices = asks.flatMap((one) => (one.by === 'cost' ? reader.pricesOf(one, currency) : []));
        return reader.engine.search({ words: words.join(' '), pairs, sizes, prices }, sort);
      };
      const empty = query.words !== '' && reading.parts.length === 0;
      const tooLittle = empty && !reading.hopeless && Object.keys(set).length === 0 && size === null;
      const found = reading.hopeless || tooLittle ? [] : await ask(reading.parts);
      if (found.length > 0) return { reading, found, near: [], tooLittle };
      // What is asked for in full comes nearest where only an unknown word stood in the way.
      const asked = reading.hopeless ? [reading.parts] : [];
      const lists = tooLittle ? [[]] : [...asked, ...reader.relaxed(reading.parts)];
      for (const parts of lists) {
        if (parts.length === 0 && !tooLittle) continue;
        const near = await ask(parts);
        if (near.length > 0)
          return {
            reading,
            found,
            near: near.slice(0, reader.MOST_NEAR),
            tooLittle,
          };
      }
      return { reading, found, near: [], tooLittle };
    },
  };
}
