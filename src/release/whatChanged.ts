/** What a publishing would change now, or what is to mend before it. */
import type { Promised } from '#catalogue/model/shelf.ts';
import type { Problem } from '#catalogue/read/problem.ts';
import { releasesFolder } from '#catalogue/released/place.ts';
import { contentFolder } from '#ui/site/contentFolder.ts';
import { changesSince, type Changes } from './changes.ts';
import { codeNow } from './code.ts';
import { ContentError, readContent } from './content.ts';
import { whatIsServed } from './make.ts';

export type Look = {
  /** Mistakes that stop a publishing. */
  readonly problems: readonly Problem[];
  /** Null where there is nothing to compare, or mistakes. */
  readonly changes: Changes | null;
};

/** @param promised pieces that lay finished and have been ordered since */
export function whatChanged(promised: readonly Promised[]): Look {
  const served = whatIsServed(releasesFolder());
  try {
    const content = readContent(contentFolder(), promised, codeNow());
    const changes = served === null ? null : changesSince(served.folder, served.record, content);
    return { problems: [], changes };
  } catch (error) {
    if (!(error instanceof ContentError)) throw error;
    return { problems: error.problems, changes: null };
  }
}
