/** Files of a release, and what a later one takes over from it. */
import { copyFileSync, linkSync, mkdirSync, readdirSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';

/** Parts of a release. */
export const PARTS = {
  /** The public files, as any static host serves them. */
  client: 'client',
  /** What answers on demand: bench and desk. */
  server: 'server',
  /** What makes pages, kept so that other content can be made into pages without building all code again. */
  render: 'render',
} as const;

/** Paths below a folder, with forward slashes, sorted; none where it isn't there. */
export function filesBelow(folder: string): string[] {
  try {
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => relative(folder, join(parentPath, name)).split(sep).join('/'))
      .sort();
  } catch {
    return [];
  }
}

const made = new Set<string>();

function makeFolder(folder: string): void {
  if (made.has(folder)) return;
  mkdirSync(folder, { recursive: true });
  made.add(folder);
}

/**
 * The same file under another name: no byte is copied where the disk lets one
 * file have two names. Files of a release are never written again, only replaced.
 */
export function takeOver(from: string, to: string): void {
  makeFolder(dirname(to));
  try {
    linkSync(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') throw error;
    copyFileSync(from, to);
  }
}

/** A whole folder in that way. */
export function takeOverAll(from: string, to: string): void {
  for (const name of filesBelow(from)) takeOver(join(from, name), join(to, name));
}
