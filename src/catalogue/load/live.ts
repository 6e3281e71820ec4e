/** The catalogue as it lies in the content folder, while pages are developed. */
import { contentMark } from '../read/contentMark.ts';
import type { Whole } from '../model/storedCatalogue.ts';
import { report } from '../read/problem.ts';
import { guidePages } from './guidePages.ts';
import { readCatalogue } from './readCatalogue.ts';

const memory = new Map();
let last: { readonly mark: string; readonly whole: Promise<Whole> } | null = null;

/**
 * Read anew where a file has changed; where there are mistakes, they are said
 * and the last sound state stays until they are mended.
 * @throws Error with all mistakes, where there was no sound state yet
 */
export function liveCatalogue(folder = process.env.CLASPWISE_CONTENT ?? 'content'): Promise<Whole> {
  const mark = contentMark(folder);
  if (last?.mark === mark) return last.whole;
  const { catalogue, problems } = readCatalogue(folder, { memory });
  if (catalogue !== null && problems.length === 0) {
    last = { mark, whole: guidePages(catalogue.guides).then((guides) => ({ ...catalogue, guides })) };
    return last.whole;
  }
  const wrong = `${problems.length} to mend in ${folder}\n\n${report(problems, 'en')}\n`;
  if (last === null) throw new Error(wrong);
  process.stderr.write(wrong);
  last = { ...last, mark };
  return last.whole;
}
