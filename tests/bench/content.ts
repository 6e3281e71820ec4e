/** A content folder of one test with its store, and the text of its files. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { openContent, type ContentStore } from '#bench/content/store.ts';
import { contentFolder, type Edit } from '#tests/catalogue/contentFolder.ts';

export type Kept = {
  readonly store: ContentStore;
  readonly folder: string;
  readonly historyFile: string;
  readonly textOf: (file: string) => string;
};

/** `edits`: to the plain fixture, before it is opened. */
export function keptContent(edits: readonly Edit[] = []): Kept {
  const folder = contentFolder(edits);
  const historyFile = join(contentFolder([]), 'beside', 'content-history.sqlite');
  const store = openContent({ folder, historyFile, nowMs: () => Date.UTC(2026, 10, 20, 9) });
  return { store, folder, historyFile, textOf: (file) => readFileSync(join(folder, file), 'utf8') };
}
