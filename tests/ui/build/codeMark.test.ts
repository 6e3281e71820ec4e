import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { codeMark } from '#ui/build/codeMark.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'mark-'));
  mkdirSync(join(folder, 'src', 'deep'), { recursive: true });
  writeFileSync(join(folder, 'src', 'a.ts'), 'one');
  writeFileSync(join(folder, 'src', 'deep', 'b.ts'), 'two');
  writeFileSync(join(folder, 'settings.mjs'), 'three');
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

const mark = (): string => codeMark([join(folder, 'src'), join(folder, 'settings.mjs')]);

test('the mark stays while nothing changes', () => {
  expect(mark()).toBe(mark());
  expect(mark()).toMatch(/^[0-9a-f]{16}$/);
});

test.each([
  [
    'a text deep in a folder',
    () => {
      writeFileSync(join(folder, 'src', 'deep', 'b.ts'), 'twO');
    },
  ],
  [
    'a file by itself',
    () => {
      writeFileSync(join(folder, 'settings.mjs'), 'four');
    },
  ],
  [
    'a name',
    () => {
      renameSync(join(folder, 'src', 'a.ts'), join(folder, 'src', 'c.ts'));
    },
  ],
  [
    'a new file',
    () => {
      writeFileSync(join(folder, 'src', 'empty.ts'), '');
    },
  ],
  [
    'a file gone',
    () => {
      rmSync(join(folder, 'src', 'a.ts'));
    },
  ],
])('the mark changes with %s', (_, change) => {
  const before = mark();
  change();
  expect(mark()).not.toBe(before);
});

test('text moved from one file to the next is another mark', () => {
  writeFileSync(join(folder, 'src', 'a.ts'), 'onetwo');
  writeFileSync(join(folder, 'src', 'deep', 'b.ts'), '');
  const joined = mark();
  writeFileSync(join(folder, 'src', 'a.ts'), 'one');
  writeFileSync(join(folder, 'src', 'deep', 'b.ts'), 'two');
  expect(mark()).not.toBe(joined);
});

test('a path that is not there is refused', () => {
  expect(() => codeMark([join(folder, 'nowhere')])).toThrow(/nowhere/);
});
