/** A piece as schema.org knows it: a product with one offer. */
import { textsOf, type Piece, type Shop, type Status } from '#catalogue/model/catalogue.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import { majorAmount } from '#words/format.ts';

type Args = {
  readonly piece: Piece;
  readonly shop: Shop;
  readonly lang: Lang;
  /** Whole address of the piece's page. */
  readonly url: string;
  readonly image: string;
};

const AVAILABILITY: Readonly<Record<Status, string>> = {
  available: 'https://schema.org/InStock',
  'to-order': 'https://schema.org/MadeToOrder',
  past: 'https://schema.org/Discontinued',
};

export function productData({ piece, shop, lang, url, image }: Args): object {
  const { name, summary } = textsOf(piece, lang);
  const { currency } = shop.rules;
  return {
    '@context': 'https://schema.org',
    '@type': 'Product',
    '@id': url,
    name,
    description: summary,
    sku: piece.id,
    image,
    category: pageWords(lang).kinds[piece.design.kind],
    brand: { '@type': 'Brand', name: shop.name },
    offers: {
      '@type': 'Offer',
      url,
      price: majorAmount(piece.listedMinor, currency),
      priceCurrency: currency,
      availability: AVAILABILITY[piece.status],
      itemCondition: 'https://schema.org/NewCondition',
      seller: { '@type': 'Organization', name: shop.name },
    },
  };
}
