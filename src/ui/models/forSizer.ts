/** What the page hands to the sizing island. */
import { underBase } from '../site/base.ts';
import { needsPostcode } from '#core/post/countries.ts';
import { servedCountries } from '#core/post/served.ts';
import { componentsOf } from '#core/design/alternatives.ts';
import {
  alternativesIn,
  designIn,
  inLang,
  textsOf,
  type Piece,
  type Shop,
} from '#catalogue/model/catalogue.ts';
import type { PieceForSizer, PostForSizer, PostTarget, ShopForSizer } from '#sizer/model/input.ts';
import type { Lang } from '#words/lang.ts';
import { offersOf } from './partOffers.ts';
import { address } from '../site/addresses.ts';
import { unitIn } from './unitIn.ts';

export function forSizer(piece: Piece, shop: Shop, lang: Lang): PieceForSizer {
  const { id, revision, listedMinor, status } = piece;
  const design = designIn(piece, lang);
  const { name } = textsOf(piece, lang);
  const alternatives = alternativesIn(piece, lang);
  const offered = componentsOf(alternatives).length > 0;
  return {
    ...{ id, name, revision, design, listedMinor, rules: shop.rules },
    ...(offered && { alternatives, offers: offersOf(piece, shop, lang) }),
    orderable: status !== 'past',
    ready: status === 'available',
  };
}

function postForSizer({ rules, collection }: NonNullable<Shop['post']>, lang: Lang): PostForSizer {
  const countries = servedCountries(rules);
  return {
    rules,
    countries: countries.join(''),
    withoutPostcode: countries.filter((one) => !needsPostcode(one)).join(''),
    collection: inLang(collection, lang),
  };
}

/** A form service takes the desk's place. */
function postTargetOf({ form, desk }: Shop['orders']): PostTarget | null {
  if (form !== null) return { kind: 'form', address: form };
  if (desk === null) return null;
  // A path is the shop's own; anything else is a whole address.
  return { kind: 'desk', address: desk.startsWith('/') ? underBase(desk as `/${string}`) : desk };
}

export function shopForSizer(shop: Shop, lang: Lang): ShopForSizer {
  const { name, orders, post } = shop;
  return {
    name,
    email: orders.email,
    postTo: postTargetOf(orders),
    unit: unitIn(shop, lang),
    slip: address(lang, 'slip'),
    pieces: address(lang, 'pieces'),
    post: post && postForSizer(post, lang),
  };
}
