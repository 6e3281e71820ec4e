/** The unit that a page is in before its reader has chosen one. */
import type { Shop } from '#catalogue/model/catalogue.ts';
import type { Lang } from '#words/lang.ts';

/** The shop's own in English; where German is spoken nobody measures in inches. */
export function unitIn(shop: Shop, lang: Lang): Shop['unit'] {
  return lang === 'de' ? 'cm' : shop.unit;
}
