/** From a code with its figures to its sentence; the type demands a sentence for every code. */
import type { Format } from './format.ts';

type Coded = { readonly code: string };

/**
 * The items of a union that have one of some codes. Written by way of each
 * single code, so that TypeScript keeps a code and its figures together where
 * the code is still open ("correlated unions").
 */
type WithCode<Item extends Coded, Code extends string> = {
  [One in Code]: Item & { readonly code: One };
}[Code];

/** One sentence maker for each code of a union, fed with that code's own figures and whatever `Rest` says. */
export type Sentences<
  Item extends Coded,
  Rest extends readonly unknown[] = [format: Format],
  Sentence = string,
> = {
  readonly [Code in Item['code']]: (item: Item & { readonly code: Code }, ...rest: Rest) => Sentence;
};

/** The sentence of one item. */
export function sentenceOf<
  Item extends Coded,
  Code extends Item['code'],
  Rest extends readonly unknown[],
  Sentence,
>(all: Sentences<Item, Rest, Sentence>, item: WithCode<Item, Code>, ...rest: Rest): Sentence {
  const code: Code = item.code;
  return all[code](item, ...rest);
}
