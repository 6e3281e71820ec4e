/** What fields and choices are called: by the longest end of their path that has a name, else as the file calls them. */
import type { FieldPath } from '#catalogue/read/problem.ts';
import type { EntryKind } from '../../content/entry.ts';

type Said = Readonly<Record<string, string>>;

function lookUp(said: Said, kind: EntryKind, path: FieldPath, choice?: string): string | undefined {
  const steps = [kind, ...path.filter((step) => typeof step === 'string')];
  for (let from = 0; from < steps.length; from += 1) {
    const key = [...steps.slice(from), ...(choice === undefined ? [] : [choice])].join('.');
    if (Object.hasOwn(said, key)) return said[key];
  }
  return undefined;
}

/** A field's own name, with capital and blanks: `glue-spot` is “Glue spot” until somebody writes it a label. */
function plainName(path: FieldPath): string {
  const name = String(path.findLast((step) => typeof step === 'string') ?? '').replaceAll('-', ' ');
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** The label of a field of an entry of a kind. */
export const labelOf = (said: Said, kind: EntryKind, path: FieldPath): string =>
  lookUp(said, kind, path) ?? plainName(path);

/** What helps with it; null for nothing. A field of the same name elsewhere may have its own. */
export const hintOf = (said: Said, kind: EntryKind, path: FieldPath): string | null =>
  lookUp(said, kind, path) ?? null;

/** What a choice of a field is called. */
export const choiceOf = (said: Said, kind: EntryKind, path: FieldPath, choice: string): string =>
  lookUp(said, kind, path, choice) ?? choice;
