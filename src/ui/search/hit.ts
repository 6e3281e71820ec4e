/** What a result shows of a piece, from the little that the index keeps of it. */
import { currencyDigits, formatMoney } from '#words/format.ts';
import { isLang } from '#words/lang.ts';
import type { Hit } from './client/engine.ts';

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

export type Shown = Readonly<Record<'title' | 'facts' | 'price' | 'alt' | 'image' | 'pixels', string>>;

/** The last part of a piece's address. */
const idOf = (url: string): string => /([^/]+)\/?$/.exec(url)?.[1] ?? '';

export function shownOf({ url, meta, filters }: Hit, frame: Frame): Shown {
  const { pictures = '', widths = '', kinds = '{}', currency = '', lang, alt = '' } = frame;
  const title = meta['title'] ?? '';
  const named = JSON.parse(kinds) as Readonly<Record<string, string>>;
  const facts = named[filters['kind']?.[0] ?? ''] ?? '';
  const cost = filters['cost']?.[0];
  const minor = Math.round(Number(cost) * 10 ** (cost === undefined ? 0 : currencyDigits(currency)));
  const file = `${pictures}${idOf(url)}-${meta['picture'] ?? ''}`;
  return {
    title,
    facts,
    price: cost === undefined ? '' : formatMoney(minor, currency, isLang(lang) ? lang : 'en'),
    alt: alt.replace('{name}', title).replace('{kind}', facts),
    image: `${file}.svg`,
    pixels: widths
      .split(' ')
      .filter((width) => width !== '')
      .map((width) => `${file}-${width}.webp ${width}w`)
      .join(', '),
  };
}
