/** One entry checked against its schema: its value, or all that is wrong with it. */
import type { z } from 'zod';
import type { CatalogueArgs, CatalogueCode } from '#words/catalogueCodes.ts';
import { near } from './near.ts';
import { fieldName, problem, type FieldPath, type Problem } from './problem.ts';
import type { Source } from './source.ts';

/** An entry that its schema accepts, with its place for later complaints. */
export type Entry<Value> = {
  readonly id: string;
  readonly file: string;
  readonly value: Value;
  /** `file:line` of the entry. */
  readonly place: string;
  /** A complaint about one of its fields. */
  readonly complain: <Code extends CatalogueCode>(
    path: FieldPath,
    code: Code,
    args: CatalogueArgs[Code],
  ) => Problem;
};

type Where = { readonly source: Source; readonly base: FieldPath };

function whereOf({ source, base }: Where, path: FieldPath) {
  return { file: source.file, line: source.lineOf([...base, ...path]), field: fieldName([...base, ...path]) };
}

function valueAt(data: unknown, path: FieldPath): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[step] : undefined,
    data,
  );
}

function shown(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'fields';
  return String(value);
}

/** What zod found, in codes. Several for one issue where several fields are unknown. */
function fromIssue(where: Where, issue: z.core.$ZodIssue): Problem[] {
  const path = issue.path as FieldPath;
  const field = String(path.findLast((step) => typeof step === 'string') ?? where.base.at(-1) ?? '');
  const at = whereOf(where, path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) =>
      problem(whereOf(where, [...path, key]), 'unknown-field', {
        field: key,
        near: near(key, issue.message.split(', ')),
        known: issue.message,
      }),
    );
  }
  if (issue.code === 'custom' && typeof issue.params?.['code'] === 'string') {
    const args = issue.params['args'] as Record<string, string | number>;
    const code = issue.params['code'] as CatalogueCode;
    return [{ ...at, code, args: code === 'empty-field' ? { field } : args }];
  }
  const value = valueAt(where.source.data, [...where.base, ...path]);
  if (value === undefined) return [problem(at, 'missing-field', { field })];
  if (where.source.remarkAt([...where.base, ...path])) return [problem(at, 'colour-unquoted', {})];
  if (value === null || (Array.isArray(value) && value.length === 0))
    return [problem(at, 'empty-field', { field })];
  const expected = issue.code === 'invalid_type' ? issue.expected : 'string';
  const wanted = expected === 'object' ? 'fields' : expected === 'array' ? 'list' : 'text';
  return [problem(at, 'wrong-form', { field, value: shown(value), wanted })];
}

/**
 * Checks one entry. `base` leads to it within its file: its short name where
 * several live in one file, nothing where it has a file of its own.
 */
export function readEntry<Schema extends z.ZodType>(
  id: string,
  source: Source,
  base: FieldPath,
  schema: Schema,
): { readonly entry: Entry<z.output<Schema>> | null; readonly problems: readonly Problem[] } {
  const where = { source, base };
  const data = valueAt(source.data, base);
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    return { entry: null, problems: [problem(whereOf(where, []), 'not-fields', {})] };
  }
  const result = schema.safeParse(data);
  if (!result.success)
    return { entry: null, problems: result.error.issues.flatMap((issue) => fromIssue(where, issue)) };
  return {
    entry: {
      id,
      file: source.file,
      value: result.data,
      place: `${source.file}:${source.lineOf(base)}`,
      complain: (path, code, args) => problem(whereOf(where, path), code, args),
    },
    problems: [],
  };
}
