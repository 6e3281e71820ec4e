/** At the board on a tablet: walked by keyboard, with a reload and a lost bench in the middle, and a second window. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { newPage, tooWide, visit } from '../shop.ts';
import { sendOrder } from './order.ts';

const TABLET = { viewport: { width: 1024, height: 768 }, hasTouch: true };

let shop: RunningShop;
beforeAll(async () => {
  shop = await startShop({ CLASPWISE_DESK_PER_MINUTE: '0' });
});
afterAll(() => shop.stop());

const where = (page: Page): Promise<string> => page.locator('[data-stop]:visible .where').innerText();
/** What the stop at hand counts; '' where there is nothing to count. */
const counted = async (page: Page): Promise<string> =>
  (await page.locator('[data-count]:visible').allInnerTexts()).join();
/** What the page says of her place and the order book. */
const line = (page: Page) => expect.poll(() => page.locator('[data-line]').innerText());
const stopNumber = async (page: Page): Promise<number> => Number(/\d+/.exec(await where(page))?.[0]);
/** Numbers of the beads that are lit. */
const lit = (page: Page): Promise<number[]> =>
  page
    .locator('figure:visible [data-bead].lit')
    .evaluateAll((all) => all.map((one) => Number(one.getAttribute('data-bead'))).sort((a, b) => a - b));

/** On with the key until beads are at hand. */
async function toBeads(page: Page): Promise<void> {
  while ((await page.locator('[data-stop]:visible [data-count]').count()) === 0)
    await page.keyboard.press('PageDown');
}

test('is walked by keyboard, taken up after a reload, and goes on while the bench is lost', async () => {
  const number = await sendOrder(shop.base, 'banked-fire');
  const { page } = await visit(`/bench/orders/${number}/steps/`, TABLET, shop.base);
  expect(await where(page)).toContain('Step 1 of');
  expect(await page.locator('.say:visible').innerText()).toContain('Eye protection');
  for (const key of ['PageDown', ' ', 'ArrowRight', 'PageUp', 'ArrowLeft', 'PageDown'])
    await page.keyboard.press(key);
  expect(await stopNumber(page)).toBe(3);
  await toBeads(page);
  expect(await counted(page)).toMatch(/^0 of \d+$/);
  const first = await lit(page);
  expect(first[0]).toBe(1);
  await page.keyboard.press('PageDown');
  expect(await counted(page)).toMatch(/^1 of \d+$/);
  expect((await lit(page))[0]).toBe((first.at(-1) ?? 0) + 1);
  const dimmed = page.locator('figure:visible [data-bead="1"]');
  expect(Number(await dimmed.evaluate((one) => getComputedStyle(one).opacity))).toBeLessThan(0.5);
  await line(page).toBe('Kept in the order book.');

  const before = await where(page);
  await page.reload();
  expect(await where(page)).toBe(before);
  expect(await counted(page)).toMatch(/^1 of \d+$/);
  expect(await page.locator('[data-line]').innerText()).toContain('You left off here');

  // The bench is gone: she goes on from what is loaded, and the page says so.
  await page.context().setOffline(true);
  await page.keyboard.press('PageDown');
  await page.keyboard.press('PageDown');
  await line(page).toContain('The bench can’t be reached');
  const lost = await counted(page);
  const stop = await where(page);
  await page.context().setOffline(false);
  await line(page).toBe('Kept in the order book.');
  await page.reload();
  expect(await where(page)).toBe(stop);
  expect(await counted(page)).toBe(lost);

  // By tap, to a run of its own choosing and back.
  await toBeads(page);
  await page.locator('[data-tick]:visible').first().tap();
  await page.getByRole('button', { name: 'Next' }).tap();
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  const screen = page.viewportSize();
  const next = await page.getByRole('button', { name: 'Next' }).boundingBox();
  expect((next?.y ?? 0) + (next?.height ?? 0)).toBeLessThanOrEqual(screen?.height ?? 0);
});

