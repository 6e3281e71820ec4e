/** Pages as schema.org knows them, for search engines: a piece, and the trail above a page. */
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

/** A product with one offer. */
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

/** JSON-LD for a script element: no text inside can close the element or open a comment. */
export function jsonLdText(data: object): string {
  return JSON.stringify(data).replaceAll('<', '\\u003c');
}

type Step = { readonly name: string; readonly href: string };

/**
 * The page's trail as a BreadcrumbList.
 * @param above pages above, from the front page down
 * @param absolute makes a path a whole address
 */
export function trailData(above: readonly Step[], here: Step, absolute: (path: string) => string): object {
  return {
    '@context': 'https://schema.org',
    '@type': 'BreadcrumbList',
    itemListElement: [...above, here].map(({ name, href }, index) => ({
      '@type': 'ListItem',
      position: index + 1,
      name,
      item: absolute(href),
    })),
  };
}
