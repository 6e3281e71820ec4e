/** One index for each language, in a folder of its own: who searches in one fetches nothing of the other. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';
import { brotliCompressSync, brotliDecompressSync } from 'node:zlib';
import { minify } from 'vite';
import { LANGS, type Lang } from '#words/lang.ts';
import { address } from '../../site/addresses.ts';
import type { FindRecord } from '../findRecord.ts';
import { figuresOf, FIGURES } from '../figures.ts';
import { addressWith } from '../hit.ts';
import { listName, listsOf } from '../lists.ts';
import { slimFragment } from './fragment.ts';
import { indexedPage } from './indexedPage.ts';
import { recordOf } from './recordOf.ts';

/** Where the indexes lie in the site. */
export const SEARCH_FOLDER = 'pagefind';
/** Pagefind's own look, and its code for a thread of its own and for other languages, which the shop doesn't use. */
const UNUSED = /^pagefind-(ui|modular-ui|component-ui|highlight|worker)\.|^wasm\.(?!unknown)/;
/** Words are indexed by their stems, as the shop's own search makes them; so Pagefind needs no language's rules. */
const PLAIN = { forceLanguage: 'unknown' };

/** What reads queries: the script that every search fetches (client/reader.ts). */
const READER = /^reader\.[\w-]+\.js$/;

const namesIn = (folder: string): string[] => (existsSync(folder) ? readdirSync(folder) : []);

type Entry = { readonly url: string; readonly record: FindRecord };

/**
 * @param site folder of the built pages
 * @returns how many pages were indexed
 * @throws Error with Pagefind's own words where an index can't be made
 */
export async function indexSite(site: string): Promise<number> {
  let pages = 0;
  for (const lang of LANGS) {
    const entries = entriesOf(site, lang);
    const folder = join(site, SEARCH_FOLDER, lang);
    await writeIndex(folder, entries);
    for (const file of [join(folder, 'pagefind.js'), join(site, address(lang, 'find'), 'words.json')])
      compressAhead(file);
    pages += entries.length;
  }
  await close();
  for (const name of namesIn(join(site, '_astro')).filter((one) => READER.test(one)))
    compressAhead(join(site, '_astro', name));
  return pages;
}

/** Puts beside a file what a host may send in its place: tighter than a host does it for each answer, where that is a tenth of what a search fetches. */
function compressAhead(file: string): void {
  if (!existsSync(file)) return;
  const [bytes, packed] = [readFileSync(file), `${file}.br`];
  // Taken over from an earlier release, and what is in it is still the same.
  if (existsSync(packed) && brotliDecompressSync(readFileSync(packed)).equals(bytes)) return;
  // Not written over: it may be the very file of an earlier release.
  rmSync(packed, { force: true });
  writeFileSync(packed, brotliCompressSync(bytes));
}

/** The newest first: in this order the index answers who asks for no other. */
function entriesOf(site: string, lang: Lang): Entry[] {
  const folder = address(lang, 'pieces');
  const found = readdirSync(join(site, folder), { withFileTypes: true }).flatMap((item): Entry[] => {
    if (!item.isDirectory()) return [];
    const record = recordOf(readFileSync(join(site, folder, item.name, 'index.html'), 'utf8'));
    return record === null ? [] : [{ url: address(lang, 'pieces', item.name), record }];
  });
  return found.sort(
    (one, other) => other.record.made.localeCompare(one.record.made) || one.url.localeCompare(other.url),
  );
}

/**
 * Writes what goes by the pieces' places in the index. A page that is open while the site is made anew
 * goes on with what belongs to the index that it has: so it lies in a folder named by its content.
 * @returns path of that, below the index's
 */
function writePlaced(folder: string, entries: readonly Entry[]): string {
  const records = entries.map(({ record }) => record);
  const lists = listsOf(records.map(({ filters }) => filters));
  const files = [
    [FIGURES, JSON.stringify(figuresOf(records))] as const,
    ...lists.map((list, file) => [listName(file), JSON.stringify(list)] as const),
  ];
  const hash = createHash('sha256').update(JSON.stringify(entries.map(({ url }) => url)));
  for (const [, text] of files) hash.update(text);
  const placed = `lists/${hash.digest('hex').slice(0, 12)}`;
  mkdirSync(join(folder, placed), { recursive: true });
  for (const [name, text] of files) writeFileSync(join(folder, placed, name), text);
  return placed;
}

async function writeIndex(folder: string, entries: readonly Entry[]): Promise<void> {
  const { index, errors } = await createIndex(PLAIN);
  if (index === undefined) throw new Error(errors.join('; '));
  const problems: string[] = [];
  // One after the other: a page's number is its place among those added.
  for (const { url, record } of entries) {
    const added = await index.addHTMLFile({ url: addressWith(url, record), content: indexedPage(record) });
    problems.push(...added.errors);
  }
  problems.push(...(await index.writeFiles({ outputPath: folder })).errors);
  if (problems.length > 0) throw new Error(problems.join('; '));
  const fragments = join(folder, 'fragment');
  for (const name of readdirSync(fragments)) {
    const file = join(fragments, name);
    writeFileSync(file, slimFragment(readFileSync(file)));
  }
  for (const name of readdirSync(folder).filter((one) => UNUSED.test(one))) rmSync(join(folder, name));
  const script = join(folder, 'pagefind.js');
  const { code } = await minify(script, readFileSync(script, 'utf8'), { module: true });
  writeFileSync(script, `${code}export const placed="${writePlaced(folder, entries)}";`);
}