test('a second window is told where the first has got to, and can go on from there', async () => {
  const number = await sendOrder(shop.base, 'banked-fire');
  const { page } = await visit(`/bench/orders/${number}/steps/`, TABLET, shop.base);
  const other = await page.context().newPage();
  await other.goto(page.url());
  for (let at = 0; at < 4; at += 1) await page.keyboard.press('PageDown');
  await line(page).toBe('Kept in the order book.');
  await other.keyboard.press('PageDown');
  await expect.poll(() => other.locator('[data-elsewhere-text]').innerText()).toContain('step 5 of');
  expect(await stopNumber(other)).toBe(2);
  await other.getByRole('button', { name: 'Go on from there' }).click();
  expect(await stopNumber(other)).toBe(5);
  await other.keyboard.press('PageDown');
  await line(other).toBe('Kept in the order book.');
  await page.keyboard.press('PageUp');
  await expect.poll(() => page.locator('[data-elsewhere-text]').innerText()).toContain('step 6 of');
  await page.getByRole('button', { name: 'Stay where I am' }).click();
  await line(page).toBe('Kept in the order book.');
  await other.reload();
  expect(await stopNumber(other)).toBe(4);
  // A step that is only looked at moves nothing, until she goes on from there.
  await other.goto(`/bench/orders/${number}/steps/?step=2`);
  expect(await stopNumber(other)).toBe(2);
  await other.goto(`/bench/orders/${number}/steps/`);
  expect(await stopNumber(other)).toBe(4);
  await other.goto(`/bench/orders/${number}/steps/?step=2`);
  await other.keyboard.press('Enter');
  await line(other).toBe('Kept in the order book.');
  await other.goto(`/bench/orders/${number}/steps/`);
  expect(await stopNumber(other)).toBe(3);
});

test('her clock runs only when started, pauses, and its time stands with the order', async () => {
  const number = await sendOrder(shop.base, 'banked-fire');
  const { page } = await visit('/bench/steps/', TABLET, shop.base);
  await page.clock.install();
  await page.goto(`/bench/orders/${number}/steps/`);
  await page.clock.runFor(60_000);
  await page.getByRole('button', { name: 'Start the clock' }).click();
  await page.clock.runFor(90_000);
  await page.reload();
  await page.clock.runFor(100_000);
  await page.getByRole('button', { name: 'Pause the clock' }).click();
  await line(page).toBe('Kept in the order book.');
  await page.goto(`/bench/orders/${number}/`);
  expect(await page.locator('main').innerText()).toContain('3 minutes at the board by your clock');
});

test('a batch cuts all wires in one go and ticks each order', async () => {
  const numbers = [await sendOrder(shop.base, 'weir-light'), await sendOrder(shop.base, 'weir-light')];
  const { page } = await visit('/bench/steps/', TABLET, shop.base);
  const group = page.locator('form.waiting', { hasText: numbers[0]! });
  for (const number of numbers) await group.getByLabel(`Take ${number} along`).check();
  await group.getByRole('button', { name: 'String those ticked side by side' }).click();
  while (!(await where(page)).includes('Cut the wires')) await page.keyboard.press('PageDown');
  const ticks = page.locator('[data-tick]:visible');
  expect((await ticks.allInnerTexts()).map((text) => text.slice(0, 11))).toEqual(numbers.toSorted());
  expect(await counted(page)).toBe('0 of 2');
  await page.keyboard.press('PageDown');
  expect(await counted(page)).toBe('1 of 2');
  await line(page).toBe('Kept in the order book.');
  await page.goto('/bench/steps/');
  await page.getByRole('link', { name: 'Go on stringing' }).first().click();
  expect(await counted(page)).toBe('1 of 2');
});

test('without a script every step is a page, and the place is kept all the same', async () => {
  const number = await sendOrder(shop.base, 'banked-fire');
  const { page } = await visit(
    `/bench/orders/${number}/steps/`,
    { ...TABLET, javaScriptEnabled: false },
    shop.base,
  );
  const button = page.getByRole('button', { name: 'Next' });
  for (let at = 0; at < 3; at += 1) await button.click();
  expect(await where(page)).toContain('Step 4 of');
  await page.goto(`/bench/orders/${number}/steps/`);
  expect(await where(page)).toContain('Step 4 of');
  await page.goto(`/bench/orders/${number}/steps/?step=2`);
  expect(await where(page)).toContain('Step 2 of');
});

test('axe finds nothing in the beads of a piece of several strands, and nothing is wider than a phone', async () => {
  const number = await sendOrder(shop.base, 'collar-of-rain');
  const { page, complaints } = await newPage({ viewport: { width: 1024, height: 768 } }, shop.base);
  await page.goto(`/bench/orders/${number}/steps/`);
  await toBeads(page);
  await line(page).toBe('Kept in the order book.');
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  await page.setViewportSize({ width: 320, height: 700 });
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  expect(complaints).toEqual([]);
  await page.context().close();
});
