/** Entries out of files: one a file, or many in one file under their short names. */
import type { z } from 'zod';
import { isId } from '../fields/field.ts';
import type { Folder } from './folder.ts';
import { problemsIn, readEntry, type Entry } from './entry.ts';
import { problemOfFile, type FieldPath, type Problem, type WrittenPiece } from './problem.ts';
import { remembered } from './memory.ts';
import { take, type Source } from './source.ts';

export type Collected<Value> = {
  /** Entries whose own fields are right, in the order of files and lines. */
  readonly entries: readonly Entry<Value>[];
  /** Every short name there is, those of broken entries too. */
  readonly known: ReadonlySet<string>;
  readonly problems: readonly Problem[];
};

/** The short name of an entry with a file of its own: the file's name. */
export const idOfFile = (file: string): string => file.replace(/^.*\//, '').replace(/\.[^.]*$/, '');

/** An entry of a file, checked once for as long as the file says the same. */
export function entryOf<Schema extends z.ZodType>(
  { memory }: Folder,
  id: string,
  source: Source,
  base: FieldPath,
  schema: Schema,
): ReturnType<typeof readEntry<Schema>> {
  const name = `entry ${source.file} ${base.join(' ')}`;
  return remembered(memory, name, [source, schema], () => readEntry(id, source, base, schema));
}

/** One entry in each file. `broken`: those whose own fields are wrong, of which more may be wrong. */
export function collectFiles<Schema extends z.ZodType>(
  folder: Folder,
  files: readonly string[],
  schema: Schema,
): Collected<z.output<Schema>> & { readonly broken: readonly WrittenPiece[] } {
  const entries: Entry<z.output<Schema>>[] = [];
  const broken: WrittenPiece[] = [];
  const known = new Set<string>();
  const problems: Problem[] = [];
  for (const file of files) {
    const id = idOfFile(file);
    known.add(id);
    if (!isId(id)) problems.push(problemOfFile(file, { code: 'not-an-id', value: id }));
    const taken = take(folder, file);
    problems.push(...taken.problems);
    if (taken.source === null) continue;
    const read = entryOf(folder, id, taken.source, [], schema);
    problems.push(...read.problems);
    if (read.entry === null) broken.push({ value: taken.source.data, problemAt: problemsIn(taken.source) });
    else if (isId(id)) entries.push(read.entry);
  }
  return { entries, broken, known, problems };
}

/** Many entries in each file. */
export function collectMaps<Schema extends z.ZodType>(
  folder: Folder,
  files: readonly string[],
  schema: Schema,
): Collected<z.output<Schema>> {
  const entries: Entry<z.output<Schema>>[] = [];
  const known = new Set<string>();
  const problems: Problem[] = [];
  for (const file of files) {
    const taken = take(folder, file);
    problems.push(...taken.problems);
    if (taken.source === null) continue;
    const { source } = taken;
    const { data } = source;
    if (typeof data !== 'object' || data === null || Array.isArray(data)) {
      problems.push(problemOfFile(file, { code: 'not-fields' }));
      continue;
    }
    for (const id of Object.keys(data)) {
      known.add(id);
      if (!isId(id)) {
        problems.push({
          file,
          line: source.lineOf([id]),
          field: id,
          error: { code: 'not-an-id', value: id },
        });
      }
      const read = entryOf(folder, id, source, [id], schema);
      problems.push(...read.problems);
      if (read.entry !== null && isId(id)) entries.push(read.entry);
    }
  }
  return { entries, known, problems };
}
