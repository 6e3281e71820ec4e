/** The demo shop's catalogue, or another folder's, where a test needs a sound one. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';

/** Where the demo shop's content lies. */
export const CONTENT = new URL('../../content', import.meta.url).pathname;

/** Reads a whole content folder. Throws, with all that is wrong, where it has mistakes. */
export function catalogueOf(folder = CONTENT): Catalogue {
  const { catalogue, problems } = readCatalogue(folder);
  if (catalogue === null || problems.length > 0) throw new Error(JSON.stringify(problems));
  return catalogue;
}
