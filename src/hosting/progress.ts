/** How far the way to the host is: a small file that any window can read. */
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { publisher } from '#release/lock.ts';
import type { HostStep, HostTrouble } from '#words/hosting.ts';
import { FILE_MODE, FOLDER_MODE } from './place.ts';
import type { HostKey } from './settings.ts';

/** What she has to say before it goes on. */
export type HostQuestion =
  /** First contact: is this her host? */
  | { readonly about: 'host-key'; readonly key: HostKey }
  /** A folder with files in it that did not come from here. `names`: some of them, of `count`. */
  | {
      readonly about: 'folder';
      readonly folder: string;
      readonly names: readonly string[];
      readonly count: number;
    };

export type Files = { readonly done: number; readonly of: number };

/** Times in ISO 8601. */
export type HostProgress =
  | { readonly state: 'none' }
  | {
      readonly state: 'running';
      readonly since: string;
      readonly step: HostStep;
      /** Null where none are counted yet. */
      readonly files: Files | null;
    }
  | { readonly state: 'asking'; readonly at: string; readonly question: HostQuestion }
  | {
      readonly state: 'done';
      readonly at: string;
      readonly seconds: number;
      /** When that was published which lies there now. */
      readonly publishedAt: string;
      readonly sent: number;
      readonly removed: number;
    }
  | { readonly state: 'failed'; readonly at: string; readonly trouble: HostTrouble };

const PROGRESS_FILE = 'progress.json';

export function writeHostProgress(folder: string, progress: HostProgress): void {
  mkdirSync(folder, { recursive: true, mode: FOLDER_MODE });
  const file = join(folder, PROGRESS_FILE);
  const fresh = `${file}.${process.pid}`;
  writeFileSync(fresh, JSON.stringify(progress), { mode: FILE_MODE });
  renameSync(fresh, file);
}

/** One that was killed says so: it has written that it runs, and doesn't. */
export function readHostProgress(folder: string): HostProgress {
  let progress: HostProgress;
  try {
    progress = JSON.parse(readFileSync(join(folder, PROGRESS_FILE), 'utf8')) as HostProgress;
  } catch {
    return { state: 'none' };
  }
  if (progress.state !== 'running' || publisher(folder) !== null) return progress;
  return { state: 'failed', at: progress.since, trouble: { code: 'stopped' } };
}

/** What was said of a host that is another now. */
export const forgetProgress = (folder: string): void => rmSync(join(folder, PROGRESS_FILE), { force: true });
