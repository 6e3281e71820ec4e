/** Every kind of public page in a browser: silent, from one host, and as wide as the screen. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { KINDS, openShop, visit, type Shop } from './shop.ts';

let shop: Shop;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());

/** Things to press that are lower than a finger needs, links within text and pictures that are covered whole left out. */
function smallTargets(page: Page): Promise<string[]> {
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

test.each(KINDS)(
  '%s: silent, one host, no sideways scrolling at 320 px, targets of 44 px',
  async (_, path) => {
    const { page, complaints } = await visit(shop, path, { viewport: { width: 320, height: 640 } });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(over).toBeLessThanOrEqual(0);
    expect(await smallTargets(page)).toEqual([]);
    const expected = path.includes('not-there')
      ? complaints.filter((one) => !one.includes('404'))
      : complaints;
    expect(expected).toEqual([]);
    await page.context().close();
  },
);

/** WCAG 2.2, 1.4.4 and 1.4.10: the letters twice as large on a small window, and nothing is cut off at its side. */
test.each(KINDS)('%s: letters twice as large find room at 640 px', async (_, path) => {
  const { page } = await visit(shop, path, { viewport: { width: 640, height: 800 } });
  await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
  const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(over).toBeLessThanOrEqual(0);
  await page.context().close();
});

test('nothing on a piece page moves while it loads', async () => {
  const context = await shop.browser.newContext({ viewport: { width: 412, height: 823 } });
  const page = await context.newPage();
  await page.addInitScript(() => {
    const moved = { sum: 0 };
    Object.assign(window, { moved });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & {
        value: number;
        hadRecentInput: boolean;
      })[]) {
        if (!entry.hadRecentInput) moved.sum += entry.value;
      }
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(`${shop.address}/pieces/banked-fire/`, { waitUntil: 'networkidle' });
  const sum = await page.evaluate(() => (window as unknown as { moved: { sum: number } }).moved.sum);
  expect(sum).toBeLessThan(0.01);
  await context.close();
});

test('the skip link is the first stop of the keyboard and leads to the content', async () => {
  const { page } = await visit(shop, '/');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.className)).toBe('skip');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
  await page.context().close();
});

test('the unit changes everywhere at once, and is still there on the next page', async () => {
  const { page } = await visit(shop, '/pieces/banked-fire/');
  const shown = (): Promise<string> => page.locator('.facts-list dd:has(.length-in)').first().innerText();
  expect(await shown()).toMatch(/\d+[½¼¾⅛⅜⅝⅞]?\s+in\b/);
  await page.locator('[data-set-unit=cm]').click();
  expect(await shown()).toMatch(/[\d.]+\s+cm/);
  expect(await shown()).not.toMatch(/\d[½¼¾⅛⅜⅝⅞]?\s+in\b/);
  await page.goto(`${shop.address}/pieces/loom-shuttle/`);
  expect(await shown()).toMatch(/[\d.]+\s+cm/);
  await page.context().close();
});

test('without JavaScript a piece can be read, in both units, and ordered by e-mail', async () => {
  const { page } = await visit(shop, '/pieces/banked-fire/', { javaScriptEnabled: false });
  const text = await page.locator('main').innerText();
  expect(text).toMatch(/\d+[½¼¾⅛⅜⅝⅞]?\sin[\d.]+\scm/);
  expect(await page.locator('astro-island').isVisible()).toBe(false);
  const link = page.locator('table.sizes a[href^="mailto:"]').first();
  expect(await link.getAttribute('href')).toContain('Banked%20Fire');
  await page.context().close();
});

test('on paper a piece is what can be read, without what can only be pressed', async () => {
  const { page } = await visit(shop, '/pieces/banked-fire/');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('main button:visible, main input:visible, main .button:visible').count()).toBe(0);
  for (const kept of ['h1', '.facts-list', 'table.sizes', 'table.parts', '.worn', '.caution']) {
    expect(await page.locator(kept).first().isVisible(), kept).toBe(true);
  }
  await page.context().close();
});

test('the languages lead to one another on the same page', async () => {
  const { page } = await visit(shop, '/pieces/banked-fire/');
  await page.locator('.foot a[hreflang=de]').click();
  expect(new URL(page.url()).pathname).toBe('/de/pieces/banked-fire/');
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  await page.locator('.foot a[hreflang=en]').click();
  expect(new URL(page.url()).pathname).toBe('/pieces/banked-fire/');
  await page.context().close();
});

test('public pages and files go compressed, the bench does not', async () => {
  const encodingOf = async (path: string): Promise<string | null> => {
    const response = await fetch(shop.address + path, { headers: { 'accept-encoding': 'br' } });
    expect(response.status).toBe(200);
    return response.headers.get('content-encoding');
  };
  expect(await encodingOf('/')).toBe('br');
  expect(await encodingOf('/pieces/banked-fire/')).toBe('br');
  // What a passphrase may guard tells nothing by its length.
  expect(await encodingOf('/bench/')).toBeNull();
});
