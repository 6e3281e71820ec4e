import { describe, expect, test } from 'vitest';
import { attributes, catalogue, fetchedOf, pages, scriptsOf } from './built.ts';

const preloads = (html: string): string[] =>
  (html.match(/<link\b[^>]*rel="modulepreload"[^>]*>/g) ?? []).flatMap((tag) =>
    attributes(tag, 'link', 'href'),
  );

/** What an island runs, its own pages' small scripts left out: those are read with the page anyway. */
const ofIslands = (html: string): Set<string> =>
  fetchedOf(['component-url', 'renderer-url'].flatMap((name) => attributes(html, 'astro-island', name)));

describe('an island’s scripts', () => {
  const islands = pages.filter(({ html }) => html.includes('<astro-island'));

  test('are asked for with the page, all of them and no other, each once', () => {
    expect(islands.length).toBeGreaterThan(catalogue.pieces.length);
    for (const { address, html } of islands) {
      const asked = preloads(html);
      expect(asked.length, address).toBeGreaterThan(3);
      expect([...asked].sort(), address).toEqual([...ofIslands(html)].sort());
    }
  });

  test('are asked for nowhere else', () => {
    for (const page of pages.filter((one) => !islands.includes(one))) {
      expect(scriptsOf(page).length, page.address).toBeLessThan(3);
      expect(preloads(page.html), page.address).toEqual([]);
    }
  });
});
