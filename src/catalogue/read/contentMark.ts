/** Everything in a content folder that a shop is built of, as one mark. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { isDraft } from './files.ts';

/**
 * Sixteen hexadecimal digits that change with any file that isn't a draft, its
 * name or its bytes, photographs too. Of a folder that isn't there: those of an empty one.
 */
export function contentMark(folder: string): string {
  const hash = createHash('sha256');
  for (const name of filesIn(folder)) {
    const bytes = bytesOf(join(folder, name));
    // Its length too, so that no file can pass for two.
    if (bytes !== null) hash.update(`${name}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest('hex').slice(0, 16);
}

/** Names with forward slashes, sorted. */
function filesIn(folder: string): string[] {
  try {
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => relative(folder, join(parentPath, name)).split(sep).join('/'))
      .filter((name) => !isDraft(name))
      .sort();
  } catch {
    return [];
  }
}

/** Null where the file was taken away in the meantime. */
function bytesOf(file: string): Buffer | null {
  try {
    return readFileSync(file);
  } catch {
    return null;
  }
}
