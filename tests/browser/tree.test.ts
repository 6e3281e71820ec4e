/** What a screen reader is given of every kind of page, and the whole road to an order by keys alone. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { KINDS, openShop, visit, type Shop } from './shop.ts';

let shop: Shop;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());

/** The accessibility tree as text, one node a line (Playwright's ARIA snapshot). */
const tree = (page: Page, within = 'body'): Promise<string> => page.locator(within).ariaSnapshot();

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
  test('everything has a name, and headings go down one step at a time from the one at the top', async () => {
    const { page } = await visit(shop, path);
    await page.waitForLoadState('networkidle');
    const snapshot = await tree(page);
    // A table inside a named region has its region's name.
    expect(nameless(snapshot).filter((line) => !/- table/.test(line))).toEqual([]);
    for (const landmark of ['banner', 'main', 'contentinfo'])
      expect(snapshot).toMatch(new RegExp(`^- ${landmark}`, 'm'));
    const found = levels(snapshot);
    expect(found[0]).toBe(1);
    expect(found.slice(1).every((level, at) => level - (found[at] ?? 0) <= 1)).toBe(true);
    await page.context().close();
  });
});

/** The accessible name of what has the focus, by role and name as the tree has them. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement)) return '';
    const labelled =
      at instanceof HTMLInputElement ? [...(at.labels ?? [])].map((one) => one.innerText).join(' ') : '';
    return (at.getAttribute('aria-label') ?? labelled) || at.innerText;
  });

/** Goes on by Tab until the wanted thing has the focus. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let stops = 0; stops < 80; stops += 1) {
    await page.keyboard.press('Tab');
    if (name.test(await focused(page))) return;
  }
  throw new Error(`expected to come to ${name} by Tab, stopped at ${await focused(page)}`);
}

test('size, sit, hand and order by keys alone, each step in the tree', async () => {
  const { page } = await visit(shop, '/pieces/banked-fire/');
  const posted: string[] = [];
  await page.context().route('**/desk/orders', async (route) => {
    const { number } = route.request().postDataJSON() as { number: string };
    posted.push(number);
    await route.fulfill({
      status: 201,
      json: { number, receivedAt: '2026-11-25T18:41:00Z', checked: 'same' },
    });
  });
  await page.waitForFunction(() => document.querySelector('astro-island')?.hasAttribute('ssr') === false);
  await tabTo(page, /^Round your wrist$/);
  await page.keyboard.type('6 1/2');
  await tabTo(page, /^Easy$/);
  await page.keyboard.press('ArrowRight');
  await tabTo(page, /^Right hand$/);
  await page.keyboard.press('ArrowLeft');
  await page.getByRole('heading', { name: 'What you would get' }).waitFor();
  const sized = await tree(page, '#size');
  for (const line of [
    /textbox "Round your wrist"/,
    /group "How should it sit\?"/,
    /radio "Loose" \[checked\]/,
    /group "Which hand works the clasp\?"/,
    /radio "Left hand" \[checked\]/,
    /heading "What you would get" \[level=3\]/,
    /img "Banked Fire at your size/,
  ])
    expect(sized).toMatch(line);
  // What has changed is said once she has stopped.
  await expect.poll(() => tree(page, '#size')).toMatch(/- status: ?.*\S/);

  await tabTo(page, /^Order this piece$/);
  await page.keyboard.press('Enter');
  await page.getByLabel('Your name').waitFor();
  await tabTo(page, /^Your name/);
  await page.keyboard.type('Iris Moor');
  await tabTo(page, /^Your e-mail address/);
  await page.keyboard.type('iris@example.org');
  await tabTo(page, /^Send the order$/);
  await page.keyboard.press('Enter');
  await page.getByText('The maker has it').waitFor();
  expect(posted.length).toBe(1);
  expect(await tree(page, '#size')).toMatch(new RegExp(`heading ".*${posted[0]}`));
  await page.context().close();
});
