/** One thing wrong with the authored content: where, and a code with what its sentences need. */
import { catalogueSentence } from '#words/catalogue.ts';
import type { CatalogueArgs, CatalogueCode } from '#words/catalogueCodes.ts';
import type { Lang } from '#words/lang.ts';

export type Problem = {
  /** Path within the content folder. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** Where in the entry, as a person would count: `sections 2, beads 1`. Empty for the whole file. */
  readonly field: string;
  readonly code: CatalogueCode;
  readonly args: Readonly<Record<string, string | number>>;
};

/** Steps into an entry: field names, and places in lists from 0. */
export type FieldPath = readonly (string | number)[];

/** `['sections', 1, 'beads', 0]` as `sections 2, beads 1`. */
export function fieldName(path: FieldPath): string {
  return path.reduce<string>((name, step) => {
    if (typeof step === 'number') return `${name} ${step + 1}`.trim();
    return name === '' ? step : `${name}, ${step}`;
  }, '');
}

/** A problem with its arguments checked against its code. */
export function problem<Code extends CatalogueCode>(
  where: { readonly file: string; readonly line: number; readonly field: string },
  code: Code,
  args: CatalogueArgs[Code],
): Problem {
  return { ...where, code, args };
}

/** The two sentences of a problem: what is wrong, and how to mend it. */
export function explain(one: Problem, lang: Lang): { readonly what: string; readonly fix: string } {
  // `problem` and the fields pair every code with its own arguments.
  return catalogueSentence(one.code, one.args as CatalogueArgs[typeof one.code], lang);
}

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
