/** The buyer's road in Firefox, where it is installed: from the front page by the search to the slip, with nothing in the console. */
import type { Page } from 'puppeteer-core';
import { expect, inject, onTestFinished, test } from 'vitest';
import { firefoxPath, launchFirefox, resize } from '../support/firefox.ts';

const shop = inject('shop');

/** Writes into a field as a buyer does: what stood there goes. */
async function write(page: Page, field: string, text: string): Promise<void> {
  const input = await page.waitForSelector(field, { visible: true });
  await input?.click({ count: 3 });
  await input?.type(text);
}

/** Clicks what reads so. */
async function press(page: Page, within: string, text: string): Promise<void> {
  const target = await page.waitForSelector(`${within} ::-p-text(${text})`, { visible: true });
  await target?.click();
}

const wide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

test.skipIf(firefoxPath === undefined)(
  'in Firefox a bracelet is found, sized, ordered, and its slip kept (left out where Firefox isn’t installed)',
  async () => {
    const firefox = await launchFirefox(firefoxPath ?? '');
    onTestFinished(() => firefox.close());
    const page = await firefox.newPage();
    page.setDefaultTimeout(60_000);
    await resize(page, 360, 740);
    const complaints: string[] = [];
    page.on('console', (message) => complaints.push(`${message.type()}: ${message.text()}`));
    page.on('pageerror', (error) => complaints.push(String(error)));

    await page.goto(`${shop}/`);
    expect(await wide(page)).toBeLessThanOrEqual(0);
    const finder = await page.waitForSelector('a[href$="/find/"]');
    await Promise.all([page.waitForNavigation(), finder?.click()]);
    await write(page, '#find-words', 'banked');
    const hit = await page.waitForSelector('#find-results a[href$="/pieces/banked-fire/"]', {
      visible: true,
    });
    expect(await wide(page)).toBeLessThanOrEqual(0);
    await Promise.all([page.waitForNavigation(), hit?.click()]);

    const measure = '#sizer-banked-fire-measure';
    await write(page, measure, '165 mm');
    await page.waitForSelector('.sizer ::-p-text(What you would get)');
    // Firefox fills in fields of its own accord at a reload: what it comes to is the same.
    await page.reload();
    await page.waitForSelector('.sizer ::-p-text(What you would get)');
    expect(await page.$eval(measure, (input) => (input as HTMLInputElement).value)).toBe('165 mm');

    await press(page, '.sizer-buy', 'Order this piece');
    await write(page, '#order-name', 'Freda Holm');
    await write(page, '#order-email', 'freda@example.org');
    await press(page, '.sizer-form', 'I collect it');
    expect(await wide(page)).toBeLessThanOrEqual(0);
    await press(page, '.sizer-form', 'Send the order');
    await page.waitForSelector('.sizer-entry ::-p-text(The maker has it)');
    const slip = await page.waitForSelector('.sizer-entry a[href*="/slip/"]');
    await Promise.all([page.waitForNavigation(), slip?.click()]);
    await page.waitForSelector('.slip ::-p-text(freda@example.org)');
    expect(await wide(page)).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
  },
);
