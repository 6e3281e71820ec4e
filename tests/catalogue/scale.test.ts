import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { contentFiles } from '#catalogue/read/files.ts';
import { onDisk } from '#catalogue/read/folder.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { nameAt } from '../../src/command/scale/texts.ts';
import { writeScaled } from '../../src/command/scale/write.ts';

const content = new URL('../../content', import.meta.url).pathname;

function generated(count: number): string {
  const folder = mkdtempSync(join(tmpdir(), 'claspwise-scale-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  writeScaled(content, join(folder, 'content'), count, () => {});
  return join(folder, 'content');
}

const digest = (folder: string): string =>
  contentFiles(onDisk(folder))
    .pieces.reduce(
      (hash, file) => hash.update(file).update(readFileSync(join(folder, file))),
      createHash('sha256'),
    )
    .digest('hex');

it('writes as many pieces as asked for, all of them sound, the same each time', () => {
  const folder = generated(60);
  const { catalogue, problems, notes } = readCatalogue(folder);
  expect(problems).toEqual([]);
  expect(notes).toEqual([]);
  expect(catalogue?.pieces.length).toBe(60);
  expect(digest(folder)).toBe(digest(generated(60)));
});

it('never runs out of names', () => {
  expect(new Set(Array.from({ length: 30_000 }, (_, index) => nameAt(index))).size).toBe(30_000);
});
