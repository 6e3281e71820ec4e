/** One entry checked against its schema: its value, or all that is wrong with it. */
import type { z } from 'zod';
import type { CatalogueError } from '#words/catalogueCodes.ts';
import { FieldError } from '../fields/field.ts';
import { near } from './near.ts';
import { fieldName, type FieldPath, type Problem } from './problem.ts';
import type { Source } from './source.ts';

/** An entry that its schema accepts, with its place for what may be found wrong later. */
export type Entry<Value> = {
  readonly id: string;
  readonly file: string;
  readonly value: Value;
  /** `file:line` of the entry. */
  readonly place: string;
  /** A problem of one of its fields. */
  readonly problemAt: (path: FieldPath, error: CatalogueError) => Problem;
};

type Where = { readonly source: Source; readonly base: FieldPath };

/** Problems of fields in a file of one entry. */
export const problemsIn =
  (source: Source): Entry<unknown>['problemAt'] =>
  (path, error) =>
    problemAt({ source, base: [] }, path, error);

function problemAt({ source, base }: Where, path: FieldPath, error: CatalogueError): Problem {
  const whole = [...base, ...path];
  return { file: source.file, line: source.lineOf(whole), field: fieldName(whole), error };
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

/** What zod found wrong with the value at a path, in codes. */
function errorOf({ source, base }: Where, path: FieldPath, issue: z.core.$ZodIssue): CatalogueError {
  const whole = [...base, ...path];
  const field = String(path.findLast((step) => typeof step === 'string') ?? base.at(-1) ?? '');
  const carried: unknown = issue.code === 'custom' ? issue.params?.['error'] : undefined;
  if (carried instanceof FieldError) {
    // A field doesn't know what it is called.
    return carried.error.code === 'empty-field' ? { code: 'empty-field', field } : carried.error;
  }
  const value = valueAt(source.data, whole);
  if (value === undefined) return { code: 'missing-field', field };
  if (source.remarkAt(whole)) return { code: 'colour-unquoted' };
  if (value === null || (Array.isArray(value) && value.length === 0)) return { code: 'empty-field', field };
  const expected = issue.code === 'invalid_type' ? issue.expected : 'string';
  const wanted = expected === 'object' ? 'fields' : expected === 'array' ? 'list' : 'text';
  return { code: 'wrong-form', field, value: shown(value), wanted };
}

/** What zod found, each at its place. Several for one issue where several fields are unknown. */
function fromIssue(where: Where, issue: z.core.$ZodIssue): Problem[] {
  const path = issue.path.filter((step) => typeof step !== 'symbol');
  if (issue.code !== 'unrecognized_keys') return [problemAt(where, path, errorOf(where, path, issue))];
  const known = issue.message;
  return issue.keys.map((key) =>
    problemAt(where, [...path, key], {
      code: 'unknown-field',
      field: key,
      near: near(key, known.split(', ')),
      known,
    }),
  );
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
    return { entry: null, problems: [problemAt(where, [], { code: 'not-fields' })] };
  }
  const result = schema.safeParse(data);
  if (!result.success)
    return { entry: null, problems: result.error.issues.flatMap((issue) => fromIssue(where, issue)) };
  return {
    entry: {
      id,
      file: source.file,
      value: result.data,
      get place() {
        // Only asked for where something is wrong: to know the line, the text is taken apart.
        return `${source.file}:${source.lineOf(base)}`;
      },
      problemAt: (path, error) => problemAt(where, path, error),
    },
    problems: [],
  };
}
