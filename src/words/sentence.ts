/** From a code with its figures to one sentence; the type demands a sentence for every code. */
import type { Format } from './format.ts';

type Coded = { readonly code: string };

/** One sentence maker for each code of a union, fed with that code's own figures. */
export type Sentences<Item extends Coded> = {
  readonly [Code in Item['code']]: (item: Extract<Item, { readonly code: Code }>, format: Format) => string;
};

/** The sentence of one item. */
export function sentenceOf<Item extends Coded>(all: Sentences<Item>, item: Item, format: Format): string {
  // The map's own type pairs each code with its figures; TypeScript can't follow a union through the look-up.
  const make = all[item.code as Item['code']] as (item: Item, format: Format) => string;
  return make(item, format);
}
