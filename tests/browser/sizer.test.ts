/** The sizing island in a browser, against the built shop on a plain static host; the desk is played by the test. */
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { startStaticHost, type StaticHost } from '../support/staticHost.ts';
import { axeFindings } from './axe.ts';
import { browser, bytesOf, tooWide } from './shop.ts';

const BRACELET = '/pieces/banked-fire/';
const NECKLACE = '/pieces/loom-shuttle/';

let host: StaticHost;
beforeAll(async () => {
  host = await startStaticHost('dist/client');
});
afterAll(() => host.stop());

type Desk = { mode: 'takes' | 'trouble' | 'refuses'; readonly numbers: string[] };

/** A page of the shop, and a desk that does as it is told. */
async function open(path: string, options: BrowserContextOptions = {}): Promise<{ page: Page; desk: Desk }> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, ...options });
  onTestFinished(() => context.close());
  const page = await context.newPage();
  const desk: Desk = { mode: 'takes', numbers: [] };
  await context.route('**/desk/orders', async (route) => {
    const { number } = route.request().postDataJSON() as { number: string };
    desk.numbers.push(number);
    if (desk.mode === 'trouble') return route.fulfill({ status: 503, json: { title: 'The book is full' } });
    if (desk.mode === 'refuses')
      return route.fulfill({ status: 409, json: { detail: 'Not made any more.' } });
    return route.fulfill({
      status: 201,
      json: { number, receivedAt: '2026-11-25T18:41:00Z', checked: 'same' },
    });
  });
  await page.goto(host.base + path);
  return { page, desk };
}

const island = (page: Page) => page.getByRole('region', { name: 'Made to your size' });
const field = (page: Page) => island(page).locator('.sizer-measure input[type=text]');

async function size(page: Page, text: string): Promise<void> {
  await field(page).fill(text);
  await island(page).getByRole('heading', { name: 'What you would get' }).waitFor();
}

async function sendOrder(page: Page): Promise<void> {
  await island(page).getByRole('button', { name: 'Order this piece' }).click();
  await island(page).getByLabel('Your name').fill('Iris Moor');
  await island(page).getByLabel('Your e-mail address').fill('iris@example.org');
  await island(page).getByText('I collect it').click();
  await island(page).getByRole('button', { name: 'Send the order' }).click();
}

const standing = (page: Page) => island(page).locator('.sizer-entry').first();

test('what is written before the form is alive is kept, and sized', async () => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  onTestFinished(() => context.close());
  const page = await context.newPage();
  let letGo = (): void => undefined;
  const held = new Promise<void>((done) => (letGo = done));
  await page.route('**/_astro/*.js', async (route) => {
    await held;
    await route.continue();
  });
  await page.goto(host.base + BRACELET, { waitUntil: 'commit' });
  await field(page).fill('16.5 cm');
  await island(page).getByText('Loose', { exact: true }).click();
  await island(page).getByText('Left hand', { exact: true }).click();
  expect(await island(page).getByRole('heading', { name: 'What you would get' }).count()).toBe(0);
  letGo();
  await island(page).getByRole('heading', { name: 'What you would get' }).waitFor();
  expect(await field(page).inputValue()).toBe('16.5 cm');
  for (const name of ['cm', 'Loose', 'Left hand']) {
    expect(await island(page).getByRole('radio', { name, exact: true }).isChecked(), name).toBe(true);
  }
});

