/** Entries of the content as the bench opens and saves them. */
import type { FieldPath, Problem } from '#catalogue/read/problem.ts';
import type { Unwritable } from '#catalogue/write/saveFile.ts';
import type { Lang } from '#words/lang.ts';

export type EntryKind = 'piece' | 'component' | 'wire' | 'guide' | 'shop';

/** `id`: the short name; of the shop anything. `lang`: of guides. */
export type EntryKey = { readonly kind: EntryKind; readonly id: string; readonly lang?: Lang };

/** An entry as it stands in its file now. */
export type Opened = {
  readonly key: EntryKey;
  /** Path within the content folder. */
  readonly file: string;
  /** Leads to the entry within its file. */
  readonly base: FieldPath;
  /** The whole file. */
  readonly text: string;
  /** Of what the entry says, not of its neighbours in the file; what a save is held against. */
  readonly digest: string;
  /** The entry's own data as YAML gave it. */
  readonly data: unknown;
  /** Of guides: what follows the heading block. */
  readonly body?: string;
};

/** Two versions of one file: the one that lies there, and the same with what was to be saved. */
export type Conflict = {
  readonly ok: false;
  readonly code: 'changed-meanwhile';
  readonly file: string;
  /** Null where the file was to go, or what was meant can't be put into what lies there. */
  readonly yours: string | null;
  /** Null where the file is gone. */
  readonly now: string | null;
};

export type Saved =
  | {
      readonly ok: true;
      /** Of what the entry says now. */
      readonly digest: string;
      /** The history's number of it; null where nothing was changed. */
      readonly saveId: number | null;
    }
  | Conflict
  /** What the catalogue's checks found that they didn't find before. */
  | { readonly ok: false; readonly code: 'problems'; readonly problems: readonly Problem[] }
  | {
      readonly ok: false;
      readonly code: 'not-writable';
      readonly why: Unwritable | 'not-editable' | 'no-history';
    }
  /** There is one of this name already, or none any more. */
  | { readonly ok: false; readonly code: 'name-taken' | 'gone' };

/** What a save did. `stock`: numbers of the book were written out. */
export type SaveAction = 'save' | 'create' | 'remove' | 'undo' | 'stock';

/** One save, with the file's text before and after; null where there was no file. */
export type SaveRecord = {
  readonly id: number;
  /** ISO 8601. */
  readonly at: string;
  readonly file: string;
  readonly key: EntryKey;
  readonly action: SaveAction;
  /** The save that this one took back. */
  readonly undoes: number | null;
  /** The save that took this one back. */
  readonly undoneBy: number | null;
  readonly before: string | null;
  readonly after: string | null;
};
