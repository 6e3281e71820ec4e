/** What the page hands to the sizing island. */
import { textsOf, type Piece, type Shop } from '#catalogue/catalogue.ts';
import type { PieceForSizer, ShopForSizer } from '#sizer/props.ts';
import type { Lang } from '#words/lang.ts';
import { address } from '../addresses.ts';

export function forSizer(piece: Piece, shop: Shop, lang: Lang): PieceForSizer {
  const { id, revision, design, listedMinor, status } = piece;
  const { name } = textsOf(piece, lang);
  return { id, name, revision, design, listedMinor, rules: shop.rules, orderable: status !== 'past' };
}

export function shopForSizer(shop: Shop, lang: Lang): ShopForSizer {
  const { name, orders, unit } = shop;
  return { name, email: orders.email, desk: orders.desk, unit, slip: address(lang, 'slip') };
}
