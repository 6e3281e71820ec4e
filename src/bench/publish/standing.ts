/** How the shop stands beside what is written: what a publishing would do, and what the last one did. */
import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import type { Promised } from '#catalogue/model/shelf.ts';
import { currentId, currentRelease, READ_FROM, releasesFolder } from '#catalogue/released/place.ts';
import { markOfContent } from '#release/content.ts';
import { readProgress, type Progress } from '#release/progress.ts';
import { readRecord } from '#release/record.ts';
import { releaseBefore } from '#release/takeBack.ts';
import type { Look } from '#release/whatChanged.ts';

export type Standing = Look & {
  readonly progress: Progress;
  /** When the served release was made, ISO 8601; null where it can't be read. */
  readonly servedSince: string | null;
  /** When the one before was made, if it can be gone back to. */
  readonly before: string | null;
};

/** From the project's folder, in which the server runs. */
const COMMAND = 'src/command/whatChanged.ts';
/** Room for what a thousand pieces may say, bytes. */
const MOST_BYTES = 64 * 1024 * 1024;

/** The last look, kept while neither content nor shop is another. */
let last: { readonly of: string; readonly look: Promise<Look> } | null = null;

async function lookNow(): Promise<Look> {
  const { [READ_FROM]: _served, ...env } = process.env;
  const { stdout } = await promisify(execFile)(process.execPath, [COMMAND], { env, maxBuffer: MOST_BYTES });
  return JSON.parse(stdout) as Look;
}

function look(of: string): Promise<Look> {
  if (last?.of === of) return last.look;
  const mine = { of, look: lookNow() };
  last = mine;
  // What failed is tried again.
  mine.look.catch(() => {
    if (last === mine) last = null;
  });
  return mine.look;
}

const served = () => {
  const release = currentRelease();
  return release === null ? null : readRecord(release);
};

/** @param folder of the content */
export async function standing(folder: string, promised: readonly Promised[]): Promise<Standing> {
  const releases = releasesFolder();
  const progress = readProgress(releases);
  const known = {
    progress,
    servedSince: served()?.madeAt ?? null,
    before: releaseBefore(releases)?.madeAt ?? null,
  };
  // While one runs, the page shows how far it is and nothing else.
  if (progress.state === 'running') return { ...known, problems: [], changes: null };
  return { ...known, ...(await look(`${markOfContent(folder, promised)} ${currentId(releases)}`)) };
}

/** Whether anything was written since the last publishing, without reading it. */
export const isUnpublished = (folder: string, promised: readonly Promised[]): boolean =>
  served()?.content !== markOfContent(folder, promised);
