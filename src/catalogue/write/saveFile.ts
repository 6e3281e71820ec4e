/** One file of the content folder written so that it is always whole: the old text or the new one. */
import {
  closeSync,
  existsSync,
  fchmodSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, isAbsolute, join } from 'node:path';
import { createHash, randomBytes } from 'node:crypto';

/** Why a file can't be written. `failed`: for another reason, which the disk names. */
export type Unwritable = 'full' | 'read-only' | 'outside' | 'failed';

export type SaveResult =
  | { readonly ok: true; readonly digest: string }
  /** `now`: what the file says instead of what was seen; null where it is gone. */
  | { readonly ok: false; readonly code: 'changed-meanwhile'; readonly now: string | null }
  | { readonly ok: false; readonly code: 'not-writable'; readonly why: Unwritable };

const BYTE_ORDER_MARK = '\ufeff';

/** Names of files that are being written begin so, with a point: nothing of the kind is read as content. */
const UNFINISHED = '.unfinished-';

/** Nobody writes one file for longer; what is older was left by a crash. */
const LEFT_AFTER_MS = 10 * 60_000;

const BY_CODE: Readonly<Record<string, Unwritable>> = {
  ENOSPC: 'full',
  EDQUOT: 'full',
  EACCES: 'read-only',
  EPERM: 'read-only',
  EROFS: 'read-only',
};

/** What tells two texts apart: SHA-256, in hexadecimal. */
export const textDigest = (text: string): string => createHash('sha256').update(text).digest('hex');

/** The steps of a save that a test may let fail. */
export type Disk = {
  readonly write: (handle: number, text: string | Uint8Array) => void;
  readonly rename: (from: string, to: string) => void;
};

const DISK: Disk = { write: (handle, text) => writeFileSync(handle, text), rename: renameSync };

const withoutMark = (text: string): string => (text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text);

/** What a file says, without a mark of the byte order; null where there is none. Throws where it can't be read. */
function textOf(path: string): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}

/** Makes the folder itself remember what was renamed in it. */
function syncFolder(folder: string): void {
  try {
    const handle = openSync(folder, 'r');
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch {
    // Not every system lets a folder be synced; the file itself is.
  }
}

/** The file that a name leads to: through links, so that those stay; null where it lies outside of content. */
function targetOf(folder: string, file: string): string | null {
  if (isAbsolute(file) || file.split(/[/\\]/).some((part) => part === '..' || part === '')) return null;
  const path = join(folder, file);
  return existsSync(path) ? realpathSync(path) : path;
}

function putInPlace(from: string, to: string, isNew: boolean, disk: Disk): void {
  if (isNew) {
    try {
      // Unlike a rename, it never takes the place of a file that came meanwhile.
      linkSync(from, to);
      unlinkSync(from);
      return;
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : '';
      if (code === 'EEXIST') throw error;
      // A disk without links.
    }
  }
  disk.rename(from, to);
}

function writeWhole(target: string, text: string | Uint8Array, isNew: boolean, disk: Disk): void {
  mkdirSync(dirname(target), { recursive: true });
  const unfinished = join(dirname(target), `${UNFINISHED}${randomBytes(6).toString('hex')}`);
  try {
    const handle = openSync(unfinished, 'wx');
    try {
      if (!isNew) fchmodSync(handle, statSync(target).mode & 0o777);
      disk.write(handle, text);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    putInPlace(unfinished, target, isNew, disk);
  } finally {
    rmSync(unfinished, { force: true });
  }
  syncFolder(dirname(target));
}

function whyNot(error: unknown): Unwritable {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return BY_CODE[code] ?? 'failed';
}

/**
 * Writes a file of the content folder, synced; where anything fails, the old text is still whole.
 * @param file path within the folder, with forward slashes
 * @param text the new text; null deletes the file
 * @param seenDigest of the text that was seen; null where there was no file
 * @returns never throws for what the disk does
 */
export function saveFile(
  folder: string,
  file: string,
  text: string | null,
  seenDigest: string | null,
  disk: Disk = DISK,
): SaveResult {
  const target = targetOf(folder, file);
  if (target === null) return { ok: false, code: 'not-writable', why: 'outside' };
  try {
    const lying = textOf(target);
    const now = lying === null ? null : withoutMark(lying);
    if ((now === null ? null : textDigest(now)) !== seenDigest)
      return { ok: false, code: 'changed-meanwhile', now };
    if (text === null) {
      if (now !== null) unlinkSync(join(folder, file));
      syncFolder(dirname(target));
      return { ok: true, digest: textDigest('') };
    }
    const marked = lying?.startsWith(BYTE_ORDER_MARK) === true ? BYTE_ORDER_MARK + text : text;
    writeWhole(target, marked, now === null, disk);
    return { ok: true, digest: textDigest(text) };
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') {
      return { ok: false, code: 'changed-meanwhile', now: textOf(target) };
    }
    return { ok: false, code: 'not-writable', why: whyNot(error) };
  }
}

export type BytesResult =
  | { readonly ok: true; /** False where the same file lay there already. */ readonly isNew: boolean }
  | { readonly ok: false; readonly why: Unwritable };

/**
 * Puts a new file into the content folder, whole and synced: a picture, named by what is in it.
 * @param file path within the folder, with forward slashes; one that is there already is left as it is
 * @returns never throws for what the disk does
 */
export function saveBytes(folder: string, file: string, bytes: Uint8Array): BytesResult {
  const target = targetOf(folder, file);
  if (target === null) return { ok: false, why: 'outside' };
  if (existsSync(target)) return { ok: true, isNew: false };
  try {
    writeWhole(target, bytes, true, DISK);
    return { ok: true, isNew: true };
  } catch (error) {
    return { ok: false, why: whyNot(error) };
  }
}

/** Takes a file away again that `saveBytes` put there and nothing came to name. */
export function removeNew(folder: string, file: string): void {
  const target = targetOf(folder, file);
  if (target !== null) rmSync(target, { force: true });
}

/** Takes away what a crash has left half written. */
export function sweepUnfinished(folder: string, nowMs: number): void {
  try {
    for (const name of readdirSync(folder, { recursive: true }) as string[]) {
      const path = join(folder, name);
      if (!basename(name).startsWith(UNFINISHED)) continue;
      if (nowMs - statSync(path).mtimeMs > LEFT_AFTER_MS) rmSync(path, { force: true });
    }
  } catch {
    // What can't be swept is never read either.
  }
}
