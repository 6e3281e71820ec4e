/** The frame of the shop that is built. */
import type { Shop } from '#catalogue/model/catalogue.ts';
import { readShop, readGuides } from '#catalogue/collections.ts';
import type { Lang } from '#words/lang.ts';
import { frameOf, type Frame } from './frameOf.ts';

export async function shopFrame(lang: Lang): Promise<Frame> {
  const [shop, guides] = await Promise.all([readShop(), readGuides(lang)]);
  return frameOf({ shop, guides }, lang);
}

/** The unit before the reader has chosen one: the shop's own in English; where German is spoken nobody measures in inches. */
export function unitIn(shop: Shop, lang: Lang): Shop['unit'] {
  return lang === 'de' ? 'cm' : shop.unit;
}
