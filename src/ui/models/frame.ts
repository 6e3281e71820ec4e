/** What every page's frame needs of the catalogue. */
import type { Shop } from '#catalogue/model/catalogue.ts';
import { readShop, readGuides } from '#catalogue/collections.ts';
import type { Lang } from '#words/lang.ts';
import { address } from '../site/addresses.ts';

export type Frame = {
  readonly shop: Shop;
  readonly guides: readonly { readonly name: string; readonly href: string }[];
};

export async function shopFrame(lang: Lang): Promise<Frame> {
  const [shop, guides] = await Promise.all([readShop(), readGuides(lang)]);
  const links = guides.map(({ id, title }) => ({ name: title, href: address(lang, 'guides', id) }));
  return { shop, guides: links };
}

/** The unit before the reader has chosen one: the shop's own in English; where German is spoken nobody measures in inches. */
export function unitIn(shop: Shop, lang: Lang): Shop['unit'] {
  return lang === 'de' ? 'cm' : shop.unit;
}
