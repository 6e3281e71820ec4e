/** How the shop stands beside what is written: what a publishing would do, and what the last one did. */
import type { Promised } from '#catalogue/model/shelf.ts';
import type { Problem } from '#catalogue/read/problem.ts';
import { releasesFolder } from '#catalogue/released/place.ts';
import { changesSince, type Changes } from '#release/changes.ts';
import { ContentError, markOfContent, readContent } from '#release/content.ts';
import { whatIsServed } from '#release/make.ts';
import { readProgress, type Progress } from '#release/progress.ts';
import { releaseBefore } from '#release/takeBack.ts';

export type Standing = {
  readonly progress: Progress;
  /** When the served release was made, ISO 8601; null where it can't be read. */
  readonly servedSince: string | null;
  /** When the one before was made, if it can be gone back to. */
  readonly before: string | null;
  /** Mistakes that stop a publishing. */
  readonly problems: readonly Problem[];
  /** Null where there is nothing to compare, or mistakes. */
  readonly changes: Changes | null;
};

/** @param folder of the content */
export function standing(folder: string, promised: readonly Promised[]): Standing {
  const releases = releasesFolder();
  const served = whatIsServed(releases);
  const known = {
    progress: readProgress(releases),
    servedSince: served?.record.madeAt ?? null,
    before: releaseBefore(releases)?.madeAt ?? null,
  };
  try {
    const content = readContent(folder, promised);
    const changes = served === null ? null : changesSince(served.folder, served.record, content);
    return { ...known, problems: [], changes };
  } catch (error) {
    if (!(error instanceof ContentError)) throw error;
    return { ...known, problems: error.problems, changes: null };
  }
}

/** Whether anything was written since the last publishing, without reading it. */
export const isUnpublished = (folder: string, promised: readonly Promised[]): boolean =>
  whatIsServed(releasesFolder())?.record.content !== markOfContent(folder, promised);
