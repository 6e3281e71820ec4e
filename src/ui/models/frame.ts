/** The frame of the shop that is built. */
import { readShop, readGuides } from '#catalogue/collections.ts';
import type { Lang } from '#words/lang.ts';
import { frameOf, type Frame } from './frameOf.ts';

export async function shopFrame(lang: Lang): Promise<Frame> {
  const [shop, guides] = await Promise.all([readShop(), readGuides(lang)]);
  return frameOf({ shop, guides }, lang);
}
