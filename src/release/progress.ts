/** How far a publishing is: a small file that any window, and the next start, can read. */
import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Problem } from '#catalogue/read/problem.ts';
import type { Step } from '#words/publishing.ts';
import { publisher } from './lock.ts';

/** Times in ISO 8601. */
export type Progress =
  | { readonly state: 'none' }
  | {
      readonly state: 'running';
      readonly since: string;
      readonly step: Step;
      /** Pieces whose pages are made, of all; null where none are counted yet. */
      readonly pieces: { readonly done: number; readonly of: number } | null;
    }
  | {
      readonly state: 'done';
      readonly at: string;
      readonly seconds: number;
      readonly outcome: 'made' | 'same' | 'taken-back';
    }
  | {
      readonly state: 'failed';
      readonly at: string;
      /** Mistakes in the content; none where something else went wrong. */
      readonly problems: readonly Problem[];
      /** What the program said; empty where the content has mistakes. */
      readonly said: string;
    };

const PROGRESS_FILE = 'progress.json';

export function writeProgress(folder: string, progress: Progress): void {
  const file = join(folder, PROGRESS_FILE);
  const fresh = `${file}.${process.pid}`;
  writeFileSync(fresh, JSON.stringify(progress));
  renameSync(fresh, file);
}

/** A publishing that was killed says so: it has written that it runs, and doesn't. */
export function readProgress(folder: string): Progress {
  let progress: Progress;
  try {
    progress = JSON.parse(readFileSync(join(folder, PROGRESS_FILE), 'utf8')) as Progress;
  } catch {
    return { state: 'none' };
  }
  if (progress.state !== 'running' || publisher(folder) !== null) return progress;
  return { state: 'failed', at: progress.since, problems: [], said: '' };
}
