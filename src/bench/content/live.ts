/** The content as it lies there now, read again when a file changes. */
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readCatalogue, type Reading } from '#catalogue/load/readCatalogue.ts';
import type { Overlay } from '#catalogue/read/folder.ts';
import type { Problem } from '#catalogue/read/problem.ts';

export type Live = {
  /** Everything, and all that is wrong with it. */
  readonly reading: () => Reading;
  /** The same with texts that aren't saved yet in place of their files. */
  readonly readingWith: (overlay: Overlay) => Reading;
};

/** Changes whenever a file does, its pictures too. */
function stateOf(folder: string): string {
  try {
    return (readdirSync(folder, { recursive: true }) as string[])
      .map((name) => {
        const { mtimeMs, size, ino } = statSync(join(folder, name), { throwIfNoEntry: false }) ?? {};
        return `${name} ${mtimeMs} ${size} ${ino}`;
      })
      .join('\n');
  } catch {
    return '';
  }
}

/** @param folder absolute, or from the working folder */
export function liveContent(folder: string): Live {
  const memory = new Map();
  let last: { readonly state: string; readonly reading: Reading } | null = null;
  return {
    reading: () => {
      const state = stateOf(folder);
      if (last?.state !== state) last = { state, reading: readCatalogue(folder, { memory }) };
      return last.reading;
    },
    readingWith: (overlay) => readCatalogue(folder, { overlay, memory }),
  };
}

/** A problem wherever its line has moved to. */
const nameOf = ({ file, field, error }: Problem): string => JSON.stringify([file, field, error]);

/** What would be wrong with unsaved texts that isn't wrong already: what was there before stops no other edit. */
export function newProblems(live: Live, overlay: Overlay): readonly Problem[] {
  const before = new Set(live.reading().problems.map(nameOf));
  return live.readingWith(overlay).problems.filter((one) => !before.has(nameOf(one)));
}
