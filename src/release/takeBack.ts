/** Back to an earlier release: what was published stays written, and isn't shown. */
import { appendFileSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { currentId, pointTo } from '#catalogue/released/place.ts';
import { isWhole, readRecord, type ReleaseRecord } from './record.ts';

const TAKEN_BACK_FILE = 'taken-back';

/** Whether this content was published and taken back: a start doesn't publish it again by itself. */
export function wasTakenBack(folder: string, content: string): boolean {
  try {
    return readFileSync(join(folder, TAKEN_BACK_FILE), 'utf8').split('\n').includes(content);
  } catch {
    return false;
  }
}

export function forgetTakenBack(folder: string): void {
  rmSync(join(folder, TAKEN_BACK_FILE), { force: true });
}

/** All releases, newest first. */
export function releases(folder: string): ReleaseRecord[] {
  let names: string[];
  try {
    names = readdirSync(folder);
  } catch {
    return [];
  }
  const records = names.map((name) => readRecord(join(folder, name)));
  return records.filter((record) => record !== null).sort((one, other) => (one.id < other.id ? 1 : -1));
}

/** The release before the one that is served; null where there is none that is whole, or none made by the same code. */
export function releaseBefore(folder: string): ReleaseRecord | null {
  const all = releases(folder);
  const now = currentId(folder);
  const served = all.find(({ id }) => id === now);
  if (served === undefined) return null;
  const earlier = all.filter(({ id, code }) => id < served.id && code === served.code);
  return earlier.find((record) => isWhole(join(folder, record.id), record)) ?? null;
}

/**
 * Serves the release before again. Only whoever has the lock may.
 * @returns the release that is served now; null where there was none to go back to
 */
export function takeBack(folder: string): ReleaseRecord | null {
  const now = currentId(folder);
  const before = releaseBefore(folder);
  const served = now === null ? null : readRecord(join(folder, now));
  if (before === null || served === null) return null;
  appendFileSync(join(folder, TAKEN_BACK_FILE), `${served.content}\n`);
  pointTo(before.id, folder);
  return before;
}
