/** Every kind of public page, loaded once: silent, as wide as the screen, named for who can't see it, nothing for axe to find. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindingsInBothSchemes } from './axe.ts';
import { alive, newPage, tooWide, type Watched } from './shop.ts';

/** One page of each kind that the public shop has. */
const KINDS: readonly (readonly [kind: string, path: string])[] = [
  ['front', '/'],
  ['all pieces', '/pieces/'],
  ['necklace', '/pieces/loom-shuttle/'],
  ['bracelet', '/pieces/banked-fire/'],
  ['tutorial', '/pieces/banked-fire/make/'],
  ['German tutorial in a size', '/de/pieces/wash-day/make/480/'],
  ['past pieces', '/past/'],
  ['ways', '/materials/'],
  ['beads', '/beads/'],
  ['one material', '/materials/glass/'],
  ['guides', '/guides/'],
  ['guide', '/guides/measuring/'],
  ['measuring strip', '/measuring-strip/a4/'],
  ['search', '/find/'],
  ['line sheet', '/line-sheet/'],
  ['data', '/data/'],
  ['not there', '/not-there/'],
  ['German piece', '/de/pieces/banked-fire/'],
];

let page: Page;
let complaints: Watched['complaints'];
beforeAll(async () => {
  ({ page, complaints } = await newPage());
});
afterAll(() => page.context().close());

/** Things to press that are lower than a finger needs, links within text and pictures that are covered whole left out. */
function smallTargets(): Promise<string[]> {
  return page.evaluate(() => {
    const excused =
      '.skip, [type=checkbox], [type=radio], p a, td a, th a, dd a, li > a + *, .prose a, .lines a, .work a, .guides a';
    return [...document.querySelectorAll<HTMLElement>('a[href], button, select, input:not([type=hidden])')]
      .filter((element) => element.checkVisibility() && !element.matches(excused))
      .map((element) => ({ text: element.outerHTML.slice(0, 90), box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.height < 43.5 && box.width > 0)
      .map(({ text, box }) => `${Math.round(box.width)} × ${Math.round(box.height)}: ${text}`);
  });
}

/** Nodes that are worked or looked at and say no name. */
const nameless = (snapshot: string): string[] =>
  snapshot
    .split('\n')
    .filter((line) =>
      /^\s*- '?(button|link|textbox|searchbox|radio|checkbox|slider|combobox|img|navigation|region|table)(:|$| \[)/.test(
        line,
      ),
    );

const levels = (snapshot: string): number[] =>
  [...snapshot.matchAll(/- '?heading .*\[level=(\d)\]/g)].map(([, level]) => Number(level));

describe.each(KINDS)('%s', (_, path) => {
  beforeAll(async () => {
    complaints.length = 0;
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(path);
    await alive(page);
  });

  test('silent, one host, no sideways scrolling at 320 px, targets of 44 px', async () => {
    await page.setViewportSize({ width: 320, height: 640 });
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    expect(await smallTargets()).toEqual([]);
    const expected = path === '/not-there/' ? complaints.filter((one) => !one.includes('404')) : complaints;
    expect(expected).toEqual([]);
  });

  test('everything has a name, and headings go down one step at a time from the one at the top', async () => {
    await page.setViewportSize({ width: 1280, height: 720 });
    const snapshot = await page.locator('body').ariaSnapshot();
    // A table inside a named region has its region's name.
    expect(nameless(snapshot).filter((line) => !/- table/.test(line))).toEqual([]);
    for (const landmark of ['banner', 'main', 'contentinfo'])
      expect(snapshot).toMatch(new RegExp(`^- ${landmark}`, 'm'));
    const found = levels(snapshot);
    expect(found[0]).toBe(1);
    expect(found.slice(1).every((level, at) => level - (found[at] ?? 0) <= 1)).toBe(true);
  });

  test('has nothing for axe to find, light and dark', async () => {
    await page.setViewportSize({ width: 1280, height: 720 });
    expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  });

  // WCAG 2.2, 1.4.4 and 1.4.10: the letters twice as large on a small window, and nothing is cut off at its side.
  test('letters twice as large find room at 640 px', async () => {
    await page.setViewportSize({ width: 640, height: 800 });
    await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
  });
});