test('sleeps until somebody turns to it, and takes over what was done before it was alive', async () => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  onTestFinished(() => context.close());
  const page = await context.newPage();
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await page.goto(host.base + BRACELET, { waitUntil: 'load' });
  const form = () => fetched.filter((url) => url.includes('/_astro/form.'));
  expect(form()).toEqual([]);
  // Read from end to end, and not turned to: its files come, and lie there unread.
  await page.mouse.wheel(0, 4000);
  await expect.poll(form).toHaveLength(1);
  await page.locator('.foot').scrollIntoViewIfNeeded();
  expect(await page.locator('#sizer').getAttribute('data-asleep')).toBe('en');
  // All at once, before its code could run.
  await page.evaluate(() => {
    const radio = (name: string, value: string) =>
      document.querySelector<HTMLInputElement>(`input[name$="-${name}"][value="${value}"]`)?.click();
    radio('unit', 'cm');
    radio('view', 'straight');
    const slider = document.querySelector<HTMLInputElement>('.sizer-slider');
    if (slider !== null) slider.value = String(Number(slider.value) + 3);
    slider?.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await island(page).getByRole('heading', { name: 'What you would get' }).waitFor();
  expect(await page.locator('#sizer').getAttribute('data-asleep')).toBeNull();
  expect(await island(page).getByRole('radio', { name: 'cm', exact: true }).isChecked()).toBe(true);
  expect(await page.locator('.sizer-picture').getAttribute('data-view')).toBe('straight');
  expect(await field(page).inputValue()).toMatch(/^\d+(\.\d)?$/);
});

test('comes alive by itself where this device keeps a size', async () => {
  const { page } = await open(BRACELET);
  await size(page, '16.5 cm');
  const later = await page.context().newPage();
  await later.goto(host.base + BRACELET);
  await island(later).getByRole('heading', { name: 'What you would get' }).waitFor();
  expect(await field(later).inputValue()).toBe('16.5 cm');
});

describe('an order', () => {
  test('outlives a shop in trouble and a closed page, and is one order', async () => {
    const { page, desk } = await open(BRACELET);
    desk.mode = 'trouble';
    await size(page, '6 1/2');
    await sendOrder(page);
    await standing(page).getByText('Not sent yet').waitFor();
    expect(
      await standing(page).getByRole('link', { name: 'Open as an e-mail' }).getAttribute('href'),
    ).toMatch(/^mailto:.*claspwise4\./s);
    const context = page.context();
    await page.close();
    desk.mode = 'takes';
    // Another page of the shop with an island: the order goes from there.
    const later = await context.newPage();
    await later.goto(host.base + NECKLACE);
    await standing(later).getByText('Not sent yet').waitFor();
    await standing(later).getByRole('button', { name: 'Try again now' }).click();
    await standing(later).getByText('The maker has it').waitFor();
    expect(new Set(desk.numbers).size).toBe(1);
    expect(desk.numbers.length).toBeGreaterThan(1);
  });

  test('waits without a network and goes by itself when it is back', async () => {
    const { page } = await open(BRACELET);
    await size(page, '165 mm');
    await island(page).getByRole('button', { name: 'Order this piece' }).click();
    await page.context().setOffline(true);
    await island(page).getByLabel('Your name').fill('Iris Moor');
    await island(page).getByLabel('Your e-mail address').fill('iris@example.org');
    await island(page).getByText('I collect it').click();
    await island(page).getByRole('button', { name: 'Send the order' }).click();
    await standing(page).getByText('no network').waitFor();
    await page.context().setOffline(false);
    await standing(page).getByText('The maker has it').waitFor();
  });

  test('that the shop turns down says why, and can be taken away by file', async () => {
    const { page, desk } = await open(BRACELET);
    desk.mode = 'refuses';
    await size(page, '6½');
    await sendOrder(page);
    await standing(page).getByText('Not made any more.').waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      standing(page).getByRole('button', { name: 'Download the order' }).click(),
    ]);
    const document = JSON.parse((await bytesOf(download)).toString()) as { number: string };
    expect(download.suggestedFilename()).toBe(`order-${document.number}.json`);
    expect(desk.numbers).toEqual([document.number]);
  });

  test('says what is missing, and goes to the first such field', async () => {
    const { page, desk } = await open(BRACELET);
    await size(page, '6½');
    await island(page).getByRole('button', { name: 'Order this piece' }).click();
    await island(page).getByRole('button', { name: 'Send the order' }).click();
    await island(page).getByText('Write your name').waitFor();
    await island(page).getByText('Write your e-mail address').waitFor();
    await island(page).getByText('Write the street and number').waitFor();
    expect(
      await island(page)
        .getByLabel('Your name')
        .evaluate((input) => input === document.activeElement),
    ).toBe(true);
    expect(desk.numbers).toEqual([]);
    // What has been put right is no longer said to be missing.
    await island(page).getByLabel('Town').fill('Tenterholm');
    await island(page).getByText('Write the town.').waitFor({ state: 'detached' });
  });
});

test('the slip holds the order in its address and opens again without a network', async () => {
  const { page } = await open(BRACELET);
  await size(page, '6½');
  await sendOrder(page);
  await standing(page).getByText('The maker has it').waitFor();
  const heading = (await standing(page).getByRole('heading').textContent()) ?? '';
  const number = /...-...-.../.exec(heading)?.[0] ?? 'none';
  await standing(page).getByRole('link', { name: 'Slip to keep' }).click();
  await page.getByRole('heading', { name: `Order ${number}` }).waitFor();
  expect(await page.locator('.slip').textContent()).toContain('iris@example.org');
  await page.getByRole('img', { name: /Scan/ }).waitFor();
  const kept = async (): Promise<boolean> =>
    page.evaluate(async () => {
      const cache = await caches.open('slip-1');
      return (await cache.keys()).length > 3;
    });
  await expect.poll(kept).toBe(true);
  await page.context().setOffline(true);
  await page.reload();
  await page.getByRole('heading', { name: `Order ${number}` }).waitFor();
});

