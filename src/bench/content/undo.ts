/** Taking a save back, also where its file has been changed elsewhere since. */
import type { PlainMap } from '#catalogue/write/plain.ts';
import { applyChanges, changesBetween, isFields, samePlain, valueAt } from '#catalogue/write/plain.ts';
import { rewriteGuide } from '#catalogue/write/edit.ts';
import { EditError, rewrite } from '#catalogue/write/rewrite.ts';
import type { SaveRecord } from './entry.ts';
import { dataIn, orderIn, sharesFile } from './locate.ts';

/** What the file shall say (null: be gone), or that what the save changed was changed again since. */
export type TakenBack = { readonly ok: true; readonly text: string | null } | { readonly ok: false };

const CHANGED: TakenBack = { ok: false };

function merged(save: SaveRecord, before: string, after: string, now: string): TakenBack {
  const { file, key } = save;
  const [was, became, is] = [before, after, now].map((text) => dataIn(file, text));
  if (!was || !became || !is) return CHANGED;
  const backward = changesBetween(became.data, was.data);
  const untouched = backward.every(({ path }) =>
    samePlain(valueAt(is.data, path), valueAt(became.data, path)),
  );
  const bodyChanged = was.body !== became.body;
  if (!untouched || (bodyChanged && is.body !== became.body)) return CHANGED;
  const next = applyChanges(is.data, backward);
  if (!isFields(next)) return CHANGED;
  return {
    ok: true,
    text: written(
      save,
      now,
      next,
      bodyChanged ? was.body : undefined,
      orderIn(key.kind, sharesFile(key.kind) ? [key.id] : []),
    ),
  };
}

function written(
  { file }: SaveRecord,
  now: string,
  next: PlainMap,
  body: string | undefined,
  order: ReturnType<typeof orderIn>,
): string {
  return (file.endsWith('.md') ? rewriteGuide(now, next, body, order) : rewrite(now, next, order)).text;
}

/**
 * The text that a file has once a save is taken back. Where it says what it
 * said right after, that is the text from before; where it was changed since,
 * only what the save itself changed goes back, if nothing of that was touched.
 * @param now the file's text; null where it is gone
 */
export function takenBack(save: SaveRecord, now: string | null): TakenBack {
  const { before, after } = save;
  if (now === after) return { ok: true, text: before };
  if (before === null || after === null || now === null) return CHANGED;
  try {
    return merged(save, before, after, now);
  } catch (error) {
    if (error instanceof EditError || error instanceof RangeError) return CHANGED;
    throw error;
  }
}
