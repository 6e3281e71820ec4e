/** What the page hands to the sizing island. */
import { designIn, textsOf, type Piece, type Shop } from '#catalogue/model/catalogue.ts';
import type { PieceForSizer, PostTarget, ShopForSizer } from '#sizer/model/input.ts';
import type { Lang } from '#words/lang.ts';
import { address } from '../site/addresses.ts';
import { unitIn } from './frame.ts';

export function forSizer(piece: Piece, shop: Shop, lang: Lang): PieceForSizer {
  const { id, revision, listedMinor, status } = piece;
  const design = designIn(piece, lang);
  const { name } = textsOf(piece, lang);
  return { id, name, revision, design, listedMinor, rules: shop.rules, orderable: status !== 'past' };
}

/** A form service takes the desk's place. */
function postTargetOf({ form, desk }: Shop['orders']): PostTarget | null {
  if (form !== null) return { kind: 'form', address: form };
  return desk === null ? null : { kind: 'desk', address: desk };
}

export function shopForSizer(shop: Shop, lang: Lang): ShopForSizer {
  const { name, orders } = shop;
  return {
    name,
    email: orders.email,
    postTo: postTargetOf(orders),
    unit: unitIn(shop, lang),
    slip: address(lang, 'slip'),
  };
}
