/** What every page's frame needs of a catalogue, whichever that is. */
import type { Guide, Shop } from '#catalogue/model/catalogue.ts';
import type { Lang } from '#words/lang.ts';
import { address } from '../site/addresses.ts';

export type Frame = {
  readonly shop: Shop;
  readonly guides: readonly { readonly name: string; readonly href: string }[];
};

/** @param guides of one language */
export function frameOf(
  { shop, guides }: { readonly shop: Shop; readonly guides: readonly Pick<Guide, 'id' | 'title'>[] },
  lang: Lang,
): Frame {
  const links = guides.map(({ id, title }) => ({ name: title, href: address(lang, 'guides', id) }));
  return { shop, guides: links };
}
