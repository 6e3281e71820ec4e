/** The whole road of a new bracelet: laid out from an empty board, by keys alone or by touch alone; described, photographed, previewed, published, found, ordered in another size. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { ownPlace, type Place } from '#tests/support/publishing.ts';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { fillIn, giveSize, sizer, standing, type Wish } from '../order/buyer.ts';
import { alive, visit } from '../shop.ts';

// A publishing within, on a machine that may be busy with other tests.
vi.setConfig({ testTimeout: 240_000 });

const HEIC = readFileSync(new URL('../../fixtures/photographs/telephone.heic', import.meta.url));

let place: Place;
let shop: RunningShop;
beforeAll(async () => {
  place = ownPlace();
  shop = await startShop({ ...place.env, CLASPWISE_DESK_PER_MINUTE: '0' });
});
afterAll(async () => {
  await shop.stop();
  place.remove();
});

const textOf = (id: string): string => readFileSync(join(place.content, 'pieces', `${id}.yaml`), 'utf8');
const saved = (page: Page) => page.getByText('Saved', { exact: true });

/** Goes on by Tab until a control of that name, or with that text, has the focus. */
async function tabTo(page: Page, name: string, key = 'Tab'): Promise<void> {
  for (let step = 0; step < 120; step += 1) {
    const at = await page.evaluate(() => {
      const on = document.activeElement;
      return on?.getAttribute('name') ?? on?.textContent?.trim() ?? '';
    });
    if (at === name) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${key} never came to ${name}`);
}

/** Puts beads on an empty board and saves, all by keys. Begins on the page that asks for a new piece. */
async function layByKeys(page: Page, name: string): Promise<void> {
  const keys = page.keyboard;
  await tabTo(page, 'name');
  await keys.type(name);
  await keys.press('Enter');
  // The trays' search has the focus: a new piece begins with its first bead.
  await page.getByRole('combobox', { name: 'Find a bead' }).waitFor();
  await keys.type('ember');
  await keys.press('Shift+Enter');
  for (const bead of ['silver leaf', '4 tar seed', 'silver round, 3']) {
    await keys.type(bead);
    await keys.press('Enter');
  }
  // Over to what lies there: the last two runs stand four times on each side.
  await keys.press('Escape');
  await keys.press('Shift+ArrowLeft');
  await keys.type('4r');
  const group = page.getByRole('group', { name: /^Pattern, 4 × \(3 to 5\)/ });
  await expect.poll(() => group.count()).toBe(1);
  await keys.press('Enter');
  await keys.type('2 tar seed');
  await keys.press('Enter');
  await tabTo(page, 'summary');
  await keys.type('Black glass and silver round one ember.');
  await tabTo(page, 'Save', 'Shift+Tab');
  await keys.press('Enter');
  await saved(page).waitFor();
}

async function photograph(page: Page, name: string, buffer: Buffer, alt: string): Promise<void> {
  const form = page.locator('[data-progress]');
  await form.getByLabel('Photograph').setInputFiles({ name, mimeType: 'image/jpeg', buffer });
  await form.getByLabel('What it shows').fill(alt);
  await form.locator('button').click();
  await page.locator(`img[alt="${alt}"]`).waitFor();
}

const wish: Wish = {
  field: 'Round your wrist',
  size: '17 cm',
  hand: 'Left hand',
  name: 'Orla Finch',
  email: 'orla@example.org',
  note: '',
  to: null,
};

test('from an empty board to the order of a buyer who found it', async () => {
  const { page, complaints } = await visit('/bench/pieces/new/', {}, shop.base);
  await layByKeys(page, 'Heron Standing');
  const laid = readCatalogue(place.content);
  expect(laid.problems).toEqual([]);
  const piece = laid.catalogue?.pieces.find(({ id }) => id === 'heron-standing');
  expect(
    piece?.design.strands[0]?.sections.map(({ role, usual, motif }) => [role, usual, motif.length]),
  ).toEqual([
    ['focal', 1, 1],
    ['body', 1, 1],
    ['body', 4, 2],
    ['body', 1, 1],
  ]);

  // What it says and costs; looked at before it is saved.
  await page.getByRole('link', { name: 'Words and price' }).click();
  await page.getByLabel('Price', { exact: false }).first().fill('£46.00');
  await page.getByLabel('Its story').first().fill('It stands by the weir, one leg up.');
  const [draft] = await Promise.all([
    page.waitForEvent('popup'),
    page.getByRole('button', { name: 'Preview', exact: true }).click(),
  ]);
  await draft.getByText('It stands by the weir').waitFor();
  expect(textOf('heron-standing')).not.toContain('weir');
  await draft.close();
  await page.getByRole('button', { name: 'Save', exact: true }).filter({ visible: true }).last().click();
  await page.getByRole('status').getByText('Saved').waitFor();

  await page.getByRole('link', { name: 'Photographs' }).click();
  const jpeg = await sharp({ create: { width: 800, height: 600, channels: 3, background: '#885' } })
    .jpeg()
    .toBuffer();
  await photograph(page, 'IMG_1.JPG', jpeg, 'On grey slate.');
  await photograph(page, 'IMG_2.HEIC', HEIC, 'On a blue cloth.');
  await page.getByRole('link', { name: 'Preview' }).click();
  await page.waitForURL('**/bench/preview/**');
  await alive(page);
  const shown = page.locator('.plate img[alt="On grey slate."]').first();
  await expect.poll(() => shown.evaluate((img: HTMLImageElement) => img.naturalWidth)).toBeGreaterThan(0);
  expect((await fetch(`${shop.base}/pieces/heron-standing/`)).status).toBe(404);

  await page.getByRole('link', { name: 'Publish' }).click();
  expect(await page.locator('main').innerText()).toContain('Heron Standing: new');
  await page.getByRole('button', { name: 'Publish now' }).click();
  await page.getByText('Everybody sees it now').waitFor({ timeout: 120_000 });

  const { page: buyer, complaints: hers } = await visit('/find/', {}, shop.base);
  await buyer.locator('#find-words').fill('heron');
  await buyer.locator('#find-results a[href$="/pieces/heron-standing/"]').click();
  await buyer.waitForURL('**/pieces/heron-standing/');
  await giveSize(buyer, wish);
  await fillIn(buyer, wish);
  await sizer(buyer).getByRole('button', { name: 'Send the order' }).click();
  await expect.poll(async () => (await standing(buyer)).text).toMatch(/^The maker has it/);
  const { number } = await standing(buyer);

  await page.goto('/bench/');
  await page.getByRole('link', { name: number }).click();
  const order = await page.locator('main').innerText();
  for (const said of ['Heron Standing', 'Orla Finch', '17 cm']) expect(order).toContain(said);
  expect([...complaints, ...hers]).toEqual([]);
});

test('the same by touch alone, on a screen of 1024 × 768', async () => {
  const screen = {
    viewport: { width: 1024, height: 768 },
    hasTouch: true,
    isMobile: false,
  };
  const { page, complaints } = await visit(
    '/bench/pieces/heron-fishing/board/?kind=bracelet',
    screen,
    shop.base,
  );
  const tap = (name: string | RegExp) =>
    page.getByRole('option', { name }).filter({ visible: true }).first().tap();
  await page.getByText('in the middle', { exact: true }).tap();
  await page.getByRole('combobox', { name: 'Find a bead' }).fill('ember');
  await tap(/^Ember/);
  await page.getByRole('combobox', { name: 'Find a bead' }).fill('tar seed');
  await tap(/^Tar-black seed/);
  await page.getByRole('combobox', { name: 'Find a bead' }).fill('silver round, 3');
  await tap(/^Silver round, 3/);
  // More of the first run, then both marked by a finger drawn over the list's runs.
  await tap('Tar-black seed bead, 6/0');
  for (let more = 0; more < 3; more += 1) await page.getByRole('button', { name: 'One more' }).first().tap();
  await page.getByRole('button', { name: 'Mark all of it' }).tap();
  await page.getByRole('button', { name: 'This repeats' }).tap();
  for (let more = 0; more < 3; more += 1) {
    await page
      .getByRole('group', { name: 'Times, on each side' })
      .getByRole('button', { name: 'One more' })
      .tap();
  }
  await page.getByLabel('What is it called?').fill('Heron Fishing');
  await page.getByLabel('One line about it, for the list').fill('It strikes.');
  // Seen as buyers would see it, before there is a file.
  const [draft] = await Promise.all([
    page.waitForEvent('popup'),
    page.getByRole('button', { name: 'Preview', exact: true }).tap(),
  ]);
  await draft.getByRole('heading', { level: 1, name: 'Heron Fishing' }).waitFor();
  await draft.getByRole('button', { name: 'Deutsch' }).tap();
  await draft.waitForURL('**/preview/de/pieces/heron-fishing/');
  await draft.close();
  await page.getByRole('button', { name: 'Save', exact: true }).tap();
  await saved(page).waitFor();
  expect(readCatalogue(place.content).problems).toEqual([]);
  expect(textOf('heron-fishing')).toContain('4 seed-6-tar');
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('.bead-board :is(button, select, summary, input, .run, .tile)')].flatMap(
      (one) => {
        const { width, height } = one.getBoundingClientRect();
        const isBox = one instanceof HTMLInputElement && /checkbox|radio/.test(one.type);
        const shown = width > 0 && !isBox;
        return shown && (height < 44 || width < 44)
          ? [`${one.className || one.textContent} ${width} × ${height}`]
          : [];
      },
    ),
  );
  expect(small).toEqual([]);
  expect(complaints).toEqual([]);
});
