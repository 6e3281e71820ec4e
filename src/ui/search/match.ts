/** Finds pieces for a reading without the index: for the bench, and to hold the index to. */
import type { Catalogue, Piece } from '#catalogue/model/catalogue.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import { listFilters, sizeMarks } from './findFilters.ts';
import { costs, priceOf, pricesOf } from './figures.ts';
import { markNames, nearestStep } from './marks.ts';
import { asksReady } from './reading/asksReady.ts';
import { fold, stem } from './reading/fold.ts';
import type { Ask, Part, Reading } from './reading/reading.ts';
import { MOST_NEAR, relaxed } from './reading/relax.ts';
import { pairsOf } from './vocabulary/pairsOf.ts';
import { pieceWords, type Reach } from './vocabulary/texts.ts';
import type { Pair } from './reading/vocabulary.ts';

type Entry = {
  readonly piece: Piece;
  /** `name:value` of every filter but those of sizes. */
  readonly pairs: ReadonlySet<string>;
  /** Filters of sizes: worked out for who asks for one, since every piece is sized for them. */
  readonly sizes: () => readonly Pair[];
  readonly stems: readonly string[];
  readonly priceMinor: number | null;
};

export type Found = {
  /** Pieces that have all of it. */
  readonly pieces: readonly Piece[];
  /** Where there are none: those that come nearest. */
  readonly near: readonly Piece[];
};

/** @returns a search over all pieces, in their order; what it needs of them is worked out once */
export function matcher(
  { pieces, shop }: Catalogue,
  lang: Lang,
  reach: Reach = 'page',
): (reading: Pick<Reading, 'parts' | 'hopeless'>) => Found {
  const entries = pieces.map((piece): Entry => {
    const named = [...listFilters(piece, shop, lang), ...pairsOf(piece, lang)];
    const pairs = new Set(named.map(([name, value]) => `${name}:${value}`));
    let sizes: readonly Pair[] | null = null;
    const { name, others } = pieceWords(piece, shop, lang, reach);
    const stems = [...name, ...others].map((word) => stem(fold(word), lang));
    const priceMinor = priceOf(piece);
    return {
      piece,
      pairs,
      stems,
      priceMinor,
      sizes: () => (sizes ??= sizeMarks(piece, shop)),
    };
  });
  const { available } = pageWords(lang).statuses;
  const all = (parts: readonly Part[]): Piece[] => {
    const ready = asksReady(
      parts.map(({ ask }) => ask),
      available,
    );
    return entries
      .filter((entry) =>
        parts.every(({ ask }) => has(entry, ask, { lang, currency: shop.rules.currency, ready })),
      )
      .map(({ piece }) => piece);
  };
  return ({ parts, hopeless }) => {
    const found = hopeless ? [] : all(parts);
    if (found.length > 0) return { pieces: found, near: [] };
    const lists = [...(hopeless && parts.length > 0 ? [parts] : []), ...relaxed(parts)];
    const near = lists.map(all).find((some) => some.length > 0) ?? [];
    return { pieces: [], near: near.slice(0, MOST_NEAR) };
  };
}

type Asked = {
  readonly lang: Lang;
  readonly currency: string;
  readonly ready: boolean;
};

function has(
  { pairs, stems, priceMinor, sizes }: Entry,
  ask: Ask,
  { lang, currency, ready }: Asked,
): boolean {
  if (ask.by === 'word') {
    const root = stem(fold(ask.word), lang);
    // The beginning of a number is another number.
    return stems.some((one) => (/\d/.test(root) ? one === root : one.startsWith(root)));
  }
  if (ask.by === 'cost') return costs(priceMinor, [pricesOf(ask, currency)]);
  if (ask.by === 'pairs') return ask.any.some(([name, value]) => pairs.has(`${name}:${value}`)) !== ask.not;
  const names = markNames(ask.of);
  const [least, most] = [nearestStep(ask.of, ask.leastMm), nearestStep(ask.of, ask.mostMm)];
  if (ready)
    return sizes().some(
      ([name, value]) => name === names.own && Number(value) >= least && Number(value) <= most,
    );
  const mark = (name: string): number | null => {
    const found = sizes().find(([one]) => one === name);
    return found === undefined ? null : Number(found[1]);
  };
  const [from, to] = [mark(names.from), mark(names.to)];
  if (from === null || to === null || from > most || to < least) return false;
  return least !== most || !sizes().some(([name, value]) => name === names.gap && Number(value) === least);
}
