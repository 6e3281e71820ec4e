/** The values that each filter offers: those that some piece has, in an order that a reader expects. */
import type { Piece, Shop } from '#catalogue/model/catalogue.ts';
import type { Lang } from '#words/lang.ts';
import { lengthBands, priceBands } from './bands.ts';
import { listFilters } from './findFilters.ts';
import { FILTERS, type FilterName } from './query.ts';

export type FilterOptions = { readonly name: FilterName; readonly values: readonly string[] };

export function findOptions(pieces: readonly Piece[], shop: Shop, lang: Lang): readonly FilterOptions[] {
  const found = new Map<FilterName, Set<string>>(FILTERS.map((name) => [name, new Set()]));
  for (const piece of pieces) {
    for (const [name, value] of listFilters(piece, shop, lang)) found.get(name)?.add(value);
  }
  const ranked: Partial<Record<FilterName, readonly string[]>> = {
    price: priceBands(shop.rules.currency, lang),
    length: lengthBands(lang),
  };
  return FILTERS.map((name) => {
    const values = [...(found.get(name) ?? [])];
    const order = ranked[name];
    if (order !== undefined) values.sort((a, b) => order.indexOf(a) - order.indexOf(b));
    else if (name === 'year') values.sort((a, b) => Number(b) - Number(a));
    else values.sort((a, b) => a.localeCompare(b, lang));
    return { name, values };
  });
}
