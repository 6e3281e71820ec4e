/**
 * A week of work: three orders by three ways, agreed, gathered, strung by the card
 * on a tablet beside the board, paid, invoiced, packed and posted.
 */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { mailBody } from '#order/mail.ts';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { catalogue, orderFor } from '#tests/bench/shop.ts';
import { visit } from '../shop.ts';

let shop: RunningShop;
beforeAll(async () => {
  shop = await startShop({ CLASPWISE_DESK_PER_MINUTE: '0' });
});
afterAll(() => shop.stop());

const TABLET = { viewport: { width: 1024, height: 768 }, hasTouch: true };

/** An order that the buyer collects, so that its sum is its price. */
const collected = (id: string, mm: number, name: string) => ({
  ...orderFor(catalogue, id, mm, { name }),
  delivery: { by: 'collection' } as const,
});

/** By the desk, by a pasted e-mail, by telephone: their numbers. */
async function takeThreeIn(page: Page): Promise<string[]> {
  const [desk, mailed] = [
    collected('weir-light', 165.1, 'Iris Møller'),
    collected('banked-fire', 171.5, 'Zoë Quill'),
  ];
  const posted = await fetch(`${shop.base}/desk/orders`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(desk),
  });
  expect(posted.status).toBe(201);
  await page.goto('/bench/in/');
  const texts = { subject: '', greeting: 'Hello', lines: [], closing: 'Zoë', foot: 'For the bench:' };
  await page.getByLabel('E-mail, link or order').fill(mailBody(texts, mailed));
  await page.getByRole('button', { name: 'Take in' }).click();
  await page.goto('/bench/orders/new/');
  await page.getByLabel('Piece', { exact: true }).selectOption({ label: 'Harvest Moon' });
  await page.getByLabel('Size, as it was said').fill('18');
  await page.getByLabel('Name', { exact: true }).fill('Oona Tarn');
  await page.getByLabel('Telephone, if there is no e-mail').fill('01632 960983');
  await page.getByLabel('How it came').selectOption({ label: 'By telephone' });
  await page.getByLabel('How it reaches her').selectOption({ label: 'By post' });
  await page.getByLabel('Street and number').fill('4 Fuller’s Row');
  await page.getByLabel('Town').fill('Scourfoot');
  await page.getByLabel('Postcode').fill('ZZ1 4AB');
  await page.getByLabel('Country').selectOption({ label: 'United Kingdom' });
  // What it comes to is shown before it counts.
  await page.getByRole('button', { name: 'Size it' }).click();
  await page.getByRole('heading', { name: 'What it comes to' }).waitFor();
  await page.getByRole('button', { name: 'Put it into the book' }).click();
  await page.waitForURL(/\/bench\/orders\/[\w-]{11}\/$/);
  return [desk.number, mailed.number, /orders\/([\w-]{11})\//.exec(page.url())?.[1] ?? ''];
}

/** Ticks every step of the card in turn, with a reload in the middle; how many there were. */
async function stringBy(page: Page): Promise<number> {
  const boxes = page.locator('.steps input');
  const count = await boxes.count();
  for (let step = 0; step < count; step += 1) {
    if (step === Math.floor(count / 2)) await page.reload();
    // What is done stays done, and nothing is done ahead.
    expect(await page.locator('.steps input:checked').count()).toBe(step);
    await boxes.nth(step).tap();
  }
  expect(await page.locator('.steps input:checked').count()).toBe(count);
  return count;
}

const step = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

test('three orders go their whole way', { timeout: 180_000 }, async () => {
  const { page, complaints } = await visit('/bench/', TABLET, shop.base);
  const numbers = await takeThreeIn(page);
  expect(new Set(numbers).size).toBe(3);

  await page.goto('/bench/week/');
  await page.getByRole('button', { name: 'Take over all 3 proposals' }).click();
  for (const number of numbers) {
    await page.goto(`/bench/orders/${number}/`);
    await step(page, 'Agree to it');
    // The message that lies ready names the day that was taken over.
    expect(await page.locator('#ready').textContent()).toMatch(/December 2026|January 2027|20\d\d/);
    await step(page, 'Write down as paid');
    expect(await page.locator('#money').innerText()).toContain('Nothing open');
  }

  await page.goto('/bench/gather/?of=agreed');
  const list = await page.locator('main').innerText();
  for (const number of numbers) expect(list).toContain(number);

  for (const number of numbers) {
    await page.goto(`/bench/orders/${number}/card/`);
    // One by one on one card; on the others they are the same boxes.
    if (number === numbers[2]) expect(await stringBy(page)).toBeGreaterThan(15);
    else expect(await page.locator('.steps input').count()).toBeGreaterThan(15);
    await page.goto(`/bench/orders/${number}/`);
    await step(page, 'It is strung');
    await step(page, 'Issue the invoice');
    expect(await page.locator('h1').innerText()).toMatch(/^Invoice and receipt \d{4}-000[123]$/);
    await page.goto(`/bench/orders/${number}/packing/`);
    expect(await page.locator('h1, .shop').first().innerText()).toContain('Ninepin');
  }

  const posted = numbers[2] ?? '';
  await page.goto(`/bench/orders/${posted}/label/`);
  const label = await page.locator('main').innerText();
  for (const line of ['Oona Tarn', '4 Fuller’s Row', 'Scourfoot', 'ZZ1 4AB']) expect(label).toContain(line);
  await page.goto(`/bench/orders/${posted}/`);
  await page.getByLabel('Tracking number').fill('TT 0123 4567 8GB');
  await step(page, 'It is sent');
  expect(await page.locator('#ready').textContent()).toContain('TT 0123 4567 8GB');
  for (const number of numbers.slice(0, 2)) {
    await page.goto(`/bench/orders/${number}/`);
    await step(page, 'It is sent');
  }

  await page.goto('/bench/');
  for (const number of numbers) expect(await page.locator('main').innerText()).not.toContain(number);
  await page.goto('/bench/months/');
  const earned = await page.locator('table tbody tr').first().innerText();
  expect(earned).toMatch(/\b3\b[\s\S]*\b3\b[\s\S]*£/);
  expect(complaints).toEqual([]);
});
