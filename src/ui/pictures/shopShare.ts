/** The picture that others show when the address of a page about no one piece is passed on. */
import { underBase } from '../site/base.ts';
import type { Shop } from '#catalogue/model/catalogue.ts';
import { drawShopShare } from '#draw/drawings/shopShare.ts';
import { MARK_SPOTS } from '../site/mark.ts';
import { cached, keyOf } from './cache.ts';
import { shareJpeg } from './encode.ts';
import { ENCODING, MAKES_PIXELS } from './settings.ts';
import type { SharePicture } from './share.ts';

const altOf = ({ name, place }: Shop): string => `${name}, ${place}`;

function svgOf(shop: Shop): string {
  const { name, place } = shop;
  return drawShopShare({
    title: name,
    description: altOf(shop),
    idPrefix: 'shop-share',
    ...{ name, place, mark: MARK_SPOTS },
  });
}

/** Named by what is in it: it stays while the shop keeps its name and place. */
export const shopShareName = (shop: Shop): string => `shop-share-${keyOf(svgOf(shop))}.jpeg`;

/** Of the shop alone, so that a new piece makes no other page anew; null where the build makes no pixels. */
export const shopSharePicture = (shop: Shop): SharePicture | null =>
  MAKES_PIXELS ? { src: underBase(`/pictures/${shopShareName(shop)}`), alt: altOf(shop) } : null;

export function shopShareBytes(shop: Shop): Promise<Buffer> {
  const svg = svgOf(shop);
  return cached(`${keyOf(svg, JSON.stringify(ENCODING.jpeg))}.jpeg`, () => shareJpeg(svg));
}
