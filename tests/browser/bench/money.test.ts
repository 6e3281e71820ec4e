/** An order's money, papers and card in a browser: in as few clicks as they are meant to take. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { bytesOf, visit } from '../shop.ts';
import { sendOrder } from './order.ts';

let shop: RunningShop;

beforeAll(async () => {
  shop = await startShop({ CLASPWISE_DESK_PER_MINUTE: '0' });
});
afterAll(() => shop.stop());

const send = (id: string): Promise<string> => sendOrder(shop.base, id);

test('from a new order in the list to its printed card it takes two clicks', async () => {
  const fresh = await send('banked-fire');
  const { page } = await visit('/bench/access/', {}, shop.base);
  await page.addInitScript(() => {
    const up = (name: string): void =>
      sessionStorage.setItem(name, String(Number(sessionStorage.getItem(name) ?? 0) + 1));
    document.addEventListener('click', () => up('clicks'), { capture: true });
    window.print = () => up('printed');
  });
  await page.goto('/bench/');
  const row = page.getByRole('row').filter({ hasText: fresh });
  await row.getByRole('link', { name: 'Bench card' }).click();
  await page.getByRole('button', { name: 'Print' }).click();
  const counted = await page.evaluate(() =>
    ['clicks', 'printed'].map((name) => sessionStorage.getItem(name)),
  );
  expect(counted).toEqual(['2', '1']);
  expect(page.url()).toContain(`/bench/orders/${fresh}/card/`);
});

test('money is written down, asked about where it is too much, invoiced on one sheet, and taken back', async () => {
  const order = await send('weir-light');
  const { page, complaints } = await visit(`/bench/orders/${order}/`, {}, shop.base);
  await page.getByRole('button', { name: 'Agree to it' }).click();
  const money = page.getByRole('region', { name: /^Money/ });
  await money.getByLabel(/^Sum/).fill('1000');
  await money.getByRole('button', { name: 'Write down as paid' }).click();
  // The keyboard is where the page says what is wrong.
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.textContent))
    .toMatch(/^Only .* is open on this order/);
  expect(await money.getByLabel(/^Sum/).inputValue()).toBe('1000');
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  await money.getByLabel(/^Sum/).fill('20,00');
  await money.getByRole('button', { name: 'Write down as paid' }).click();
  expect(await page.locator('#money').innerText()).toContain('Part paid');
  await page.getByRole('button', { name: 'Issue the invoice' }).click();
  expect(await page.locator('h1').innerText()).toMatch(/^Invoice \d{4}-0001$/);
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
  await page.getByRole('link', { name: `Order ${order}` }).click();
  await page.getByText('Take it back').click();
  await page.getByRole('region', { name: 'Invoice or receipt' }).getByLabel('Why').fill('Wrong name');
  await page.getByRole('button', { name: 'Issue the credit note' }).click();
  expect(await page.locator('h1').innerText()).toMatch(/^Credit note \d{4}-0002$/);
  await page.goto('/bench/keep/');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download as CSV' }).click(),
  ]);
  const csv = (await bytesOf(download)).toString();
  expect(csv.split('\r\n').map((line) => line.split(',')[0])).toEqual(
    expect.arrayContaining(['"paid"', '"invoice"', '"credit-note"']),
  );
  // What can't be done is answered with 422 and the form again.
  expect(complaints.filter((one) => !one.includes('422'))).toEqual([]);
});
