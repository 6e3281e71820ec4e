/** What a query was understood to ask for. */
import type { Pair } from './vocabulary.ts';
import type { FITS_OF } from '../marks.ts';
import type { Sort } from '../query.ts';

/** Where something stands in the query's text, from its first letter to after its last. */
export type Place = readonly [from: number, to: number];

export type Ask =
  | { readonly by: 'pairs'; readonly group: string; readonly any: readonly Pair[]; readonly not: boolean }
  /** A word of the pieces' texts, or its beginning. */
  | { readonly by: 'word'; readonly word: string }
  | {
      readonly by: 'fits';
      readonly of: (typeof FITS_OF)[number];
      readonly leastMm: number;
      readonly mostMm: number;
    }
  /** Whole units of currency. */
  | { readonly by: 'cost'; readonly least: number; readonly most: number };

/** One thing asked for; all of them at once are asked of a piece. */
export type Part = {
  readonly ask: Ask;
  /** Places in the text that say it. */
  readonly at: readonly Place[];
  /** On its mark; null for a word of the texts, which stands in the query as it is. */
  readonly label: string | null;
};

export type Said = {
  readonly code: 'corrected' | 'unknown' | 'elsewhere' | 'idle' | 'currency' | 'rough' | 'caution';
  readonly text: string;
};

export type Reading = {
  readonly parts: readonly Part[];
  readonly sort: Sort | null;
  readonly said: readonly Said[];
  /** Something was asked for that no piece can be: nothing is found. */
  readonly hopeless: boolean;
};

/** The query without what stands at some places, for taking a mark away. */
export function without(text: string, places: readonly Place[]): string {
  return text
    .normalize('NFC')
    .split('')
    .filter((_, index) => !places.some(([from, to]) => index >= from && index < to))
    .join('')
    .replace(/\s+/g, ' ')
    .trim();
}
