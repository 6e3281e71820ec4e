/** The form of an entry that is there: opened, posted, saved, or shown again with what was typed. */
import type { FieldPath } from '#catalogue/read/problem.ts';
import {
  applyChanges,
  isFields,
  samePlain,
  valueAt,
  type FieldChange,
  type Plain,
} from '#catalogue/write/plain.ts';
import type { NotSaved } from '#words/notSavedCodes.ts';
import { formChanges } from '../../intake/contentForm/formChanges.ts';
import { formTree, type FormNode } from '../../intake/contentForm/formTree.ts';
import { withTenMeasured } from '../../intake/contentForm/tenInARow.ts';
import type { FormField } from '#catalogue/schemas/describe.ts';
import { entryFields, isOffered } from './entrySchemas.ts';
import { placeProblems, type Placed } from './placedProblems.ts';
import type { EntryKey, Opened, Saved } from '../../content/entry.ts';
import type { ContentStore } from '../../content/store.ts';
import type { Frame } from '../frame.ts';

/** A field that she and somebody else changed: what is there now. */
export type Clash = { readonly key: string; readonly now: string };

export type EntrySheet = {
  readonly key: EntryKey;
  readonly nodes: readonly FormNode[];
  /** Markdown of a guide; null for entries without. */
  readonly body: string | null;
  /** What the file said when she opened the form, carried along so that only what she changed is saved. */
  readonly seen: { readonly digest: string; readonly data: string; readonly body: string };
  readonly placed: Placed;
  readonly clashes: readonly Clash[];
  /** Why it can't be written; null where that isn't the matter. */
  readonly notWritable: NotSaved | null;
};

/** `unchanged`: nothing on the form was different. */
export type EntryStep = { readonly sheet: EntrySheet } | { readonly done: 'saved' | 'unchanged' };

export type EntryPlace = {
  readonly store: ContentStore;
  readonly frame: Frame;
  /** What the form asks for, where that isn't all that its kind of entry is asked for; the rest stays as it is. */
  readonly fields?: readonly FormField[];
};

const NO_PROBLEMS: Placed = { own: [], others: [] };

/** Name of the control that holds a guide's text. */
export const BODY = 'body~text';

const plainOf = (data: unknown): Plain => (isFields(data as Plain) ? (data as Plain) : {});

type Tried = Partial<Pick<EntrySheet, 'placed' | 'clashes' | 'notWritable'>> & { readonly body?: string };

function sheetOf(opened: Opened, nodes: readonly FormNode[], tried: Tried = {}): EntrySheet {
  const body = opened.body ?? null;
  return {
    key: opened.key,
    nodes,
    body: tried.body ?? body,
    seen: { digest: opened.digest, data: JSON.stringify(plainOf(opened.data)), body: body ?? '' },
    placed: tried.placed ?? NO_PROBLEMS,
    clashes: tried.clashes ?? [],
    notWritable: tried.notWritable ?? null,
  };
}

/** The form as the file has the entry. */
export function beginEntry(
  opened: Opened,
  fields: readonly FormField[] = entryFields[opened.key.kind],
): EntrySheet {
  return sheetOf(opened, formTree(fields, plainOf(opened.data), null));
}

/** What the file said when the form was opened: carried by the form itself. */
function seenIn(form: URLSearchParams, opened: Opened): Opened {
  try {
    const data = JSON.parse(form.get('seen') ?? '') as Plain;
    const seen = { ...opened, data, digest: form.get('digest') ?? '' };
    return opened.body === undefined ? seen : { ...seen, body: trimmed(form.get('seen-body') ?? '') };
  } catch {
    return opened;
  }
}

const trimmed = (text: string): string => text.replaceAll('\r\n', '\n').trim();

/** Whether two changes of the same file touch the same: a list whose length changed is one thing. */
function clashing(changes: readonly FieldChange[], seen: Plain, now: Plain): FieldPath[] {
  return changes.flatMap(({ path }) => {
    const list = path.findIndex((step) => typeof step === 'number');
    const whole = list < 0 ? path : path.slice(0, list);
    const [before, after] = [valueAt(seen, whole), valueAt(now, whole)];
    return samePlain(before, after) ? [] : [path];
  });
}

