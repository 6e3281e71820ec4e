/** A file is whole whatever happens while it is written. */
import {
  existsSync,
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { saveFile, sweepUnfinished, textDigest, type Disk } from '#catalogue/write/saveFile.ts';
import { contentFolder } from '#tests/catalogue/contentFolder.ts';

const OLD = 'name: old\n';
const NEW = 'name: new\n';

function folderWith(text: string | null): string {
  const folder = mkdtempSync(join(tmpdir(), 'claspwise-save-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  if (text !== null) writeFileSync(join(folder, 'one.yaml'), text, { mode: 0o640 });
  return folder;
}

const read = (folder: string): string => readFileSync(join(folder, 'one.yaml'), 'utf8');

function failing(code: string, at: keyof Disk): Disk {
  const fail = (): never => {
    throw Object.assign(new Error(code), { code });
  };
  return {
    write: at === 'write' ? fail : (handle, text) => writeFileSync(handle, text),
    rename: fail,
  };
}

describe('one file saved', () => {
  test('says the new text, keeps its mode and leaves nothing beside it', () => {
    const folder = folderWith(OLD);
    expect(saveFile(folder, 'one.yaml', NEW, textDigest(OLD))).toEqual({ ok: true, digest: textDigest(NEW) });
    expect(read(folder)).toBe(NEW);
    expect(statSync(join(folder, 'one.yaml')).mode & 0o777).toBe(0o640);
    expect(readdirSync(folder)).toEqual(['one.yaml']);
  });

  test('that changed since it was seen stays, and what it says comes back', () => {
    const folder = folderWith('name: other\n');
    const refused = { ok: false, code: 'changed-meanwhile', now: 'name: other\n' };
    expect(saveFile(folder, 'one.yaml', NEW, textDigest(OLD))).toEqual(refused);
    expect(saveFile(folder, 'one.yaml', NEW, null)).toEqual(refused);
    expect(saveFile(folder, 'gone.yaml', NEW, textDigest(OLD))).toEqual({ ...refused, now: null });
    expect(read(folder)).toBe('name: other\n');
  });

  test.each([
    ['ENOSPC', 'write', 'full'],
    ['EDQUOT', 'rename', 'full'],
    ['EROFS', 'write', 'read-only'],
    ['EACCES', 'rename', 'read-only'],
    ['EIO', 'write', 'failed'],
  ] as const)('stays whole where the disk says %s on %s', (code, at, why) => {
    const folder = folderWith(OLD);
    const result = saveFile(folder, 'one.yaml', NEW, textDigest(OLD), failing(code, at));
    expect(result).toEqual({ ok: false, code: 'not-writable', why });
    expect(read(folder)).toBe(OLD);
    expect(readdirSync(folder)).toEqual(['one.yaml']);
  });

  test('behind a link is written where it lies', () => {
    const folder = folderWith(null);
    const elsewhere = folderWith(OLD);
    symlinkSync(join(elsewhere, 'one.yaml'), join(folder, 'one.yaml'));
    expect(saveFile(folder, 'one.yaml', NEW, textDigest(OLD)).ok).toBe(true);
    expect(lstatSync(join(folder, 'one.yaml')).isSymbolicLink()).toBe(true);
    expect(read(elsewhere)).toBe(NEW);
  });

  test('keeps a mark of the byte order that it had', () => {
    const folder = folderWith(`\ufeff${OLD}`);
    expect(saveFile(folder, 'one.yaml', NEW, textDigest(OLD)).ok).toBe(true);
    expect(read(folder)).toBe(`\ufeff${NEW}`);
  });

  test('is deleted, and made anew in a folder that isn’t there', () => {
    const folder = folderWith(OLD);
    expect(saveFile(folder, 'one.yaml', null, textDigest(OLD)).ok).toBe(true);
    expect(existsSync(join(folder, 'one.yaml'))).toBe(false);
    expect(saveFile(folder, 'deep/er/two.yaml', NEW, null).ok).toBe(true);
    expect(readFileSync(join(folder, 'deep/er/two.yaml'), 'utf8')).toBe(NEW);
  });

  test.each(['../out.yaml', '/etc/out.yaml', 'a/../../out.yaml', 'a\\..\\..\\out.yaml'])(
    'never lies outside of the content: %s',
    (file) => {
      const result = saveFile(folderWith(OLD), file, NEW, null);
      expect(result).toEqual({ ok: false, code: 'not-writable', why: 'outside' });
    },
  );
});

test('what a crash leaves half written is never read, and swept', () => {
  const folder = contentFolder([{ file: 'pieces/.unfinished-0a1b2c.yaml', write: 'name: [' }]);
  expect(readCatalogue(folder).problems).toEqual([]);
  const left = join(folder, 'pieces/.unfinished-0a1b2c.yaml');
  sweepUnfinished(folder, Date.now());
  expect(existsSync(left)).toBe(true);
  utimesSync(left, 1000, 1000);
  sweepUnfinished(folder, Date.now());
  expect(existsSync(left)).toBe(false);
});

describe('texts that aren’t saved yet', () => {
  test('are read in place of files, as new files, and as if files were deleted', () => {
    const folder = contentFolder([]);
    const piece = readFileSync(join(folder, 'pieces/row.yaml'), 'utf8');
    const names = (overlay: ReadonlyMap<string, string | null>): string[] =>
      (readCatalogue(folder, { overlay }).catalogue?.pieces ?? []).map(({ id, name }) => `${id} ${name}`);
    expect(names(new Map([['pieces/row.yaml', piece.replace('Row', 'Line')]]))).toEqual(['row Line']);
    expect(
      names(new Map([['pieces/two.yaml', piece.replace('Row', 'Two')]])).toSorted((a, b) => (a < b ? -1 : 1)),
    ).toEqual(['row Row', 'two Two']);
    expect(names(new Map([['pieces/row.yaml', null]]))).toEqual([]);
    const { problems } = readCatalogue(folder, { overlay: new Map([['shop.yaml', null]]) });
    expect(problems.map(({ error }) => error.code)).toContain('shop-missing');
  });

  test('have their mistakes named as if they were saved', () => {
    const overlay = new Map([['pieces/row.yaml', 'name: [']]);
    expect(readCatalogue(contentFolder([]), { overlay }).problems).toMatchObject([
      { file: 'pieces/row.yaml', error: { code: 'yaml' } },
    ]);
  });
});
