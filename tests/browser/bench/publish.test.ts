/** Publishing at the bench, as she does it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { ownPlace, type Place } from '#tests/support/publishing.ts';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { tooWide, visit } from '../shop.ts';

// A publishing within each, on a machine that may be busy with other tests.
vi.setConfig({ testTimeout: 240_000 });

const PIECE = 'pieces/banked-fire.yaml';
const WORDS = 'Words that nobody has read before';
const OTHER_WORDS = 'And words after those';
const WAIT_MS = 120_000;

let place: Place;
let shop: RunningShop;
beforeAll(async () => {
  place = ownPlace();
  shop = await startShop(place.env);
});
afterAll(async () => {
  await shop.stop();
  place.remove();
});

function changeSummary(by: string): void {
  const line = /^summary: .*$/m.exec(readFileSync(join(place.content, PIECE), 'utf8'))?.[0] ?? '';
  place.change(PIECE, line, `summary: ${by}`);
}
const pieceText = async (): Promise<string> => (await fetch(`${shop.base}/pieces/banked-fire/`)).text();

test('a mistake is named with its file and how to mend it, and nothing can be published', async () => {
  place.change(PIECE, 'status: ', 'status: sold-out-');
  const { page } = await visit('/bench/publish/', {}, shop.base);
  const said = await page.locator('main').innerText();
  expect(said).toContain('To mend first');
  expect(said).toContain(PIECE);
  expect(await page.getByRole('button', { name: 'Publish' }).count()).toBe(0);
  place.change(PIECE, 'status: sold-out-', 'status: ');
});

test('what changed is listed, published with how far it is, and taken back', async () => {
  const { page, complaints } = await visit(
    '/bench/publish/',
    { viewport: { width: 360, height: 740 } },
    shop.base,
  );
  await page.getByText('Nothing has changed').waitFor();
  changeSummary(WORDS);
  await page.reload();
  expect(await page.locator('main').innerText()).toMatch(/Banked Fire: changed/);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  await page.getByRole('button', { name: 'Publish now' }).click();
  // A quick one may have ended before the page is there to show how far it is.
  await page.getByText('Everybody sees it now').waitFor({ timeout: WAIT_MS });
  expect(await pieceText()).toContain(WORDS);
  await page.getByLabel('Take back what was published last').check();
  await page.getByRole('button', { name: 'Show the shop as it was' }).click();
  await page.getByText('Taken back').waitFor({ timeout: WAIT_MS });
  expect(await pieceText()).not.toContain(WORDS);
  expect(await page.locator('main').innerText()).toMatch(/Banked Fire: changed/);
  expect(complaints).toEqual([]);
});

test('the same without JavaScript, and with the window closed meanwhile', async () => {
  changeSummary(OTHER_WORDS);
  const { page } = await visit('/bench/publish/', { javaScriptEnabled: false }, shop.base);
  await Promise.all([
    page.waitForResponse('**/publish/begin/', { timeout: WAIT_MS }),
    page.getByRole('button', { name: 'Publish now' }).click(),
  ]);
  await page.context().close();
  await vi.waitUntil(async () => (await pieceText()).includes(OTHER_WORDS), {
    timeout: WAIT_MS,
    interval: 250,
  });
  const { page: again } = await visit('/bench/publish/', { javaScriptEnabled: false }, shop.base);
  await again.getByText('Everybody sees it now').waitFor({ timeout: WAIT_MS });
});
