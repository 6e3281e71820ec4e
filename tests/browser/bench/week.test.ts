/** The week, orders by hand and buyers in a browser: readable, by keyboard, and without script. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { catalogue, orderFor } from '#tests/bench/shop.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { newPage, tooWide, visit, type Watched } from '../shop.ts';

let shop: RunningShop;
let number: string;

beforeAll(async () => {
  shop = await startShop({ CLASPWISE_DESK_PER_MINUTE: '0' });
  const order = orderFor(catalogue, 'weir-light', 165.1, { note: '<b>hostile</b> \u202Enote' });
  number = order.number;
  const response = await fetch(`${shop.base}/desk/orders`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(order),
  });
  expect(response.status).toBe(201);
});
afterAll(() => shop.stop());

const open = async (path: string, javaScriptEnabled = true): Promise<Page> =>
  (await visit(path, { javaScriptEnabled }, shop.base)).page;

describe('what a page shows after something was done', () => {
  let watched: Watched;
  beforeAll(async () => {
    watched = await newPage({}, shop.base);
  });
  afterAll(() => watched.page.context().close());

  test.each(['/bench/gather/?of=agreed', 'again', 'restring', 'wrong', 'mail', 'buyer'])(
    '%s is silent, fits a narrow phone, and axe finds nothing, light and dark',
    async (path) => {
      const { page, complaints } = watched;
      complaints.length = 0;
      await page.setViewportSize({ width: 320, height: 700 });
      const orders = '/bench/orders/new/';
      const at: Record<string, string> = {
        again: `${orders}?again=${number}`,
        restring: `${orders}?restring=${number}`,
        ...{ wrong: orders, mail: orders, buyer: `/bench/buyers/${number}/` },
      };
      await page.goto(at[path] ?? path);
      if (path === 'wrong') await page.getByRole('button', { name: 'Put it into the book' }).click();
      if (path === 'mail') await readMail(page);
      await page.waitForLoadState();
      expect(await tooWide(page)).toBeLessThanOrEqual(0);
      expect(await page.locator('h1').count()).toBe(1);
      await page.setViewportSize({ width: 1280, height: 720 });
      expect(await axeFindingsInBothSchemes(page)).toEqual([]);
      expect(complaints).toEqual([]);
    },
  );
});

async function readMail(page: Page): Promise<void> {
  await page.getByText('From an e-mail', { exact: true }).click();
  const mail = `From: Zoë Quill <zoe@example.org>\n\nOne Weir Light, please ${'x'.repeat(200)}\nSize: 6½ in (165 mm)`;
  await page.getByLabel('The e-mail’s text').fill(mail);
  await page.getByRole('button', { name: 'Read it into the form' }).click();
}

test('an order by hand goes in by the keyboard alone, its mistakes mended by their links', async () => {
  const page = await open('/bench/orders/new/');
  await page.getByLabel('Piece', { exact: true }).focus();
  await page.keyboard.type('Weir');
  await page.keyboard.press('Tab');
  await page.keyboard.type('6 1/2');
  // The first button of the form is the one that sizes.
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'What it comes to' }).waitFor();
  await page.getByLabel('Name', { exact: true }).fill('Oona Tarn');
  await page.getByRole('button', { name: 'Put it into the book' }).focus();
  await page.keyboard.press('Enter');
  const alert = page.getByRole('alert');
  expect(await alert.innerText()).toContain('Say how the order came to you.');
  await alert.getByRole('link', { name: 'Say how the order came to you.' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('hand-way');
  await page.keyboard.type('By tel');
  await page.getByLabel('Telephone, if there is no e-mail').fill('01632 960983');
  await page.getByRole('button', { name: 'Put it into the book' }).press('Enter');
  await page.waitForURL(/\/bench\/orders\/[\w-]{11}\/$/);
  const said = await page.locator('main').innerText();
  for (const one of ['by telephone, entered by hand', 'Oona Tarn', '01632 960983'])
    expect(said).toContain(one);
});

test('without script: an e-mail into the form, the form into the book, its due day, its buyer erased', async () => {
  const page = await open('/bench/in/', false);
  const mail = `Hello,\n\nI should like to order Weir Light (weir-light 0123456789ab).\n\nSize: 6½ in (165 mm)\nThe hand that works the clasp: left\n\nMy name: Zoë Quill\n\nzoe@example.org\n`;
  await page.getByLabel('E-mail, link or order').fill(mail);
  await page.getByRole('button', { name: 'Take in' }).click();
  await page.getByRole('button', { name: 'Look it over in the form' }).click();
  expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Zoë Quill');
  expect(await page.getByRole('group', { name: 'The e-mail it was read from' }).innerText()).toContain(
    'Hello,',
  );
  await page.getByRole('button', { name: 'Put it into the book' }).click();
  await page.waitForURL(/\/bench\/orders\/[\w-]{11}\/$/);
  const mine = /orders\/([\w-]{11})\//.exec(page.url())?.[1] ?? '';
  await page.goto('/bench/week/');
  const row = page.getByRole('row').filter({ hasText: mine });
  await row.getByRole('button', { name: 'Take it over' }).click();
  expect(await page.getByRole('row').filter({ hasText: mine }).getByRole('button').count()).toBe(0);
  await page.goto(`/bench/orders/${mine}/`);
  await page.getByRole('link', { name: 'The buyer, and what she ordered before' }).click();
  expect(await page.locator('h1').innerText()).toBe('Zoë Quill');
  await page.getByRole('link', { name: `Make it again: the piece of order ${mine}` }).click();
  expect(await page.getByLabel('E-mail address').inputValue()).toBe('zoe@example.org');
  await page.goBack();
  await page.getByText('Erase all of it', { exact: true }).click();
  await page.getByRole('button', { name: 'Yes, erase all of it for good' }).click();
  expect(await page.getByRole('status').innerText()).toContain('Erased');
  expect(await page.locator('main').innerText()).not.toContain('Zoë');
});
