/** What a release is made of: the content folder as it lies now, checked. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { guidePages } from '#catalogue/load/guidePages.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { asPromised, type Promised } from '#catalogue/model/shelf.ts';
import { storeCatalogue } from '#catalogue/model/storedCatalogue.ts';
import { contentMark } from '#catalogue/read/contentMark.ts';
import type { Problem } from '#catalogue/read/problem.ts';
import { openSaid } from '#catalogue/read/said.ts';
import { CATALOGUE_FILE } from '#catalogue/released/place.ts';
import { digest } from '#ui/site/digest.ts';

/** Content with mistakes in it: nothing can be made of it. */
export class ContentError extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(`${problems.length} to mend`);
    this.problems = problems;
  }
}

export type Content = {
  readonly catalogue: Catalogue;
  /** Marks of photographs, by path within the folder. */
  readonly photographs: Readonly<Record<string, string>>;
  /** Remarks that stop nothing. */
  readonly notes: readonly Problem[];
};

/** The mark of content, and of what the order book says of it. */
export const markOfContent = (folder: string, promised: readonly Promised[]): string =>
  digest(16, [contentMark(folder), JSON.stringify(promised)]);

/** Outside node_modules, as all that is kept between builds. */
const SAID = join('.cache', 'said');

/**
 * Reads the content folder. The working folder is the project's own.
 * @param promised pieces that lay finished and have been ordered since
 * @param program its mark; what texts say is kept for it, and read from there
 * @throws ContentError with every mistake at once
 */
export function readContent(folder: string, promised: readonly Promised[], program: string): Content {
  const said = openSaid(SAID, program);
  const { catalogue, problems, notes } = readCatalogue(folder, { said });
  said.keep();
  if (catalogue === null || problems.length > 0) throw new ContentError(problems);
  const pieces = catalogue.pieces.map((piece) => asPromised(piece, promised));
  return { catalogue: { ...catalogue, pieces }, photographs: photographsOf(folder, catalogue), notes };
}

function photographsOf(folder: string, { pieces }: Catalogue): Readonly<Record<string, string>> {
  const files = pieces.flatMap(({ pictures }) => pictures.map(({ file }) => file));
  return Object.fromEntries(files.map((file) => [file, digest(16, [readFileSync(join(folder, file))])]));
}

/** Writes the catalogue into the folder of a release. */
export async function writeCatalogue(folder: string, catalogue: Catalogue): Promise<void> {
  const stored = storeCatalogue(catalogue, await guidePages(catalogue.guides));
  writeFileSync(join(folder, CATALOGUE_FILE), JSON.stringify(stored));
}
