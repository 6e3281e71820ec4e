/** All that a page is made with beside the content, as one mark. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { digest } from '../site/digest.ts';

/** The files that a path stands for: itself, or all that lies in the folder. */
const filesOf = (path: string): readonly string[] =>
  statSync(path).isFile()
    ? [path]
    : readdirSync(path, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map(({ parentPath, name }) => join(parentPath, name));

/**
 * Sixteen hexadecimal digits that change with any file, its name or its text.
 * Every file counts: how the island's script is cut into files, and so what a
 * page links, hangs on all pages together.
 * @param paths files and folders
 * @throws where a path isn't there
 */
export function codeMark(paths: readonly string[]): string {
  const files = paths.flatMap(filesOf).sort();
  return digest(
    16,
    files.flatMap((file) => [file, readFileSync(file)]),
  );
}
