/** Opening, saving, refusing and taking back what the maker writes. */
import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { EntryKey, Opened, Saved } from '#bench/content/entry.ts';
import { openHistory } from '#bench/content/history.ts';
import { openContent } from '#bench/content/store.ts';
import { keptContent, type Kept } from './content.ts';

const row: EntryKey = { kind: 'piece', id: 'row' };
const ball: EntryKey = { kind: 'component', id: 'ball-8' };
const PIECE = 'pieces/row.yaml';
const PARTS = 'components/parts.yaml';

function opened({ store }: Kept, key: EntryKey): Opened {
  const entry = store.open(key);
  if (entry === null) throw new Error(`no ${key.id}`);
  return entry;
}

const price = (value: string) => [{ path: ['price'], value }];

function idOf(saved: Saved): number {
  if (!saved.ok || saved.saveId === null) throw new Error(JSON.stringify(saved));
  return saved.saveId;
}

describe('saving', () => {
  test('changes the one line, and the reading with it', () => {
    const kept = keptContent();
    const before = kept.textOf(PIECE);
    expect(kept.store.reading().catalogue?.pieces[0]?.listedMinor).toBe(3500);
    const saved = kept.store.save(opened(kept, row), price('£38.00'));
    expect(saved).toMatchObject({ ok: true, digest: opened(kept, row).digest });
    expect(kept.textOf(PIECE)).toBe(before.replace('£35.00', '£38.00'));
    expect(kept.store.reading().catalogue?.pieces[0]?.listedMinor).toBe(3800);
  });

  test('a new field stands where its schema has it', () => {
    const kept = keptContent();
    kept.store.save(opened(kept, ball), [{ path: ['name-de'], value: 'Glaskugel' }]);
    expect(kept.textOf(PARTS)).toContain('name: Glass round\n  name-de: Glaskugel\n  size: 8 mm\n');
  });

  test('is refused with all that the catalogue’s checks find, and the file stays', () => {
    const kept = keptContent();
    const before = kept.textOf(PARTS);
    const saved = kept.store.save(opened(kept, ball), [{ path: ['hole'], value: '9 mm' }]);
    expect(saved).toMatchObject({ ok: false, code: 'problems' });
    expect(!saved.ok && saved.code === 'problems' && saved.problems.map(({ file }) => file)).toContain(PARTS);
    expect(kept.textOf(PARTS)).toBe(before);
    expect(kept.store.history()).toEqual([]);
  });

  test('isn’t held up by what is wrong elsewhere already', () => {
    const kept = keptContent([{ file: PARTS, from: 'cost: £0.40', to: 'cost: 0.40' }]);
    expect(kept.store.save(opened(kept, row), price('£38.00')).ok).toBe(true);
  });

  test('from a second window is refused, with both versions', () => {
    const kept = keptContent();
    const [first, second] = [opened(kept, row), opened(kept, row)];
    expect(kept.store.save(first, price('£38.00')).ok).toBe(true);
    const saved = kept.store.save(second, [{ path: ['summary'], value: 'Another.' }]);
    const now = kept.textOf(PIECE);
    expect(saved).toEqual({
      ok: false,
      code: 'changed-meanwhile',
      file: PIECE,
      now,
      yours: now.replace('A row of beads.', 'Another.'),
    });
  });

  test('of two beads in one file from two windows keeps both', () => {
    const kept = keptContent();
    const stone = opened(kept, { kind: 'component', id: 'stone-8' });
    const glass = opened(kept, ball);
    expect(kept.store.save(stone, [{ path: ['cost'], value: '£0.50' }]).ok).toBe(true);
    expect(kept.store.save(glass, [{ path: ['cost'], value: '£0.25' }]).ok).toBe(true);
    expect(kept.textOf(PARTS)).toMatch(/£0\.25[^]*£0\.50/);
  });

  test('what says the same already is no save', () => {
    const kept = keptContent();
    expect(kept.store.save(opened(kept, row), price('£35.00'))).toMatchObject({ ok: true, saveId: null });
  });

  test('without a place for the history is refused by name, before the file is touched', () => {
    const kept = keptContent();
    const before = kept.textOf(PIECE);
    const store = openContent({
      folder: kept.folder,
      historyFile: join(kept.folder, PIECE, 'history.sqlite'),
      nowMs: Date.now,
    });
    expect(store.save(opened(kept, row), price('£38.00'))).toEqual({
      ok: false,
      code: 'not-writable',
      why: 'no-history',
    });
    expect(kept.textOf(PIECE)).toBe(before);
  });
});

