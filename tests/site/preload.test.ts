import { describe, expect, test } from 'vitest';
import {
  attributes,
  catalogue,
  fetchedOf,
  files,
  signFetchesOf,
  pages,
  preloadsOf,
  scriptsOf,
} from './built.ts';

/** Files that a page's island starts from, in the page's language. */
const entriesOf = ({ html }: (typeof pages)[number]): string[] => {
  const german = html.includes('<html lang="de"');
  const name = html.includes('id="slip"') ? 'Slip' : 'Sizer';
  return files.filter((file) => file.includes(`/_astro/${name}${german ? 'De' : 'En'}.`));
};

describe('an island’s scripts', () => {
  const islands = pages.filter(({ html }) => /<div id="(?:sizer|slip)"/.test(html));

  test('are fetched before they are wanted, all of them and no other, each once: the slip’s at once, a sleeping form’s at the first sign of somebody', () => {
    expect(islands.length).toBeGreaterThan(catalogue.pieces.length);
    for (const page of islands) {
      const sleeps = page.html.includes('<div id="sizer"');
      const asked = sleeps ? signFetchesOf(page) : preloadsOf(page);
      expect([...preloadsOf(page), ...signFetchesOf(page)].length, page.address).toBe(asked.length);
      const entries = entriesOf(page);
      expect(entries.length, page.address).toBe(1);
      expect(asked.length, page.address).toBeGreaterThan(3);
      expect([...asked].sort(), page.address).toEqual([...fetchedOf(entries)].sort());
    }
  });

  test('are asked for nowhere else', () => {
    for (const page of pages.filter((one) => !islands.includes(one))) {
      expect(scriptsOf(page).length, page.address).toBeLessThan(3);
    }
  });

  test('wait in the page without running: what an island comes alive with is data', () => {
    for (const { address, html } of islands) {
      const types = attributes(html, 'script', 'type');
      expect(
        types.every((type) => type === 'module' || type.endsWith('json')),
        address,
      ).toBe(true);
    }
  });
});
