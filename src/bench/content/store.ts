/** What the maker writes, opened, checked, saved and taken back. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Reading } from '#catalogue/load/readCatalogue.ts';
import { newEntry, rewriteGuide } from '#catalogue/write/edit.ts';
import { inSchemaOrder } from '#catalogue/write/order.ts';
import { applyChanges, isFields, type FieldChange, type PlainMap } from '#catalogue/write/plain.ts';
import { EditError, plainOf, rewrite } from '#catalogue/write/rewrite.ts';
import { saveFile, sweepUnfinished, textDigest } from '#catalogue/write/saveFile.ts';
import type { EntryKey, Opened, SaveAction, Saved, SaveRecord } from './entry.ts';
import { openHistory, type History } from './history.ts';
import { liveContent, newProblems } from './live.ts';
import { componentFiles, fileForNew, locate, orderIn, sharesFile, textNow } from './locate.ts';
import { takenBack } from './undo.ts';

export type ContentStore = {
  /** Everything as it lies there now, and all that is wrong with it. */
  readonly reading: () => Reading;
  /** The same as if `changes` were saved; null where there is no such entry. Nothing is written. */
  readonly readingWith: (key: EntryKey, changes: readonly FieldChange[], body?: string) => Reading | null;
  /** The same as if an entry were there that isn't yet, or not so. */
  readonly readingWithNew: (key: EntryKey, data: PlainMap, body?: string) => Reading;
  readonly open: (key: EntryKey) => Opened | null;
  /** Saves fields of an entry, paths relative to it, unless it has changed since it was opened or a check refuses it. */
  readonly save: (
    opened: Pick<Opened, 'key' | 'digest'>,
    changes: readonly FieldChange[],
    body?: string,
  ) => Saved;
  readonly create: (key: EntryKey, data: PlainMap, body?: string) => Saved;
  /** Writes what there is of some components into their files: one save for each file. */
  readonly saveStock: (numbers: ReadonlyMap<string, number>) => readonly StockSaved[];
  /** Takes an entry out of the content. The history can bring it back. */
  readonly remove: (opened: Pick<Opened, 'key' | 'digest'>) => Saved;
  /** Saves, newest first; of one file, or all, those before a number. */
  readonly history: (options?: Parameters<History['list']>[0]) => readonly SaveRecord[];
  readonly saved: (saveId: number) => SaveRecord | null;
  /** Takes a save back, as a new one. */
  readonly undo: (saveId: number) => Saved;
};

/** What became of the numbers of one file. */
export type StockSaved = { readonly ids: readonly string[]; readonly saved: Saved };

export type Places = {
  /** Absolute, or from the working folder. */
  readonly folder: string;
  readonly historyFile: string;
  readonly nowMs: () => number;
};

/** A file that is to say something else. `seen`: what it says now. */
type Edit = {
  readonly key: EntryKey;
  readonly file: string;
  readonly seen: string | null;
  readonly text: string | null;
  readonly action: SaveAction;
  readonly undoes?: number;
};

/** The file's text with an entry's fields changed. Throws EditError where it can't be written. */
function edited(opened: Opened, changes: readonly FieldChange[], body?: string): string {
  const { key, base, text, file } = opened;
  const order = orderIn(key.kind, base);
  const now = applyChanges(opened.data as PlainMap, changes);
  if (!isFields(now)) throw new EditError('not-fields');
  if (file.endsWith('.md')) return rewriteGuide(text, now, body, order).text;
  if (!sharesFile(key.kind)) return rewrite(text, now, order).text;
  return withEntry(text, key, now);
}

/** A file of several entries with one of them set, or taken out. */
function withEntry(text: string, key: EntryKey, entry: PlainMap | undefined): string {
  const next = applyChanges(plainOf(text), [{ path: [key.id], value: entry }]) as PlainMap;
  return rewrite(text, next, orderIn(key.kind, [key.id])).text;
}

