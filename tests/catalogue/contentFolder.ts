/** A content folder for one test: the plain fixture, with files changed, added or taken away. */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

const plain = new URL('../fixtures/catalogue/plain/', import.meta.url).pathname;

/** What to do to a file: replace a text that must be there, write it anew, or take it away (null). */
export type Edit =
  | { readonly file: string; readonly from: string; readonly to: string }
  | { readonly file: string; readonly write: string | Uint8Array | null };

export function contentFolder(edits: readonly Edit[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'claspwise-content-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  cpSync(plain, folder, { recursive: true });
  for (const edit of edits) {
    const path = join(folder, edit.file);
    if ('from' in edit) {
      const before = readFileSync(path, 'utf8');
      if (!before.includes(edit.from)) throw new Error(`${edit.file} has no “${edit.from}”`);
      writeFileSync(
        path,
        before.replace(edit.from, () => edit.to),
      );
    } else if (edit.write === null) {
      rmSync(path, { recursive: true });
    } else {
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, edit.write);
    }
  }
  return folder;
}
