/**
 * What lies on the host, as it says itself: a list of files with their digests,
 * and beside it a journal of what was done since, a line for each file. Both lie in
 * the folder, so that any machine that may write there can go on where another broke off.
 */
import { isSafePath, type Digests } from './publicFiles.ts';

export const MANIFEST_FILE = '.claspwise-files.json';
export const JOURNAL_FILE = '.claspwise-journal';
/** Where files are written before they get their names. */
export const INCOMING_FOLDER = '.claspwise-incoming';

export const isOurs = (name: string): boolean =>
  [MANIFEST_FILE, JOURNAL_FILE, INCOMING_FOLDER].includes(name);

/** Whether a file was there before an upload that broke off: `new` is one that no visitor's page asks for yet. */
export type Unsure = 'new' | 'there';

export type Manifest = {
  readonly version: 1;
  /** The release that lies there whole; null while one is on its way. */
  readonly release: string | null;
  readonly files: Digests;
  /** Files that no page asks for any more but those that somebody had open: removed with the next upload. */
  readonly leaving: readonly string[];
  /** Files that an upload, as long as it runs, may have written or removed: what is in them is not known. */
  readonly unsure: Readonly<Record<string, Unsure>>;
};

export const EMPTY: Manifest = { version: 1, release: null, files: {}, leaving: [], unsure: {} };

const DIGEST = /^[\da-f]{64}$/;
const isTable = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Null for anything that an upload of ours would not have written: nothing is written or removed by it then. */
export function readManifest(text: string): Manifest | null {
  let read: unknown;
  try {
    read = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isTable(read) || read.version !== 1) return null;
  const { release, files, leaving, unsure } = read;
  if (release !== null && typeof release !== 'string') return null;
  if (!isTable(files) || !isTable(unsure) || !Array.isArray(leaving)) return null;
  const paths = [...Object.keys(files), ...Object.keys(unsure), ...(leaving as unknown[])];
  if (!paths.every((path) => typeof path === 'string' && isSafePath(path))) return null;
  if (!Object.values(files).every((digest) => typeof digest === 'string' && DIGEST.test(digest))) return null;
  if (!Object.values(unsure).every((how) => how === 'new' || how === 'there')) return null;
  return read as Manifest;
}

/** One file that was sent or removed. */
export type Done = { readonly path: string; readonly digest: string | null };

export const journalLine = ({ path, digest }: Done): string => `${digest ?? '-'} ${path}\n`;

/** Lines of a journal; one that was cut off is left out, as is everything after it. */
export function readJournal(text: string): Done[] {
  const lines = text.split('\n').slice(0, -1);
  const done: Done[] = [];
  for (const line of lines) {
    const [, digest = '', path = ''] = /^(-|[\da-f]{64}) (.+)$/.exec(line) ?? [];
    if (!isSafePath(path)) break;
    done.push({ path, digest: digest === '-' ? null : digest });
  }
  return done;
}

/** The list with what the journal says was done since. */
export function withJournal(manifest: Manifest, done: readonly Done[]): Manifest {
  const files = new Map(Object.entries(manifest.files));
  const unsure = new Map(Object.entries(manifest.unsure));
  const leaving = new Set(manifest.leaving);
  for (const { path, digest } of done) {
    unsure.delete(path);
    leaving.delete(path);
    if (digest === null) files.delete(path);
    else files.set(path, digest);
  }
  return {
    ...manifest,
    files: Object.fromEntries(files),
    unsure: Object.fromEntries(unsure),
    leaving: [...leaving],
  };
}
