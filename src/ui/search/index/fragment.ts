/**
 * What Pagefind keeps of a page for showing it as a result. Its words stand there for excerpts and all its
 * filters for lists of them; a result of the shop shows neither, and a dozen are fetched at a time.
 */
import { gunzipSync, gzipSync } from 'node:zlib';

/** What Pagefind writes before a file's JSON. */
const MARK = 'pagefind_dcd';

type Fragment = {
  readonly url: string;
  readonly content: string;
  readonly filters: Readonly<Record<string, readonly string[]>>;
};

/** @throws Error where a file isn't as Pagefind writes it */
export function readFragment(file: Uint8Array): Fragment {
  const text = gunzipSync(file).toString();
  if (!text.startsWith(MARK))
    throw new Error(`got "${text.slice(0, 20)}", expected what begins with "${MARK}"`);
  return JSON.parse(text.slice(MARK.length)) as Fragment;
}

/** The same without words and filters. */
export function slimFragment(file: Uint8Array): Uint8Array {
  const slim = { ...readFragment(file), content: '', word_count: 0, filters: {} };
  return gzipSync(MARK + JSON.stringify(slim), { level: 9 });
}
