/**
 * Where releases lie: a folder for each, and beside them a file that names the
 * one that is served. That file is replaced by a rename, so that whoever reads
 * it finds the old name or the new one, and never half of one.
 */
import { readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { syncFile, syncFolder } from './durable.ts';

/** Where all releases lie; CLASPWISE_RELEASES names another folder. */
export const releasesFolder = (): string => resolve(process.env.CLASPWISE_RELEASES ?? '.releases');

/**
 * The environment's name for the folder of the release whose catalogue pages read: the one that is
 * being made while a shop is built, the one that is served by a server, which changes it with each new one.
 */
export const READ_FROM = 'CLASPWISE_RELEASE';

/** The environment's name for a release whose pages are made by the renderer that an earlier one kept. */
export const MADE_AGAIN = 'CLASPWISE_MADE_AGAIN';

/** Files of a release. */
export const CATALOGUE_FILE = 'catalogue.json';

const pointerFile = (folder: string): string => join(folder, 'current');

type Known = { readonly file: string; readonly stamp: string; readonly id: string | null };

/** The file's last reading: asked at every request, it is read only where it is another file. */
let known: Known | null = null;

/** Name of the release that is served; null where there is none yet. */
export function currentId(folder = releasesFolder()): string | null {
  const file = pointerFile(folder);
  const there = statSync(file, { throwIfNoEntry: false, bigint: true });
  const stamp = there === undefined ? 'none' : `${there.ino} ${there.mtimeNs}`;
  if (known?.file !== file || known.stamp !== stamp) {
    known = { file, stamp, id: there === undefined ? null : readFileSync(file, 'utf8').trim() };
  }
  return known.id;
}

/** Folder of the release that is served; null where there is none yet. */
export function currentRelease(folder = releasesFolder()): string | null {
  const id = currentId(folder);
  return id === null ? null : join(folder, id);
}

/** Makes a release the one that is served, from this moment and after a power cut too. */
export function pointTo(id: string, folder = releasesFolder()): void {
  const fresh = `${pointerFile(folder)}.${process.pid}`;
  try {
    writeFileSync(fresh, `${id}\n`);
    syncFile(fresh);
    renameSync(fresh, pointerFile(folder));
  } finally {
    rmSync(fresh, { force: true });
  }
  syncFolder(folder);
}
