/** The whole road to an order by keys alone, and what a screen reader is given at each step. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { alive, visit } from './shop.ts';

/** The accessibility tree of the sizing form as text, one node a line (Playwright's ARIA snapshot). */
const tree = (page: Page): Promise<string> => page.locator('#size').ariaSnapshot();

/** The accessible name of what has the focus, by role and name as the tree has them. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement)) return '';
    const labelled =
      at instanceof HTMLInputElement ? [...(at.labels ?? [])].map((one) => one.innerText).join(' ') : '';
    return (at.getAttribute('aria-label') ?? labelled) || at.innerText;
  });

/** Goes on by Tab until the wanted thing has the focus. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let stops = 0; stops < 80; stops += 1) {
    await page.keyboard.press('Tab');
    if (name.test(await focused(page))) return;
  }
  throw new Error(`expected to come to ${name} by Tab, stopped at ${await focused(page)}`);
}

test('size, sit, hand and order by keys alone, each step in the tree', async () => {
  const { page } = await visit('/pieces/banked-fire/');
  const posted: string[] = [];
  await page.context().route('**/desk/orders', async (route) => {
    const { number } = route.request().postDataJSON() as { number: string };
    posted.push(number);
    await route.fulfill({
      status: 201,
      json: { number, receivedAt: '2026-11-25T18:41:00Z', checked: 'same' },
    });
  });
  await alive(page);
  await tabTo(page, /^Round your wrist$/);
  await page.keyboard.type('6 1/2');
  await tabTo(page, /^Easy$/);
  await page.keyboard.press('ArrowRight');
  await tabTo(page, /^Right hand$/);
  await page.keyboard.press('ArrowLeft');
  await page.getByRole('heading', { name: 'What you would get' }).waitFor();
  const sized = await tree(page);
  for (const line of [
    /textbox "Round your wrist"/,
    /group "How should it sit\?"/,
    /radio "Loose" \[checked\]/,
    /group "Which hand works the clasp\?"/,
    /radio "Left hand" \[checked\]/,
    /heading "What you would get" \[level=3\]/,
  ])
    expect(sized).toMatch(line);
  // The large picture follows.
  await expect.poll(() => tree(page)).toMatch(/img "Banked Fire at your size/);
  // What has changed is said once she has stopped.
  await expect.poll(() => tree(page)).toMatch(/- status: ?.*\S/);

  await tabTo(page, /^Order this piece$/);
  await page.keyboard.press('Enter');
  await page.getByLabel('Your name').waitFor();
  await tabTo(page, /^Your name/);
  await page.keyboard.type('Iris Moor');
  await tabTo(page, /^Your e-mail address/);
  await page.keyboard.type('iris@example.org');
  for (const [label, text] of [
    [/^Street and number/, '7 Ropewalk'],
    [/^Town/, 'Tenterholm'],
    [/^Postcode/, 'TH0 4ZZ'],
  ] as const) {
    await tabTo(page, label);
    await page.keyboard.type(text);
  }
  await tabTo(page, /^Send the order$/);
  await page.keyboard.press('Enter');
  await page.getByText('The maker has it').waitFor();
  expect(posted.length).toBe(1);
  expect(await tree(page)).toMatch(new RegExp(`heading ".*${posted[0]}`));
});
