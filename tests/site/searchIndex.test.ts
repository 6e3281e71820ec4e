/** The search index as files: every piece is in it once for each language, and leads to its page. */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { LANGS } from '#words/lang.ts';
import { catalogue, fileAt, files, onHost, pageAt } from './built.ts';

/** What Pagefind writes before a fragment's JSON. */
const MARK = 'pagefind_dcd';

/** Address of a piece as its fragment has it: within the shop, for Pagefind puts the folder before it. */
function addressIn(file: string): string {
  const text = gunzipSync(readFileSync(fileAt(file))).toString();
  const { url } = JSON.parse(text.slice(text.indexOf(MARK) + MARK.length)) as { readonly url: string };
  return url.split('#')[0] ?? '';
}

test.each(LANGS)('the index in %s names the page of every piece once', (lang) => {
  const folder = onHost(`/pagefind/${lang}/fragment/`);
  const addresses = files.filter((file) => file.startsWith(folder)).map(addressIn);
  expect(new Set(addresses).size).toBe(catalogue.pieces.length);
  expect(addresses).toHaveLength(catalogue.pieces.length);
  for (const address of addresses) {
    expect(pageAt(onHost(address))?.html, address).toContain(`<html lang="${lang}"`);
  }
});
