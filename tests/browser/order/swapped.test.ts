/** Another clasp and another pendant, from the page that offers them to the invoice. */
import { expect, test } from 'vitest';
import { bytesOf, visit } from '../shop.ts';
import { giveSize, order, shownFigures, sizer, standing, type Wish } from './buyer.ts';

const wish: Wish = {
  field: 'Finished length, clasp included',
  size: '18 in',
  hand: 'Right hand',
  name: 'Mina Furrow',
  email: 'mina@example.org',
  note: '',
  to: null,
};

const pounds = (text: string): number => Number(/£([\d.]+)/.exec(text)?.[1]);

test('another clasp and pendant are drawn, priced, minded, ordered, strung and invoiced', async () => {
  const { page, complaints } = await visit('/pieces/first-frost/');
  await sizer(page)
    .getByLabel('Clasp', { exact: true })
    .selectOption({ label: 'Steel magnetic clasp, 7 mm (same price)' });
  await sizer(page).getByText('A magnet can disturb a heart pacemaker').waitFor();

  await page.goto('/pieces/harvest-moon/');
  await giveSize(page, wish);
  const price = () => sizer(page).locator('.sizer-price').innerText();
  const drawing = () => sizer(page).locator('.sizer-picture svg').first().innerHTML();
  const [listedPrice, listedDrawing] = [pounds(await price()), await drawing()];
  const told: string[] = [];
  for (const [label, name] of [
    ['Clasp', 'Silver lobster'],
    ['Pendant', 'bobbin'],
  ] as const) {
    const select = sizer(page).getByLabel(label, { exact: true });
    const option = select.locator('option', { hasText: new RegExp(name, 'i') });
    const text = (await option.textContent()) ?? '';
    await select.selectOption({ label: text });
    told.push(text.replace(/ \((£|same).*$/, ''));
  }
  await expect.poll(drawing).not.toBe(listedDrawing);
  const swappedPrice = pounds(await price());
  expect(swappedPrice).not.toBe(listedPrice);
  const figures = await shownFigures(page);

  await order(page, wish);
  await expect.poll(async () => (await standing(page)).text).toContain('The maker has it');
  const { number } = await standing(page);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    sizer(page).getByRole('button', { name: 'Download the order' }).click(),
  ]);
  const document = JSON.parse((await bytesOf(download)).toString()) as {
    instead: Record<string, { id: string; name: string }>;
    shown: { priceMinor: number };
  };
  expect(Object.values(document.instead).map((part) => part.name)).toEqual(told);
  expect(document.shown.priceMinor).toBe(Math.round(swappedPrice * 100));

  await page.goto(`/bench/orders/${number}/`);
  await page.getByText('Checked: all figures are those that the buyer saw.').waitFor();
  const main = page.locator('main');
  for (const part of told) expect(await main.innerText()).toContain(part);
  expect(await main.innerText()).toContain(figures['Finished length'] ?? 'a finished length');
  await page.goto(`/bench/orders/${number}/card/`);
  for (const part of told) expect(await main.innerText()).toContain(part);
  await page.goto(`/bench/orders/${number}/`);
  await page.getByRole('button', { name: 'Agree to it', exact: true }).click();
  await page.getByRole('button', { name: 'Issue the invoice' }).click();
  const line = page.getByRole('row').filter({ hasText: 'Harvest Moon' });
  for (const part of told) expect(await line.innerText()).toContain(part);
  expect(complaints).toEqual([]);
});
