/** What texts say, kept from one process to the next: a reading from it is the same as one of the texts. */
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { openSaid, type Said } from '#catalogue/read/said.ts';
import { contentFolder, type Edit } from '#tests/catalogue/contentFolder.ts';
import { CONTENT } from '#tests/support/catalogue.ts';

function place(): string {
  const folder = mkdtempSync(join(tmpdir(), 'said-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  return folder;
}

/** Counts what had to be taken apart. */
const counting = (said: Said): Said & { taken: number } => ({
  taken: 0,
  of: (text) => said.of(text),
  note(text, data) {
    this.taken += 1;
    said.note(text, data);
  },
});

const plain = (folder: string) => JSON.stringify(readCatalogue(folder));

it('the demo shop, without a text being taken apart again', () => {
  const kept = place();
  const first = openSaid(kept, 'a');
  const before = counting(first);
  expect(JSON.stringify(readCatalogue(CONTENT, { said: before }))).toBe(plain(CONTENT));
  expect(before.taken).toBeGreaterThan(60);
  first.keep();
  const after = counting(openSaid(kept, 'a'));
  expect(JSON.stringify(readCatalogue(CONTENT, { said: after }))).toBe(plain(CONTENT));
  expect(after.taken).toBe(0);
  // Another program knows nothing of it, and takes its place.
  const other = openSaid(kept, 'b');
  const anew = counting(other);
  readCatalogue(CONTENT, { said: anew });
  expect(anew.taken).toBe(before.taken);
  other.keep();
  expect(readdirSync(kept)).toEqual(['b.v8']);
});

it('mistakes too, each with its line', () => {
  const edits: readonly Edit[] = [
    { file: 'pieces/row.yaml', from: 'status: to-order', to: 'status: never' },
    { file: 'pieces/row.yaml', from: 'usual: 22', to: 'usual: # 22' },
    { file: 'guides/en/measuring.md', from: '---\n', to: '---\norder: first\n' },
  ];
  const folder = contentFolder(edits);
  const kept = place();
  for (let round = 0; round < 2; round += 1) {
    const said = openSaid(kept, 'a');
    const reading = readCatalogue(folder, { said });
    expect(reading.problems.length).toBeGreaterThan(1);
    expect(JSON.stringify(reading)).toBe(plain(folder));
    said.keep();
  }
});

it('texts that are no YAML are never kept, and a file of it that is broken counts for none', () => {
  const folder = contentFolder([{ file: 'pieces/row.yaml', write: 'name: "Row\nkind: [' }]);
  const kept = place();
  const said = openSaid(kept, 'a');
  readCatalogue(folder, { said });
  said.keep();
  expect(openSaid(kept, 'a').of('name: "Row\nkind: [')).toBeNull();
  writeFileSync(join(kept, 'a.v8'), 'half a fi');
  expect(JSON.stringify(readCatalogue(folder, { said: openSaid(kept, 'a') }))).toBe(plain(folder));
});
