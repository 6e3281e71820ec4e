/** The built shop, served as `npm start` serves it, and pages of it in the one Chromium of the run. */
import { chromium, type BrowserContextOptions, type Download, type Page } from 'playwright-core';
import { inject, onTestFinished, vi } from 'vitest';
import { layOutAll } from './layOutAll.ts';

/** Address of the shop, no slash at the end. */
export const shop = inject('shop');

/** Every test file has contexts of its own in it. */
export const browser = await chromium.connect(inject('chromium'));

export type Watched = {
  readonly page: Page;
  /** What the console said, pages threw, failed, and other hosts were asked for: nothing, where all is well. */
  readonly complaints: string[];
};

/** A new device's page that writes down what goes wrong on it; the caller closes its context. */
export async function newPage(options: BrowserContextOptions = {}, base = shop): Promise<Watched> {
  const context = await browser.newContext({ baseURL: base, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => complaints.push(`console ${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(base) && !/^(data|blob):/.test(url)) complaints.push(`other host: ${url}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  return { page, complaints };
}

/** The same for one test, gone to a path. */
export async function visit(
  path: string,
  options: BrowserContextOptions = {},
  base = shop,
): Promise<Watched> {
  const watched = await newPage(options, base);
  onTestFinished(() => watched.page.context().close());
  await watched.page.goto(path);
  return watched;
}

/** Goes to a path and does something there before any script of the page has come, as on a slow line. */
export async function beforeScripts(page: Page, path: string, doing: () => Promise<void>): Promise<void> {
  let done = (): void => undefined;
  const whenDone = new Promise<void>((resolve) => (done = resolve));
  await page.route(/\.js$/, async (route) => {
    await whenDone;
    await route.continue();
  });
  await page.goto(path, { waitUntil: 'commit' });
  await doing().finally(done);
}

/** Turns to the page's form, as a pointer would, again until it is alive: it may not listen yet. */
export async function alive(page: Page): Promise<void> {
  await page.waitForLoadState('load');
  const asleep = async (): Promise<number> => {
    const islands = await page.locator('[data-asleep]').all();
    // One that has come alive meanwhile isn't waited for.
    for (const island of islands)
      await island.dispatchEvent('pointerover', {}, { timeout: 1_000 }).catch(() => null);
    return islands.length;
  };
  await vi.waitUntil(async () => (await asleep()) === 0, { timeout: 30_000, interval: 100 });
}

/** By how many pixels the page is wider than its window: nothing, or less, where all fits. */
export async function tooWide(page: Page): Promise<number> {
  await layOutAll(page);
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

/** Bytes of a finished download. */
export async function bytesOf(download: Download): Promise<Buffer> {
  const chunks = await (await download.createReadStream()).toArray();
  return Buffer.concat(chunks as Buffer[]);
}
