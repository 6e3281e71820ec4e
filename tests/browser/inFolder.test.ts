/** The buyer's road in a shop that lies in a folder of its host: nothing is asked for outside the folder, and nothing is missing. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CONTENT, RELEASES } from '../support/inFolder/shop.ts';
import { startShop, type RunningShop } from '../support/shop.ts';
import { fillIn, giveSize, sizer, standing, type Wish } from './order/buyer.ts';
import { visit } from './shop.ts';

let inFolder: RunningShop;
beforeAll(async () => {
  inFolder = await startShop({ CLASPWISE_RELEASES: RELEASES, CLASPWISE_CONTENT: CONTENT });
});
afterAll(() => inFolder.stop());

const wish: Wish = {
  field: 'Round your wrist',
  size: '165 mm',
  hand: 'Left hand',
  name: 'Orla Finch',
  email: 'orla@example.org',
  note: '',
  to: null,
};

test('from the front page by the search to a piece, its order, its slip and the bench', async () => {
  const { base } = inFolder;
  expect(new URL(base).pathname).toBe('/shop');
  const { page, complaints } = await visit(`${base}/`, {}, base);
  await page.locator('a[href$="/find/"]').first().click();
  await page.locator('#find-words').fill('banked');
  await page.locator('#find-results a[href$="/pieces/banked-fire/"]').click();
  await page.waitForURL(`${base}/pieces/banked-fire/`);

  await giveSize(page, wish);
  await fillIn(page, wish);
  await sizer(page).getByRole('button', { name: 'Send the order' }).click();
  await expect.poll(async () => (await standing(page)).text).toMatch(/^The maker has it/);
  const { number } = await standing(page);
  await sizer(page).locator('a[href*="/slip/"]').first().click();
  await page.getByText('orla@example.org').first().waitFor();
  expect(page.url().startsWith(`${base}/slip/`)).toBe(true);

  const kept = await page.evaluate(() => Object.keys(localStorage));
  expect(kept.length).toBeGreaterThan(0);
  expect(kept.filter((key) => !key.startsWith('/shop/'))).toEqual([]);

  await page.goto(`${base}/bench/orders/${number}/`);
  await page.getByText('Orla Finch').first().waitFor();
  await page.getByRole('link', { name: 'Bench card' }).first().click();
  await page.waitForURL(`${base}/bench/orders/${number}/card/`);
  await page.goto(`${base}/de/find/?q=glut`);
  await page.locator('#find-results a[href*="/shop/de/pieces/"]').first().waitFor();
  expect(complaints).toEqual([]);
});

test('outside the folder the host has no shop', async () => {
  const answer = await fetch(new URL('/find/', inFolder.base));
  expect(answer.status).toBe(404);
});
