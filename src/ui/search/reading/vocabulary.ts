/** What the shop knows to be asked for: made at build, fetched by whoever searches. Plain data. */
import type { Lang } from '#words/lang.ts';
import type { SearchWords } from '#words/words.ts';
import type { Sort } from '../query.ts';

/** One value of one filter, as the index has them. */
export type Pair = readonly [name: string, value: string];

/** Something that pieces are asked by. */
export type Concept = {
  /** Concepts of one group exclude each other in a piece where the group has one value: kinds, closings. */
  readonly group: string;
  /** A piece is meant that has any of these. */
  readonly any: readonly Pair[];
  /** A piece is meant that has none of them. */
  readonly not: boolean;
  /** Or that can be made to one of these sizes; null for none. */
  readonly fits: {
    readonly of: 'length';
    readonly leastMm: number;
    readonly mostMm: number;
  } | null;
  /** Or that costs so much, in whole units of currency; null for none, and for no end. */
  readonly cost: {
    readonly least: number;
    readonly most: number | null;
  } | null;
  /** On its mark, in the page's language. */
  readonly label: string;
  readonly sort: Sort | null;
  /** What is said wherever it is asked for; null for nothing. */
  readonly caution: string | null;
  /** Names of it, commas between, by language of the words. */
  readonly terms: Readonly<Record<Lang, string>>;
  /** Names that count only where no piece's own words have them. */
  readonly loose: Readonly<Record<Lang, string>>;
};

/** What the words of a language's numbers are made of; commas between. */
export type NumberWords = {
  /** From one to nineteen. */
  readonly small: string;
  /** From twenty to ninety. */
  readonly tens: string;
  readonly hundred: string;
  readonly and: string;
  /** Behind a whole number, each with its figures: `and a half: 1/2`. */
  readonly fractions: string;
  /** "Fünfundvierzig": the ones come first. */
  readonly onesFirst: boolean;
};

export type Vocabulary = {
  readonly lang: Lang;
  readonly currency: string;
  /** Status of what lies there, as the index has it. */
  readonly ready: string;
  readonly concepts: readonly Concept[];
  readonly roles: Readonly<Record<Lang, SearchWords['roles']>>;
  /** Words that say a size without a measure, beside what is measured; commas between. */
  readonly rough: Readonly<Record<Lang, string>>;
  /** What number words are made of. */
  readonly numbers: Readonly<Record<Lang, NumberWords>>;
  readonly slips: Readonly<Record<string, string>>;
  readonly said: SearchWords['said'];
  /** Words of the pieces' own texts, a space between, without those of the names. */
  readonly words: string;
  /** Names of pieces, and those of beads and clasps that would otherwise be read as something else, one a line. */
  readonly names: string;
};
