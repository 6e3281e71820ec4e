/** One that lies finished is had as it lies there: by the first with whom it is agreed, and nobody else. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { visit } from '../shop.ts';
import { order, sizer, standing, type Buyer } from './buyer.ts';

const PIECE = '/pieces/slack-water/';
const AS_IT_LIES = 'Have it as it lies there';

const buyer = (name: string): Buyer => ({
  name,
  email: `${name.toLowerCase().replace(' ', '.')}@example.org`,
  note: '',
  to: null,
});

/** A buyer on a device of her own, whose order has been answered; what she was told. */
async function ordered(page: Page, name: string): Promise<{ number: string; text: string }> {
  await order(page, buyer(name), AS_IT_LIES);
  await expect.poll(async () => (await standing(page)).text).toMatch(/^(The maker has it|The one that lay)/);
  return standing(page);
}

test('the first asks, a second is told that it may be gone, and once it is agreed a third is led to her own size', async () => {
  const devices = await Promise.all([visit(PIECE), visit(PIECE), visit(PIECE)]);
  const [first, second, third] = devices.map(({ page }) => page) as [Page, Page, Page];
  const asked = await ordered(first, 'Una Marl');
  expect(asked.text).toMatch(/^The maker has it, .+ She will write to you\.$/);
  const later = await ordered(second, 'Tib Sallow');
  expect(later.text).toContain('Somebody asked for the one that lies finished before you did.');

  const { page: bench, complaints } = await visit(`/bench/orders/${asked.number}/`);
  await bench.getByText('It goes as it lies finished: nothing is strung.').waitFor();
  // There is nothing to string, so nothing to string by.
  expect(await bench.getByRole('link', { name: 'Bench card' }).count()).toBe(0);
  await bench.getByRole('button', { name: 'Agree to it', exact: true }).click();
  await expect.poll(() => bench.locator('#ready').textContent()).toContain('It is yours, as it lies there');
  await bench.goto(`/bench/orders/${later.number}/`);
  await bench.getByText(`${asked.number}`).first().waitFor();
  expect(complaints).toEqual([]);

  // Her page was built when it lay there: the desk knows better.
  const refused = await ordered(third, 'Ebba Lunt');
  expect(refused.text).toContain('has been promised to somebody in the meantime');
  await sizer(third).getByRole('link', { name: 'Have one made in my size' }).click();
  const field = sizer(third).getByLabel('Round your wrist');
  await expect.poll(() => field.evaluate((input) => input === document.activeElement)).toBe(true);

  // From another piece's page the same way leads to the field on its own.
  await third.goto('/pieces/first-frost/');
  await sizer(third).getByRole('link', { name: 'Have one made in my size' }).click();
  await third.waitForURL(`**${PIECE}#*`);
  await expect.poll(() => field.evaluate((input) => input === document.activeElement)).toBe(true);

  // Where the first two stand hasn't changed on their devices, for the maker writes to both.
  for (const page of [first, second]) {
    await page.reload();
    expect((await standing(page)).text).toMatch(/^The maker has it/);
  }
  for (const { complaints } of devices.slice(0, 2)) expect(complaints).toEqual([]);
  // A refusal is a 409, which Chromium writes into the console by itself.
  expect(devices[2]?.complaints.filter((one) => !one.includes('409'))).toEqual([]);
});
