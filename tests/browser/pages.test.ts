/** What only a browser shows of a public page: loading, keys, units, paper, languages, no script. */
import { expect, test } from 'vitest';
import { shop, visit } from './shop.ts';

test('nothing on a piece page moves while it loads', async () => {
  const { page } = await visit('about:blank', { viewport: { width: 412, height: 823 } });
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
  await page.goto('/pieces/banked-fire/', { waitUntil: 'networkidle' });
  const sum = await page.evaluate(() => (window as unknown as { moved: { sum: number } }).moved.sum);
  expect(sum).toBeLessThan(0.01);
});

test('the skip link is the first stop of the keyboard and leads to the content', async () => {
  const { page } = await visit('/');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.className)).toBe('skip');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
});

test('the unit changes everywhere at once, and is still there on the next page', async () => {
  const { page } = await visit('/pieces/banked-fire/');
  // What is far from the screen isn't laid out, and has no text that shows until it has been in view for a frame.
  const shown = async (): Promise<string> => {
    const length = page.locator('.facts-list dd:has(.length-in)').first();
    await length.scrollIntoViewIfNeeded();
    await expect.poll(() => length.innerText()).not.toBe('');
    return length.innerText();
  };
  expect(await shown()).toMatch(/\d+[½¼¾⅛⅜⅝⅞]?\s+in\b/);
  await page.locator('[data-set-unit=cm]').click();
  expect(await shown()).toMatch(/[\d.]+\s+cm/);
  expect(await shown()).not.toMatch(/\d[½¼¾⅛⅜⅝⅞]?\s+in\b/);
  await page.goto('/pieces/loom-shuttle/');
  expect(await shown()).toMatch(/[\d.]+\s+cm/);
});

test('without JavaScript a piece can be read, in both units, and ordered by e-mail', async () => {
  const { page } = await visit('/pieces/banked-fire/', { javaScriptEnabled: false });
  const text = await page.locator('main').innerText();
  expect(text).toMatch(/\d+[½¼¾⅛⅜⅝⅞]?\sin[\d.]+\scm/);
  // Picture, name and price stand; what only script can do doesn't.
  for (const stands of ['h1', '.sizer-picture img', '.sizer-price']) {
    expect(await page.locator(stands).first().isVisible(), stands).toBe(true);
  }
  expect(await page.locator('main :is(input, button):visible').count()).toBe(0);
  const link = page.locator('table.sizes a[href^="mailto:"]').first();
  expect(await link.getAttribute('href')).toContain('Banked%20Fire');
  await page.getByText('What posting costs').click();
  expect(await page.getByText(/up to 100.g £3\.20/).isVisible()).toBe(true);
});

test('on paper a piece is what can be read, without what can only be pressed', async () => {
  const { page } = await visit('/pieces/banked-fire/');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('main button:visible, main input:visible, main .button:visible').count()).toBe(0);
  for (const kept of [
    'h1',
    '.sizer-picture img',
    '.facts-list',
    'table.sizes',
    'table.parts',
    '.worn',
    '.caution',
  ]) {
    expect(await page.locator(kept).first().isVisible(), kept).toBe(true);
  }
});

test('the languages lead to one another on the same page', async () => {
  const { page } = await visit('/pieces/banked-fire/');
  await page.locator('.foot a[hreflang=de]').click();
  expect(new URL(page.url()).pathname).toBe('/de/pieces/banked-fire/');
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  await page.locator('.foot a[hreflang=en]').click();
  expect(new URL(page.url()).pathname).toBe('/pieces/banked-fire/');
});

test('every page says that it is UTF-8, found or not, of the shop or of the bench', async () => {
  const paths = [
    '/',
    '/de/find/',
    '/nothing/',
    '/bench/',
    '/bench/week/',
    '/bench/orders/nothing/',
    '/desk/nothing',
  ];
  for (const path of paths) {
    const { headers } = await fetch(shop + path);
    expect([path, headers.get('content-type')]).toEqual([path, 'text/html; charset=utf-8']);
  }
});

test('public pages and files go compressed, the bench does not', async () => {
  const encodingOf = async (path: string): Promise<string | null> => {
    const response = await fetch(shop + path, { headers: { 'accept-encoding': 'br' } });
    expect(response.status).toBe(200);
    return response.headers.get('content-encoding');
  };
  expect(await encodingOf('/')).toBe('br');
  expect(await encodingOf('/pieces/banked-fire/')).toBe('br');
  // What a passphrase may guard tells nothing by its length.
  expect(await encodingOf('/bench/')).toBeNull();
});
