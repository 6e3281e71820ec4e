/** The search index as files: every piece is in it once for each language, and leads to its page. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readFragment } from '#ui/search/index/fragment.ts';
import { LANGS } from '#words/lang.ts';
import { catalogue, fileAt, files, onHost, pageAt } from './built.ts';

/** Address of a piece as its fragment has it: within the shop, for Pagefind puts the folder before it. */
const addressIn = (file: string): string => readFragment(readFileSync(fileAt(file))).url.split('#')[0] ?? '';

test.each(LANGS)('the index in %s names the page of every piece once', (lang) => {
  const folder = onHost(`/pagefind/${lang}/fragment/`);
  const addresses = files.filter((file) => file.startsWith(folder)).map(addressIn);
  expect(new Set(addresses).size).toBe(catalogue.pieces.length);
  expect(addresses).toHaveLength(catalogue.pieces.length);
  for (const address of addresses) {
    expect(pageAt(onHost(address))?.html, address).toContain(`<html lang="${lang}"`);
  }
});
