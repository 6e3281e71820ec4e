/** The first screen of a piece: picture, price and sizing together, the picture in her size, and a form that is kept. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { visit } from './shop.ts';

const PIECE = '/pieces/banked-fire/';
const island = (page: Page) => page.getByRole('region', { name: 'Made to your size' });

/** True where the whole of it is in sight without scrolling, and the bar at the foot doesn't lie over it. */
const inSight = (page: Page, selector: string): Promise<boolean> =>
  page
    .locator(selector)
    .first()
    .evaluate((one) => {
      const { top, bottom } = one.getBoundingClientRect();
      const bar = document.querySelector('.sizer-buy');
      const foot = bar === null || bar.contains(one) ? innerHeight : bar.getBoundingClientRect().top;
      const isBeside = bar !== null && bar.getBoundingClientRect().left >= one.getBoundingClientRect().right;
      return top >= 0 && bottom <= (isBeside ? innerHeight : foot);
    });

/** Picture, size, price, by when it would be sent, and the button that orders. */
const FIRST = [
  '.sizer-picture-frame',
  'h1',
  '.sizer-input',
  '.sizer-price dd',
  '.sizer-price p',
  '.sizer-buy .button',
] as const;

describe.each([
  ['a desk', 1280, 800],
  ['a phone', 360, 740],
] as const)('on %s', (_name, width, height) => {
  // One that is sized and no more, ones with a clasp to choose or that lie finished too, a necklace with a pendant, one of several strands.
  test.each(
    ['', '/de'].flatMap((lang) =>
      [
        PIECE,
        ...['first-frost', 'slack-water', 'wash-day', 'beck-and-leat'].map((id) => `/pieces/${id}/`),
      ].map((path) => lang + path),
    ),
  )('all of it stands in the first screen of %s', async (path) => {
    const { page } = await visit(path);
    await page.setViewportSize({ width, height });
    for (const part of FIRST) expect(await inSight(page, part), part).toBe(true);
  });
});

test('the large picture becomes the piece in her size, in its own place', async () => {
  const { page } = await visit(PIECE);
  const frame = island(page).locator('.sizer-picture-frame');
  const before = await frame.boundingBox();
  expect(await frame.locator('img').count()).toBe(1);
  await island(page).getByLabel('Round your wrist').fill('8 in');
  await frame.getByRole('img', { name: /^Banked Fire at your size/ }).waitFor();
  const after = await frame.boundingBox();
  expect(after?.width).toBe(before?.width);
  expect(after?.height).toBe(before?.height);
});

test('a measure that the browser emptied on the way back stands in its field again', async () => {
  const { page } = await visit(PIECE);
  const measure = island(page).getByLabel('Round your wrist');
  await measure.fill('6 1/2');
  await island(page).getByRole('heading', { name: 'What you would get' }).waitFor();
  // As Safari does with a page that it kept whole.
  await measure.evaluate((field: HTMLInputElement) => {
    field.value = '';
    dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }));
  });
  await expect.poll(() => measure.inputValue()).toBe('6 1/2');
});

test('a form half filled in survives a reload, and clearing it leaves nothing', async () => {
  const { page } = await visit(PIECE);
  await island(page).getByLabel('Round your wrist').fill('6 1/2');
  await island(page).getByRole('button', { name: 'Order this piece' }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Your order');
  await island(page).getByLabel('Your name').fill('Iris Moor');
  await page.reload();
  await expect.poll(() => island(page).getByLabel('Your name').inputValue()).toBe('Iris Moor');
  await island(page).getByRole('button', { name: 'Clear the form' }).click();
  expect(await island(page).getByLabel('Your name').inputValue()).toBe('');
  expect(await page.evaluate(() => localStorage.getItem('claspwise.form'))).toBe(null);
});
