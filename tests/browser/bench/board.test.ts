/** The bead board in a browser: what lies there is kept, and saved into its file. A bracelet from an empty board is laid in wholeRoad.test.ts. */
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { CONTENT } from '#tests/support/catalogue.ts';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { axeFindings } from '../axe.ts';
import { tooWide, visit } from '../shop.ts';

let folder: string;
let shop: RunningShop;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'board-content-'));
  cpSync(CONTENT, folder, { recursive: true });
  shop = await startShop({ CLASPWISE_CONTENT: folder });
});
afterAll(async () => {
  await shop.stop();
  rmSync(folder, { recursive: true, force: true });
});

const textOf = (id: string): string => readFileSync(join(folder, 'pieces', `${id}.yaml`), 'utf8');
const problems = () => readCatalogue(folder).problems;
const saved = (page: Page) => page.getByText('Saved', { exact: true });

test('what lies there is never lost: undone, done again, kept over a reload', async () => {
  const { page } = await visit('/bench/pieces/banked-fire/board/', {}, shop.base);
  const runs = page.locator('.run');
  const before = await runs.count();
  await page.locator('.run').last().click();
  await page.getByRole('combobox', { name: 'Find a bead' }).fill('3 heron');
  await page.getByRole('combobox', { name: 'Find a bead' }).fill('3 brass round');
  await page.keyboard.press('Enter');
  await expect.poll(() => runs.count()).toBe(before + 1);
  await page.reload();
  await expect.poll(() => runs.count()).toBe(before + 1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => runs.count()).toBe(before);
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect.poll(() => runs.count()).toBe(before + 1);
});

test('a file changed elsewhere: both versions, and nothing is saved over it unasked', async () => {
  const [first, second] = [
    await visit('/bench/pieces/tarn/board/', {}, shop.base),
    await visit('/bench/pieces/tarn/board/', {}, shop.base),
  ];
  for (const { page } of [first, second]) {
    await page.locator('.run').last().click();
    await page.keyboard.press('Tab');
    await page.getByRole('group', { name: 'How many' }).getByRole('button', { name: 'One more' }).click();
  }
  await first.page.getByRole('button', { name: 'Save', exact: true }).click();
  await saved(first.page).waitFor();
  const text = textOf('tarn');
  await second.page.getByRole('button', { name: 'One more' }).first().click();
  await second.page.getByRole('button', { name: 'Save', exact: true }).click();
  await second.page.getByText('As the file is now').waitFor();
  expect(textOf('tarn')).toBe(text);
  await second.page.getByRole('button', { name: 'Save what lies on the board into it' }).click();
  await saved(second.page).waitFor();
  expect(textOf('tarn')).not.toBe(text);
  expect(problems()).toEqual([]);
});

test('a bead is dragged from the trays to where it belongs, and taken in hand on the board', async () => {
  const { page } = await visit(
    '/bench/pieces/banked-fire/board/',
    { viewport: { width: 1280, height: 1000 } },
    shop.base,
  );
  const flock = (await page.locator('.marks').boundingBox())!;
  const middle = {
    x: flock.x + flock.width / 2,
    y: flock.y + flock.height * 0.36,
  };
  await page.mouse.click(middle.x, middle.y);
  await expect.poll(() => page.locator('.run[aria-selected=true]').textContent()).toContain('Ember');
  const tile = (await page.locator('.tile').nth(3).boundingBox())!;
  // Beside its own kind it makes that run longer.
  const beads = async (): Promise<number> => {
    const runs = await page.locator('.run').allTextContents();
    return runs.reduce((sum, run) => sum + Number(/^(\d+) ×/.exec(run)?.[1] ?? 1), 0);
  };
  const before = await beads();
  await page.mouse.move(tile.x + 30, tile.y + 20);
  await page.mouse.down();
  await page.mouse.move(tile.x - 60, tile.y, { steps: 4 });
  await page.mouse.move(middle.x + flock.width * 0.2, middle.y, { steps: 6 });
  await page.mouse.up();
  await expect.poll(beads).toBe(before + 1);
});

test.each([
  { width: 360, height: 740 },
  { width: 1024, height: 768 },
])('fits $width px, with nothing that axe minds', async (viewport) => {
  const { page } = await visit('/bench/pieces/two-locks/board/', { viewport }, shop.base);
  await page.locator('.run').first().click();
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  expect(await axeFindings(page)).toEqual([]);
});

test('is served to the bench alone', async () => {
  for (const file of ['board.js', 'board-sizes.js', 'board.css']) {
    expect((await fetch(`${shop.base}/bench/assets/${file}`)).status).toBe(200);
  }
  const posted = await fetch(`${shop.base}/bench/pieces/tarn/board/`, {
    method: 'POST',
    headers: {
      'content-type': 'application/json',
      origin: 'https://elsewhere.example',
    },
    body: '{}',
  });
  expect(posted.status).toBe(403);
  const nonsense = await fetch(`${shop.base}/bench/pieces/tarn/board/`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: shop.base },
    body: '{"digest":null,"design":{"wire":"soft-19"},"about":null}',
  });
  expect(nonsense.status).toBe(400);
});
