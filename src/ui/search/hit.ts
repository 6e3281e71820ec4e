/** What a result shows of a piece, from the little that the index keeps of it. */
import { formatMoney } from '#words/format.ts';
import { isLang } from '#words/lang.ts';
import type { Hit } from './client/engine.ts';
import type { FindRecord } from './findRecord.ts';

/** What a page says once for all results. */
export type Frame = {
  /** Address of the pictures' folder. */
  readonly pictures?: string;
  /** Widths of the pictures in pixels, a space between; empty where the drawings stand alone. */
  readonly widths?: string;
  /** Names of the kinds by the filter's values, as JSON. */
  readonly kinds?: string;
  readonly currency?: string;
  readonly lang?: string;
  /** Text of a picture, with {name} and {kind} in it. */
  readonly alt?: string;
};

export type Shown = Readonly<
  Record<'address' | 'title' | 'facts' | 'price' | 'alt' | 'image' | 'pixels', string>
>;

/**
 * A piece's address with what its result shows behind the `#`. Of all that the
 * index keeps, the address alone isn't made words of, which would cost more than all the others.
 */
export const addressWith = (
  address: string,
  { picture, priceMinor, title, filters }: Pick<FindRecord, 'picture' | 'priceMinor' | 'title' | 'filters'>,
): string => {
  const kind = filters.find(([name]) => name === 'kind')?.[1] ?? '';
  return `${address}#${[picture, priceMinor ?? '', ...[kind, title].map(encodeURIComponent)].join(',')}`;
};

export function shownOf({ url }: Hit, frame: Frame): Shown {
  const { pictures = '', widths = '', kinds = '{}', currency = '', lang, alt = '' } = frame;
  const [address = '', kept = ''] = url.split('#');
  const [picture = '', minor = '', kind = '', name = ''] = kept.split(',');
  const title = decodeURIComponent(name);
  const named = JSON.parse(kinds) as Readonly<Record<string, string>>;
  const facts = named[decodeURIComponent(kind)] ?? '';
  const file = `${pictures}${/([^/]+)\/?$/.exec(address)?.[1] ?? ''}-${picture}`;
  return {
    address,
    title,
    facts,
    price: minor === '' ? '' : formatMoney(Number(minor), currency, isLang(lang) ? lang : 'en'),
    alt: alt.replace('{name}', title).replace('{kind}', facts),
    image: `${file}.svg`,
    pixels: widths
      .split(' ')
      .filter((width) => width !== '')
      .map((width) => `${file}-${width}.webp ${width}w`)
      .join(', '),
  };
}
