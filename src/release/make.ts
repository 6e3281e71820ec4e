/**
 * Makes a release of the content as it lies now and puts it in the place of the
 * one that is served: whole, or not at all.
 * The working folder is the project's own.
 */
import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Promised } from '#catalogue/model/shelf.ts';
import type { Problem } from '#catalogue/read/problem.ts';
import { syncFolder } from '#catalogue/released/durable.ts';
import { currentId, pointTo, releasesFolder } from '#catalogue/released/place.ts';
import { LANGS } from '#words/lang.ts';
import type { Step } from '#words/publishing.ts';
import { MADE_BY } from '#ui/pictures/drawnKeys.ts';
import { indexSite } from '#ui/search/index/indexSite.ts';
import { contentFolder } from '#ui/site/contentFolder.ts';
import { codeNow } from './code.ts';
import { markOfContent, readContent, writeCatalogue, type Content } from './content.ts';
import { PARTS } from './files.ts';
import { isWhole, readRecord, writeRecord, type Marks } from './record.ts';
import { renderAgain } from './renderAgain.ts';
import { sweepOld, sweepUnfinished } from './sweep.ts';
import { forgetTakenBack, wasTakenBack } from './takeBack.ts';
import { buildWhole } from './wholeBuild.ts';

/** `whole`: build all code too, even where nothing changed. `evenTakenBack`: also content that was taken back. */
export type Wish = { readonly whole: boolean; readonly evenTakenBack: boolean };

export type Told = {
  readonly step: (step: Step) => void;
  /** Of pieces whose pages are made. */
  readonly pieces: (done: number, of: number) => void;
  /** Pages couldn't be made by what was kept, and why; everything is built. */
  readonly slower: (error: unknown) => void;
};

export type Outcome =
  | { readonly outcome: 'same'; readonly since: string }
  | {
      readonly outcome: 'made';
      readonly id: string;
      /** Remarks on the content that stop nothing. */
      readonly notes: readonly Problem[];
    };

/** A name that sorts by time: `20260412-083015-123`. */
const idAt = (at: Date): string => at.toISOString().replace(/[-:Z]/g, '').replace('T', '-').replace('.', '-');

/**
 * @param promised pieces that lay finished and have been ordered since
 * @throws ContentError where the content has mistakes; Error with what the build said, where it failed
 */
export async function makeRelease(promised: readonly Promised[], wish: Wish, told: Told): Promise<Outcome> {
  const folder = releasesFolder();
  mkdirSync(folder, { recursive: true });
  sweepUnfinished(folder);
  told.step('reading');
  // Before it is read: what changes meanwhile must not pass for what was read.
  const marks: Marks = { code: codeNow(), content: markOfContent(contentFolder(), promised) };
  const before = whatIsServed(folder);
  if (before !== null && !wish.whole && isSame(folder, before.record, marks, wish)) {
    return { outcome: 'same', since: before.record.madeAt };
  }
  process.env[MADE_BY] = marks.code;
  const content = readContent(contentFolder(), promised, marks.code);
  const madeAt = new Date();
  const id = idAt(madeAt);
  const making = join(folder, `${id}.making`);
  try {
    const kept = before !== null && !wish.whole && before.record.code === marks.code ? before.folder : null;
    await makePages(making, content, kept, told);
    told.step('search');
    await indexSite(join(making, PARTS.client));
    told.step('putting');
    writeRecord(making, {
      ...marks,
      id,
      madeAt: madeAt.toISOString(),
      pieces: content.catalogue.pieces.length,
      photographs: content.photographs,
    });
    renameSync(making, join(folder, id));
    syncFolder(folder);
  } finally {
    rmSync(making, { recursive: true, force: true });
  }
  pointTo(id);
  forgetTakenBack(folder);
  sweepOld(folder);
  return { outcome: 'made', id, notes: content.notes };
}

type Served = { readonly folder: string; readonly record: NonNullable<ReturnType<typeof readRecord>> };

/** The release that is served, where it is whole. */
export function whatIsServed(folder: string): Served | null {
  const id = currentId(folder);
  if (id === null) return null;
  const there = join(folder, id);
  const record = readRecord(there);
  return record !== null && isWhole(there, record) ? { folder: there, record } : null;
}

function isSame(folder: string, record: Marks, marks: Marks, { evenTakenBack }: Wish): boolean {
  if (record.code !== marks.code) return false;
  return record.content === marks.content || (!evenTakenBack && wasTakenBack(folder, marks.content));
}

async function makePages(
  making: string,
  { catalogue }: Content,
  kept: string | null,
  told: Told,
): Promise<void> {
  const made = counting(catalogue, told.pieces);
  const begin = async (): Promise<void> => {
    rmSync(making, { recursive: true, force: true });
    mkdirSync(making, { recursive: true });
    await writeCatalogue(making, catalogue);
  };
  if (kept !== null && existsSync(join(kept, PARTS.render))) {
    try {
      await begin();
      told.step('pages');
      await renderAgain(kept, making, made);
      return;
    } catch (error) {
      told.slower(error);
    }
  }
  await begin();
  told.step('program');
  await buildWhole(making, made);
}

/** Counts pieces by their pages, each in every language. */
function counting({ pieces }: Catalogue, told: (done: number, of: number) => void): (file: string) => void {
  const ids = new Set(pieces.map(({ id }) => id));
  let pages = 0;
  return (file) => {
    const [, id = ''] = /(?:^|\/)pieces\/([^/]+)\/index\.html$/.exec(file) ?? [];
    if (!ids.has(id)) return;
    pages += 1;
    told(Math.min(Math.floor(pages / LANGS.length), ids.size), ids.size);
  };
}