/** Opens the content for writing. Never throws: a history that can't be kept refuses saves by name. */
export function openContent({ folder, historyFile, nowMs }: Places): ContentStore {
  const live = liveContent(folder);
  let kept: History | null = null;
  sweepUnfinished(folder, nowMs());

  const digestOf = (file: string): string | null => {
    const text = textNow(folder, file);
    return text === null ? null : textDigest(text);
  };
  const history = (): History | null => {
    if (kept !== null && existsSync(historyFile)) return kept;
    kept?.close();
    kept = null;
    try {
      const opened = openHistory(historyFile, nowMs());
      opened.settle(digestOf);
      kept = opened;
    } catch {
      // Named by each save that it refuses.
    }
    return kept;
  };

  const write = ({ key, file, seen, text, action, undoes }: Edit): Saved => {
    if (text === seen) return { ok: true, digest: locate(folder, key)?.digest ?? '', saveId: null };
    const problems = newProblems(live, new Map([[file, text]]));
    if (problems.length > 0) return { ok: false, code: 'problems', problems };
    const kept = history();
    if (kept === null) return { ok: false, code: 'not-writable', why: 'no-history' };
    const at = new Date(nowMs()).toISOString();
    try {
      const id = kept.begin({ at, file, key, action, undoes: undoes ?? null, before: seen, after: text });
      const done = kept.finish(id, () =>
        saveFile(folder, file, text, seen === null ? null : textDigest(seen)),
      );
      if (done.ok) return { ok: true, digest: locate(folder, key)?.digest ?? '', saveId: id };
      return done.code === 'changed-meanwhile' ? { ...done, file, yours: text } : done;
    } catch {
      return { ok: false, code: 'not-writable', why: 'no-history' };
    }
  };
  /** An edit of a text, or that the text can't be edited. */
  const attempt = (make: () => Edit): Saved => {
    try {
      return write(make());
    } catch (error) {
      if (error instanceof EditError) return { ok: false, code: 'not-writable', why: 'not-editable' };
      throw error;
    }
  };
  /** The entry, where it is still what was seen of it; else what to answer. */
  const asSeen = (
    { key, digest }: Pick<Opened, 'key' | 'digest'>,
    make: (opened: Opened) => string | null,
  ): Opened | Saved => {
    const opened = locate(folder, key);
    if (opened === null) return { ok: false, code: 'gone' };
    if (opened.digest === digest) return opened;
    let yours: string | null = null;
    try {
      yours = make(opened);
    } catch (error) {
      // What was meant doesn't fit into what lies there now.
      if (!(error instanceof EditError || error instanceof RangeError)) throw error;
    }
    return { ok: false, code: 'changed-meanwhile', file: opened.file, yours, now: opened.text };
  };
  const without = ({ key, text }: Opened): string | null => {
    if (!sharesFile(key.kind)) return null;
    return withEntry(text, key, undefined);
  };

  const textOfNew = (key: EntryKey, data: PlainMap, seen: string | null, body = ''): string =>
    sharesFile(key.kind)
      ? withEntry(seen ?? '', key, inSchemaOrder(data, orderIn(key.kind, [])([])))
      : newEntry(data, orderIn(key.kind, []), key.kind === 'guide' ? body : undefined);

  return {
    reading: live.reading,
    readingWith: (key, changes, body) => {
      const opened = locate(folder, key);
      if (opened === null) return null;
      return live.readingWith(new Map([[opened.file, edited(opened, changes, body)]]));
    },
    readingWithNew: (key, data, body) => {
      const file = fileForNew(folder, key, data);
      return live.readingWith(new Map([[file, textOfNew(key, data, textNow(folder, file), body)]]));
    },
    open: (key) => locate(folder, key),
    save: (seen, changes, body) => {
      const opened = asSeen(seen, (now) => edited(now, changes, body));
      if ('ok' in opened) return opened;
      const { key, file, text } = opened;
      return attempt(() => ({
        ...{ key, file, seen: text, action: 'save' },
        text: edited(opened, changes, body),
      }));
    },
    create: (key, data, body) => {
      const file = fileForNew(folder, key, data);
      const there = existsSync(join(folder, file));
      if (locate(folder, key) !== null || (there && !sharesFile(key.kind))) {
        return { ok: false, code: 'name-taken' };
      }
      const seen = there ? textNow(folder, file) : null;
      if (there && seen === null) return { ok: false, code: 'not-writable', why: 'not-editable' };
      return attempt(() => ({ key, file, seen, action: 'create', text: textOfNew(key, data, seen, body) }));
    },
    saveStock: (numbers) => {
      const files = componentFiles(folder)
        .map(({ file, ids }) => ({ file, ids: ids.filter((id) => numbers.has(id)) }))
        .filter(({ ids }) => ids.length > 0);
      return files.map(({ file, ids }) => {
        const [id = ''] = ids;
        const key = { kind: 'component', id } as const;
        const saved = attempt(() => {
          const text = textNow(folder, file) ?? '';
          const changes = ids.map((one) => ({ path: [one, 'stock'], value: numbers.get(one) ?? 0 }));
          const next = applyChanges(plainOf(text), changes) as PlainMap;
          const written = rewrite(text, next, orderIn('component', [id])).text;
          return { key, file, seen: text, action: 'stock', text: written };
        });
        return { ids, saved };
      });
    },
    remove: (seen) => {
      const opened = asSeen(seen, without);
      if ('ok' in opened) return opened;
      const { key, file, text } = opened;
      return attempt(() => ({ key, file, seen: text, action: 'remove', text: without(opened) }));
    },
    history: (options) => history()?.list(options) ?? [],
    saved: (saveId) => history()?.one(saveId) ?? null,
    undo: (saveId) => {
      const save = history()?.one(saveId) ?? null;
      if (save === null) return { ok: false, code: 'gone' };
      const { key, file } = save;
      const now = textNow(folder, file);
      const back = takenBack(save, now);
      if (!back.ok) return { ok: false, code: 'changed-meanwhile', file, yours: save.before, now };
      return attempt(() => ({ key, file, seen: now, action: 'undo', text: back.text, undoes: saveId }));
    },
  };
}
