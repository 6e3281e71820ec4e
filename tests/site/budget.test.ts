import { statSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import {
  attributes,
  brotliBytes,
  brotliSize,
  fileAt,
  files,
  inlineScripts,
  pages,
  scriptsOf,
  type Page,
} from './built.ts';

/** Bytes of script by brotli that a page may ask for before anyone touches it. */
const WITH_ISLAND = 23.2 * 1024;
/** What of it may run by then: the island sleeps until somebody turns to it. */
const ASLEEP = 4 * 1024;
/** What it may fetch in all while she sizes, draws and orders; only what she opens is fetched. */
const EVER = 77.6 * 1024;
const WITHOUT_ISLAND = 4 * 1024;
/** The search page before a search: form, address and what fetches the rest. */
const FIND = 7.25 * 1024;

const inline = (page: Page): number =>
  inlineScripts(page).reduce((sum, code) => sum + brotliCompressSync(code).length, 0);
const scriptBytes = (page: Page): number => brotliBytes(scriptsOf(page)) + inline(page);

const has = (page: Page): boolean => page.html.includes('<astro-island');
const isFind = ({ path }: Page): boolean => /^(\/de)?\/find\/$/.test(path);
const isSlip = ({ path }: Page): boolean => /^(\/de)?\/slip\/$/.test(path);

describe('script bytes', () => {
  test('pages with the island stay within 23.2 KB before anything is opened, and run less than 4', () => {
    const islands = pages.filter(has).filter((page) => !isSlip(page));
    expect(islands.length).toBeGreaterThan(20);
    for (const { address, html } of islands)
      expect(attributes(html, 'astro-island', 'client'), address).toEqual(['turn']);
    for (const page of islands) {
      expect(scriptBytes(page), page.address).toBeLessThanOrEqual(WITH_ISLAND);
      const own = attributes(page.html, 'script', 'src').filter((path) => path.startsWith('/'));
      expect(brotliBytes(own) + inline(page), page.address).toBeLessThanOrEqual(ASLEEP);
    }
  });

  test('pages with the island stay within their limit whatever is opened', () => {
    for (const page of pages.filter(has).filter((one) => !isSlip(one))) {
      const scripts = scriptsOf(page);
      const ever = brotliBytes(scripts, 'ever');
      expect(ever, page.address).toBeGreaterThan(brotliBytes(scripts));
      expect(ever + inline(page), page.address).toBeLessThanOrEqual(EVER);
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
