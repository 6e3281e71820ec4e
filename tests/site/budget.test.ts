import { statSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import {
  attributes,
  brotliBytes,
  brotliSize,
  fetchedOf,
  fileAt,
  files,
  inlineScripts,
  ownScripts,
  pages,
  scriptsOf,
  type Page,
} from './built.ts';

/** Bytes of script by brotli that a page may ask for before anyone touches it. */
const WITH_ISLAND = 18 * 1024;
/** What of it may run by then: the island sleeps until somebody turns to it. */
const ASLEEP = 4 * 1024;
/** What it may have fetched when a size that was written is answered and drawn. */
const SHOWN = 53.5 * 1024;
/** What it may fetch in all while she sizes, draws and orders; only what she opens is fetched. */
const EVER = 75.5 * 1024;
const WITHOUT_ISLAND = 4 * 1024;
/** The search page before a search: form, address and what fetches the rest. */
const FIND = 7.25 * 1024;

const inline = (page: Page): number =>
  inlineScripts(page).reduce((sum, code) => sum + brotliCompressSync(code).length, 0);
const scriptBytes = (page: Page): number => brotliBytes(scriptsOf(page)) + inline(page);

const has = (page: Page): boolean => page.html.includes('<div id="sizer"');
const isFind = ({ path }: Page): boolean => /^(\/de)?\/find\/$/.test(path);
const isSlip = ({ path }: Page): boolean => /^(\/de)?\/slip\/$/.test(path);
/** Built files by the names of what they start from; those of the page's own language, where they end in one. */
const entries = ({ html }: Page, ...names: string[]): string[] => {
  const lang = html.includes('<html lang="de"') ? 'De' : 'En';
  const found = names.map((name) =>
    files.filter((file) => file.includes(`/_astro/${name.replace('*', lang)}.`)),
  );
  return found.map((of) => {
    expect(of.length).toBe(1);
    return of[0] ?? '';
  });
};
const sizeOf = (scripts: Iterable<string>): number =>
  [...scripts].reduce((sum, script) => sum + brotliSize(script), 0);

describe('script bytes', () => {
  const islands = pages.filter(has);

  test('pages with the island stay within 18 KB before anything is opened, and run less than 4', () => {
    expect(islands.length).toBeGreaterThan(20);
    for (const page of islands) {
      expect(scriptBytes(page), page.address).toBeLessThanOrEqual(WITH_ISLAND);
      expect(brotliBytes(ownScripts(page)) + inline(page), page.address).toBeLessThanOrEqual(ASLEEP);
    }
  });

  test('and within 53½ KB until a size is written, answered and drawn', () => {
    for (const page of islands) {
      const shown = [...scriptsOf(page), ...entries(page, 'Sizer*', 'Answer*', 'drawPiece')];
      expect(brotliBytes(shown) + inline(page), page.address).toBeLessThanOrEqual(SHOWN);
    }
  });

  test('and within their limit whatever is opened', () => {
    for (const page of islands) {
      // Once from the page, and all from the form: the page’s own script knows both languages’.
      const ever = fetchedOf(entries(page, 'Sizer*', 'Answer*', 'drawPiece'), 'ever');
      expect(
        [...ever].some((file) => file.includes('/Ordering.')),
        page.address,
      ).toBe(true);
      const all = sizeOf(new Set([...fetchedOf(scriptsOf(page)), ...ever]));
      expect(all + inline(page), page.address).toBeLessThanOrEqual(EVER);
    }
  });

  test('pages without stay within 4 KB', () => {
    const plain = pages.filter((page) => !has(page) && !isFind(page) && !isSlip(page));
    for (const page of plain) expect(scriptBytes(page), page.address).toBeLessThanOrEqual(WITHOUT_ISLAND);
  });

  test('the search page carries no index', () => {
    for (const page of pages.filter(isFind)) {
      expect(scriptBytes(page), page.address).toBeLessThanOrEqual(FIND);
      expect(attributes(page.html, 'script', 'src').join()).not.toContain('pagefind');
    }
  });
});

describe('other bytes', () => {
  test('styles of a page stay within 12 KB by brotli', () => {
    for (const { address, html } of pages) {
      const sheets = (html.match(/<link\b[^>]*rel="stylesheet"[^>]*>/g) ?? []).flatMap((tag) =>
        attributes(tag, 'link', 'href'),
      );
      const bytes = sheets.reduce((sum, path) => sum + brotliSize(path), 0);
      expect(bytes, address).toBeLessThanOrEqual(12 * 1024);
    }
  });

  test('there is one face, and subset: each that comes later lays a page out again', () => {
    const faces = files.filter((file) => file.endsWith('.woff2'));
    expect(faces.length).toBe(1);
    for (const face of faces) expect(statSync(fileAt(face)).size, face).toBeLessThanOrEqual(22 * 1024);
  });
});