describe('making and taking away', () => {
  test('a bead goes to its like, and away again', () => {
    const kept = keptContent();
    const key: EntryKey = { kind: 'component', id: 'heron-6' };
    const before = kept.textOf(PARTS);
    const bead = {
      cost: '£0.12',
      colour: '#8b98a3',
      name: 'Heron',
      size: '6 mm',
      hole: '1.1 mm',
      material: 'glass',
    };
    expect(kept.store.create(key, bead).ok).toBe(true);
    expect(kept.textOf(PARTS)).toContain(
      "\n\nheron-6:\n  name: Heron\n  size: 6 mm\n  hole: 1.1 mm\n  material: glass\n  colour: '#8b98a3'\n  cost: £0.12\n",
    );
    expect(kept.store.create(key, bead)).toEqual({ ok: false, code: 'name-taken' });
    expect(kept.store.remove(opened(kept, key)).ok).toBe(true);
    expect(kept.textOf(PARTS)).toBe(before);
  });

  test('a bead that a piece needs stays', () => {
    const kept = keptContent();
    expect(kept.store.remove(opened(kept, ball))).toMatchObject({ ok: false, code: 'problems' });
  });

  test('a piece and a guide have files of their own', () => {
    const kept = keptContent();
    const piece = opened(kept, row).data as Record<string, string>;
    expect(kept.store.create({ kind: 'piece', id: 'other' }, { ...piece, name: 'Other' }).ok).toBe(true);
    expect(kept.textOf('pieces/other.yaml')).toMatch(/^name: Other\nkind: bracelet\n/);
    const guide: EntryKey = { kind: 'guide', id: 'care', lang: 'en' };
    expect(kept.store.create(guide, { title: 'Care', summary: 'How.', order: 9 }, 'Softly.').ok).toBe(true);
    expect(opened(kept, guide)).toMatchObject({ data: { title: 'Care' }, body: 'Softly.' });
    expect(kept.store.save(opened(kept, guide), [], 'Very softly.').ok).toBe(true);
    expect(kept.textOf('guides/en/care.md')).toBe(
      '---\ntitle: Care\nsummary: How.\norder: 9\n---\n\nVery softly.\n',
    );
  });
});

describe('the history', () => {
  test('has every save with its texts, newest first, readable by the maker’s account only', () => {
    const kept = keptContent();
    const before = kept.textOf(PIECE);
    kept.store.save(opened(kept, row), price('£38.00'));
    const between = kept.textOf(PIECE);
    kept.store.save(opened(kept, row), price('£39.00'));
    expect(kept.store.history()).toMatchObject([
      { action: 'save', file: PIECE, before: between, after: kept.textOf(PIECE) },
      { action: 'save', key: row, before, after: between, at: '2026-11-20T09:00:00.000Z' },
    ]);
    expect(statSync(kept.historyFile).mode & 0o777).toBe(0o600);
  });

  test('takes a save back, and that again', () => {
    const kept = keptContent();
    const before = kept.textOf(PIECE);
    const id = idOf(kept.store.save(opened(kept, row), price('£38.00')));
    const after = kept.textOf(PIECE);
    const undone = idOf(kept.store.undo(id));
    expect(kept.textOf(PIECE)).toBe(before);
    expect(kept.store.saved(id)?.undoneBy).toBe(undone);
    expect(kept.store.undo(undone).ok).toBe(true);
    expect(kept.textOf(PIECE)).toBe(after);
  });

  test('brings back what was taken away', () => {
    const kept = keptContent();
    const key: EntryKey = { kind: 'guide', id: 'measuring', lang: 'en' };
    const before = kept.textOf('guides/en/measuring.md');
    const id = idOf(kept.store.remove(opened(kept, key)));
    expect(kept.store.open(key)).toBeNull();
    expect(kept.store.undo(id).ok).toBe(true);
    expect(kept.textOf('guides/en/measuring.md')).toBe(before);
  });

  test('takes back only what a save changed, where other fields were changed since', () => {
    const kept = keptContent();
    const before = kept.textOf(PIECE);
    const id = idOf(kept.store.save(opened(kept, row), price('£38.00')));
    kept.store.save(opened(kept, row), [{ path: ['summary'], value: 'Another.' }]);
    expect(kept.store.undo(id).ok).toBe(true);
    expect(kept.textOf(PIECE)).toBe(before.replace('A row of beads.', 'Another.'));
  });

  test('refuses where the very field was changed since, with both versions', () => {
    const kept = keptContent();
    const before = kept.textOf(PIECE);
    const id = idOf(kept.store.save(opened(kept, row), price('£38.00')));
    kept.store.save(opened(kept, row), price('£39.00'));
    const now = kept.textOf(PIECE);
    expect(kept.store.undo(id)).toEqual({
      ...{ ok: false, code: 'changed-meanwhile', file: PIECE },
      yours: before,
      now,
    });
    expect(kept.textOf(PIECE)).toBe(now);
  });

  test('settles a save that a crash has cut off, by what the file says', () => {
    const kept = keptContent();
    const before = kept.textOf(PIECE);
    const begun = {
      at: '2026-11-20T08:00:00.000Z',
      file: PIECE,
      key: row,
      action: 'save',
      undoes: null,
    } as const;
    const db = openHistory(kept.historyFile, 0);
    db.begin({ ...begun, before, after: `${before}# never written\n` });
    db.begin({ ...begun, before: `${before}# from before\n`, after: before });
    db.close();
    const store = openContent({ ...kept, nowMs: Date.now });
    expect(store.history().map(({ after }) => after)).toEqual([before]);
  });

  test('that is damaged is set aside, and saving goes on', () => {
    const kept = keptContent();
    idOf(kept.store.save(opened(kept, row), price('£38.00')));
    for (const end of ['-wal', '-shm']) rmSync(kept.historyFile + end);
    writeFileSync(kept.historyFile, 'nothing of the kind'.repeat(500));
    const store = openContent({ ...kept, nowMs: () => 7 });
    expect(store.history()).toEqual([]);
    expect(readFileSync(`${kept.historyFile}.damaged-7`, 'utf8')).toContain('nothing of the kind');
    expect(store.save(opened(kept, row), price('£39.00')).ok).toBe(true);
  });
});
