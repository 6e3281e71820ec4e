/** What a buyer has begun is there again: after a reload, on the way back from another page, in a tab opened anew. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { visit } from '../shop.ts';
import { fillIn, giveSize, sizer, type Wish } from './buyer.ts';

const wish: Wish = {
  field: 'Finished length, clasp included',
  size: '18 in',
  hand: 'Left hand',
  name: 'Wyn Garth',
  email: 'wyn@exam',
  note: 'Not before the hay is in.',
  to: { Town: 'Scourfoot' },
};

type Left = { readonly fields: Record<string, string>; readonly price: string; readonly summary: string };

/** All that she has set and written, what it comes to, and what would be ordered. */
async function left(page: Page): Promise<Left> {
  const region = sizer(page);
  await region.getByRole('heading', { name: 'Your order', exact: true }).waitFor();
  await region.getByRole('heading', { name: 'What you would get' }).waitFor();
  return region.evaluate((element) => ({
    fields: Object.fromEntries(
      [...element.querySelectorAll<HTMLInputElement>('input, select, textarea')]
        .filter(({ type, checked }) => type !== 'radio' || checked)
        .map(({ id, name, value }) => [id || name, value]),
    ),
    price: element.querySelector('.sizer-price')?.textContent ?? '',
    summary: element.querySelector('.sizer-form dl')?.textContent ?? '',
  }));
}

test('a form half filled in, with another clasp, survives reload, back and a closed tab', async () => {
  const { page, complaints } = await visit('/pieces/harvest-moon/');
  await giveSize(page, wish);
  const clasp = sizer(page).getByLabel('Clasp', { exact: true });
  await clasp.selectOption('lobster-12-silver');
  await fillIn(page, wish);
  const before = await left(page);
  expect(Object.values(before.fields)).toEqual(
    expect.arrayContaining([wish.name, wish.email, wish.note, 'Scourfoot', '18 in', 'left']),
  );
  expect(before.summary).toContain('Clasp');

  await page.reload();
  expect(await left(page)).toEqual(before);
  await page.getByRole('link', { name: 'Guides' }).first().click();
  await page.goBack();
  expect(await left(page)).toEqual(before);
  const context = page.context();
  await page.close();
  const anew = await context.newPage();
  await anew.goto('/pieces/harvest-moon/');
  expect(await left(anew)).toEqual(before);
  // Another piece has her name, and neither the clasp nor the note of this one.
  await anew.goto('/pieces/wash-day/');
  await sizer(anew).getByRole('heading', { name: 'What you would get' }).waitFor();
  await sizer(anew).getByRole('button', { name: 'Order this piece' }).click();
  const other = await left(anew);
  expect(Object.values(other.fields)).toContain(wish.name);
  expect(Object.values(other.fields)).not.toContain(wish.note);
  expect(other.summary).not.toContain('Clasp:');
  expect(complaints).toEqual([]);
});

test('the nearest piece that she picked is still the one picked after a reload', async () => {
  const { page } = await visit('/pieces/weir-light/');
  // Whole beads of this piece don't come near enough to that wrist.
  await sizer(page).getByLabel('Round your wrist').fill('146 mm');
  const larger = sizer(page).getByRole('radio', { name: /larger than/ });
  const smaller = sizer(page).getByRole('radio', { name: /smaller than/ });
  await larger.waitFor();
  const first = await larger.isChecked();
  await (first ? smaller : larger).check({ force: true });
  await page.reload();
  await expect.poll(() => (first ? smaller : larger).isChecked()).toBe(true);
});

test('a form begun for the one that lies finished stands open again, though no size was ever given', async () => {
  const { page } = await visit('/pieces/slack-water/');
  await sizer(page).getByRole('button', { name: 'Have it as it lies there' }).click();
  await sizer(page).getByLabel('Your name').fill(wish.name);
  await page.reload();
  await expect.poll(() => sizer(page).getByLabel('Your name').inputValue()).toBe(wish.name);
  expect(await sizer(page).locator('.sizer-form dl').innerText()).toContain('as it lies there');
});
