/** The bead board in a browser: a bracelet laid out from an empty board, by keys alone and by touch alone, into its file. */
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

/** Goes on by Tab until a control of that name has the focus. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let step = 0; step < 80; step += 1) {
    const at = await page.evaluate(() => {
      const on = document.activeElement;
      return on?.getAttribute('name') ?? on?.textContent?.trim() ?? '';
    });
    if (at === name) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never came to ${name}`);
}

test('a bracelet from an empty board by keys alone, saved into a file without a problem', async () => {
  const { page, complaints } = await visit(
    '/bench/pieces/heron-standing/board/?kind=bracelet',
    {},
    shop.base,
  );
  // The trays' search has the focus: a new piece begins with its first bead.
  const keys = page.keyboard;
  await page.getByRole('combobox', { name: 'Find a bead' }).waitFor();
  await keys.type('ember');
  await keys.press('Shift+Enter');
  await keys.type('silver leaf');
  await keys.press('Enter');
  await keys.type('4 tar seed');
  await keys.press('Enter');
  await keys.type('silver round, 3');
  await keys.press('Enter');
  // Over to what lies there: the last two runs stand four times on each side.
  await keys.press('Escape');
  await keys.press('Shift+ArrowLeft');
  await keys.type('4r');
  const group = page.getByRole('group', { name: /^Pattern, 4 × \(3 to 5\)/ });
  await expect.poll(() => group.count()).toBe(1);
  await keys.press('Enter');
  await keys.type('2 tar seed');
  await keys.press('Enter');
  await tabTo(page, 'name');
  await keys.type('Heron Standing');
  await tabTo(page, 'summary');
  await keys.type('Black glass and silver round one ember.');
  for (let step = 0; step < 80; step += 1) {
    if (await page.evaluate(() => document.activeElement?.textContent?.trim() === 'Save')) break;
    await keys.press('Shift+Tab');
  }
  await keys.press('Enter');
  await saved(page).waitFor();
  expect(problems()).toEqual([]);
  const design = readCatalogue(folder).catalogue!.pieces.find(({ id }) => id === 'heron-standing')!.design;
  expect(design.strands[0]?.sections.map(({ role, usual, motif }) => [role, usual, motif.length])).toEqual([
    ['focal', 1, 1],
    ['body', 1, 1],
    ['body', 4, 2],
    ['body', 1, 1],
  ]);
  expect(complaints).toEqual([]);
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
  await page.getByRole('button', { name: 'Save', exact: true }).tap();
  await saved(page).waitFor();
  expect(problems()).toEqual([]);
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
    { viewport: { width: 1280, height: 900 } },
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