describe('measures', () => {
  test('a number that was meant in the other unit is offered in it, and the whole page follows', async () => {
    const { page } = await open(BRACELET);
    await field(page).fill('16.5');
    await island(page).getByText('can’t be right').waitFor();
    await island(page)
      .getByRole('button', { name: /Did you mean 16.5/ })
      .click();
    await island(page).getByRole('heading', { name: 'What you would get' }).waitFor();
    expect(await field(page).inputValue()).toBe('16.5');
    expect(await island(page).getByRole('radio', { name: 'cm' }).isChecked()).toBe(true);
    // Remembered on this device for the next piece.
    await page.reload();
    await island(page).getByRole('heading', { name: 'What you would get' }).waitFor();
    expect(await field(page).inputValue()).toBe('16.5');
  });

  test('the unit is one for the whole page, wherever it is changed', async () => {
    const { page } = await open(BRACELET);
    await size(page, '6½');
    const pageUnit = () => page.evaluate(() => document.documentElement.dataset['unit']);
    await page.locator('[data-set-unit=cm]').click();
    await expect.poll(() => field(page).inputValue()).toBe('16.5');
    await island(page).getByText('inches', { exact: true }).click();
    await expect.poll(pageUnit).toBe('in');
    expect(await page.locator('[data-set-unit=in]').getAttribute('aria-pressed')).toBe('true');
  });

  test.each([
    ['-6', 'more than nothing'],
    ['six', 'can’t be read'],
    ['6 ells', 'no unit'],
  ])('%s is answered: %s', async (text, said) => {
    const { page } = await open(BRACELET);
    await field(page).fill(text);
    await island(page).getByText(said).first().waitFor();
    expect(await island(page).getByRole('button', { name: 'Order this piece' }).isDisabled()).toBe(true);
  });

  test('beyond the piece it says how far it goes, and goes there', async () => {
    const { page } = await open(BRACELET);
    await field(page).fill('11 in');
    await island(page).getByText('can’t be made that large').waitFor();
    await island(page)
      .getByRole('button', { name: /^Show it at/ })
      .click();
    await island(page).getByText('can’t be made that large').waitFor({ state: 'detached' });
  });
});

describe('body chart', () => {
  test('a collar too short for a typical neck is shown on the one that it closes round', async () => {
    const { page } = await open('/pieces/tenterhooks/');
    await island(page).getByText('Worn', { exact: true }).click();
    await island(page)
      .getByText(/^Shown on a neck/)
      .waitFor();
    expect(await island(page).locator('.chart-drawing desc').textContent()).toMatch(/long, .+ the pit/);
  });

  test('the length follows the lowest point, by keys and by dragging', async () => {
    const { page } = await open(NECKLACE);
    await size(page, '17 1/2');
    await island(page).getByText('Worn', { exact: true }).click();
    const handle = island(page).getByRole('slider', { name: /Lowest point/ });
    await handle.waitFor();
    const length = async (): Promise<number> => Number(await handle.getAttribute('aria-valuenow'));
    const first = await length();
    await handle.press('ArrowDown');
    await expect.poll(length).toBeGreaterThan(first);
    await handle.press('Home');
    await expect.poll(length).toBeLessThan(first);
    const shortest = await length();
    await handle.scrollIntoViewIfNeeded();
    const box = await handle.boundingBox();
    if (box === null) throw new Error('expected the handle on the page');
    const x = box.x + box.width / 2;
    const y = box.y + box.height / 2;
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + 60, { steps: 6 });
    await page.mouse.up();
    await expect.poll(length).toBeGreaterThan(shortest);
    await island(page).getByText('An estimate for a typical body').waitFor();
  });
});

describe.each(['light', 'dark'] as const)('in %s', (colorScheme) => {
  test('the whole road is open to everyone at 320 pixels', async () => {
    const { page } = await open(NECKLACE, { viewport: { width: 320, height: 640 }, colorScheme });
    await size(page, '17 1/2');
    await island(page).getByText('How to measure').click();
    await island(page).getByText('Worn', { exact: true }).click();
    await island(page)
      .getByRole('slider', { name: /Lowest point/ })
      .waitFor();
    await island(page).getByRole('button', { name: 'Order this piece' }).click();
    await island(page).getByLabel('Your name').waitFor();
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    expect(await axeFindings(page, '.sizer')).toEqual([]);
    const small = await island(page).evaluate((region) =>
      [
        ...region.querySelectorAll<HTMLElement>(
          'button, a, summary, .sizer-choice, input[type=range], .sizer-input, .sizer-check',
        ),
      ]
        .filter((one) => one.offsetParent !== null && one.getBoundingClientRect().height < 43.5)
        .map((one) => `${one.className} ${one.textContent} ${one.getBoundingClientRect().height}`),
    );
    expect(small.filter((text) => !text.startsWith('sizer-trap'))).toEqual([]);
  });
});