function shownNow(value: Plain | undefined): string {
  if (value === undefined || value === null) return '';
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}

type Change = { readonly changes: readonly FieldChange[]; readonly body: string | undefined };

/** The form over what is there now, with her own changes in it and what they would undo beside them. */
function clashSheet(
  now: Opened,
  { changes, body }: Change,
  paths: readonly FieldPath[],
  fields: readonly FormField[],
): EntrySheet {
  const data = plainOf(now.data);
  const merged = applyChanges(data, changes);
  const clashes = paths.map((path) => ({ key: path.join('.'), now: shownNow(valueAt(data, path)) }));
  const mine = body === undefined || body === now.body ? {} : { body };
  const ofBody = 'body' in mine ? [{ key: BODY, now: now.body ?? '' }] : [];
  return sheetOf(now, formTree(fields, merged, null), { clashes: [...clashes, ...ofBody], ...mine });
}

/** Saves; once more over what was changed meanwhile, where that touches nothing she changed. */
function saveOver(
  seen: Opened,
  change: Change,
  { store, fields = entryFields[seen.key.kind] }: EntryPlace,
): Saved | { readonly clash: EntrySheet } {
  const { key } = seen;
  const saved = store.save(seen, change.changes, change.body);
  if (saved.ok || saved.code !== 'changed-meanwhile') return saved;
  const now = store.open(key);
  if (now === null) return { ok: false, code: 'gone' };
  const paths = clashing(change.changes, plainOf(seen.data), plainOf(now.data));
  const bodies = change.body !== undefined && now.body !== seen.body;
  if (paths.length === 0 && !bodies) return store.save(now, change.changes, change.body);
  return { clash: clashSheet(now, change, paths, fields) };
}

/** The fields of a posted form, and what it said when it was opened. */
function typedIn(
  posted: URLSearchParams,
  opened: Opened,
  fields: readonly FormField[] = entryFields[opened.key.kind],
) {
  const { kind } = opened.key;
  const form = kind === 'component' ? withTenMeasured(posted) : posted;
  const seen = seenIn(form, opened);
  const nodes = formTree(fields, plainOf(seen.data), form);
  const body = opened.body === undefined ? undefined : trimmed(form.get(BODY) ?? seen.body ?? '');
  return { form, seen, nodes, body };
}

/** What a posted form would change, whether it is ever saved or not. */
export function typedChange(posted: URLSearchParams, opened: Opened, frame: Frame): Change {
  return changeOf(typedIn(posted, opened), frame);
}

function changeOf({ seen, nodes, body }: ReturnType<typeof typedIn>, { shop }: Frame): Change {
  return {
    changes: formChanges(nodes, shop.rules.currency),
    body: body === seen.body ? undefined : body,
  };
}

/** What a posted form comes to. */
export function stepEntry(posted: URLSearchParams, opened: Opened, place: EntryPlace): EntryStep {
  const typed = typedIn(posted, opened, place.fields);
  const { form, seen, nodes, body: typedBody } = typed;
  const again = (tried: Tried): EntryStep => ({
    sheet: sheetOf(seen, nodes, { ...tried, ...(typedBody === undefined ? {} : { body: typedBody }) }),
  });
  if (form.get('do') !== 'save') return again({});
  const { changes, body } = changeOf(typed, place.frame);
  if (changes.length === 0 && body === undefined) return { done: 'unchanged' };
  const saved = saveOver(seen, { changes, body }, place);
  if ('clash' in saved) return { sheet: saved.clash };
  if (saved.ok) return { done: 'saved' };
  if (saved.code === 'problems') {
    const offered = isOffered(opened.key.kind, nodes);
    return again({ placed: placeProblems(saved.problems, opened, nodes, offered, place.frame.lang) });
  }
  return again({ notWritable: saved.code === 'not-writable' ? saved.why : saved.code });
}
