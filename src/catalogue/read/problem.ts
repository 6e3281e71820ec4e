/** One thing wrong with the authored content: where, and what. */
import type { CatalogueError, CatalogueSentence } from '#words/catalogueCodes.ts';
import type { Lang } from '#words/lang.ts';
import { sentenceOf } from '#words/sentence.ts';
import { catalogueWords } from '#words/words.ts';

export type Problem = {
  /** Path within the content folder. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** Where in the entry, as a person would count: `sections 2, beads 1`. Empty for the whole file. */
  readonly field: string;
  readonly error: CatalogueError;
};

/** Steps into an entry: field names, and places in lists from 0. */
export type FieldPath = readonly (string | number)[];

/** A piece's entry, taken in or as it is written: what it says, and a way to tell of it. */
export type WrittenPiece = {
  readonly value: unknown;
  readonly problemAt: (path: FieldPath, error: CatalogueError) => Problem;
};

/** `['sections', 1, 'beads', 0]` as `sections 2, beads 1`. */
export function fieldName(path: FieldPath): string {
  return path.reduce<string>((name, step) => {
    if (typeof step === 'number') return `${name} ${step + 1}`.trim();
    return name === '' ? step : `${name}, ${step}`;
  }, '');
}

/** A problem of a whole file. */
export const problemOfFile = (file: string, error: CatalogueError): Problem => {
  return { file, line: 1, field: '', error };
};

/** The two sentences of a problem: what is wrong, and how to mend it. */
export const explain = ({ error }: Problem, lang: Lang): CatalogueSentence =>
  sentenceOf(catalogueWords(lang), error);

/** All problems as text for a terminal, grouped by nothing: one after the other, in the order of the files. */
export function report(problems: readonly Problem[], lang: Lang): string {
  return problems
    .map((one) => {
      const { what, fix } = explain(one, lang);
      const field = one.field === '' ? '' : `  ${one.field}`;
      return `${one.file}:${one.line}${field}\n  ${what}\n  ${fix}`;
    })
    .join('\n\n');
}

/** Sorted by file, then line; the same problem once. */
export function inOrder(problems: readonly Problem[]): Problem[] {
  const unique = new Map(problems.map((one) => [JSON.stringify(one), one]));
  return [...unique.values()].sort((one, other) =>
    one.file < other.file ? -1 : one.file > other.file ? 1 : one.line - other.line,
  );
}
