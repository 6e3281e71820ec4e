/**
 * Prices and lengths of all pieces, in the index's own order. The index could
 * hold them, but then every search would fetch them: as orders with its table
 * of pages, as filters several times as large. So they come for who asks for them.
 */
import type { Piece } from '#catalogue/model/catalogue.ts';
import { currencyDigits } from '#words/format.ts';
import type { Sort } from './query.ts';

/** Name of their file, beside the index. */
export const FIGURES = 'figures.json';

export type Figures = {
  /** Minor units; null for what can't be had any more. */
  readonly priceMinor: readonly (number | null)[];
  readonly lengthMm: readonly number[];
};

/** @param pieces in the index's order */
export const figuresOf = (
  pieces: readonly { readonly priceMinor: number | null; readonly lengthMm: number }[],
): Figures => ({
  priceMinor: pieces.map(({ priceMinor }) => priceMinor),
  lengthMm: pieces.map(({ lengthMm }) => lengthMm),
});

/** What a piece costs; null for what can't be had any more, which costs nothing that anyone could pay. */
export const priceOf = ({ status, listedMinor }: Pick<Piece, 'status' | 'listedMinor'>): number | null =>
  status === 'past' ? null : listedMinor;

/** Prices from one to another, both included; Infinity for no end. */
export type Prices = { readonly least: number; readonly most: number };

/** Prices asked for in whole units of the currency, in minor ones. */
export function pricesOf({ least, most }: Prices, currency: string): Prices {
  const unit = 10 ** currencyDigits(currency);
  // Whole, since £1.10 in binary isn't quite 110 pence.
  return { least: Math.round(least * unit), most: Math.round(most * unit) };
}

/** True where a piece costs something within all the bounds; what can't be had any more costs nothing. */
export function costs(priceMinor: number | null, bounds: readonly Prices[]): boolean {
  return bounds.every(({ least, most }) => priceMinor !== null && priceMinor >= least && priceMinor <= most);
}

/** What a piece's place in a list is told by, least first; null for the order that the index answers in. */
export function rankBy(sort: Sort, { priceMinor, lengthMm }: Figures): ((page: number) => number) | null {
  // What can't be had any more stands last, whichever way prices go.
  const price = (page: number, sign: 1 | -1): number => {
    const minor = priceMinor[page] ?? null;
    return minor === null ? Number.MAX_SAFE_INTEGER : sign * minor;
  };
  // The index has the newest first.
  if (sort === 'newest') return (page) => page;
  if (sort === 'cheapest') return (page) => price(page, 1);
  if (sort === 'dearest') return (page) => price(page, -1);
  if (sort === 'shortest') return (page) => lengthMm[page] ?? 0;
  return null;
}
