/** A folder of content, as it lies on the disk or as it would lie with texts that aren't saved yet. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Memory } from './memory.ts';
import type { Said } from './said.ts';

/** Texts by path within the content folder, with forward slashes; null as if the file were deleted. */
export type Overlay = ReadonlyMap<string, string | null>;

export type Folder = {
  /** Absolute, or from the working folder. */
  readonly path: string;
  /** What is read in place of the files of these names. */
  readonly overlay: Overlay;
  /** Of readings of the same folder before. */
  readonly memory: Memory;
  /** What texts say that were taken apart before, in another process. */
  readonly said?: Said | undefined;
};

const NOTHING: Overlay = new Map();

/** The folder as it lies there. */
export const onDisk = (path: string): Folder => ({ path, overlay: NOTHING, memory: new Map() });

/** Whether a file is there to be read. */
export function isThere({ path, overlay }: Folder, file: string): boolean {
  const text = overlay.get(file);
  return text === undefined ? existsSync(join(path, file)) : text !== null;
}
