/** A piece looked at before it is published, while its file changes. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { alive, tooWide, visit } from '../shop.ts';

const PATH = '/bench/preview/pieces/weir-light/';
const folder = mkdtempSync(join(tmpdir(), 'preview-'));
const file = join(folder, 'pieces/weir-light.yaml');
let shop: RunningShop;

beforeAll(async () => {
  cpSync('content', folder, { recursive: true });
  shop = await startShop({ CLASPWISE_CONTENT: folder });
});
afterAll(async () => {
  await shop.stop();
  rmSync(folder, { recursive: true });
});

test('a changed name stands on the open page by itself, and the published page keeps the old one', async () => {
  const { page, complaints } = await visit(PATH, { viewport: { width: 360, height: 780 } }, shop.base);
  await alive(page);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  const before = await page.locator('h1').innerText();
  writeFileSync(file, readFileSync(file, 'utf8').replace(/^name: .*$/m, 'name: Mill Race'));
  await page.getByRole('heading', { level: 1, name: 'Mill Race' }).waitFor();
  await alive(page);
  await page.getByRole('link', { name: 'Deutsch' }).first().click();
  await page.waitForURL('**/bench/preview/de/pieces/weir-light/');
  await alive(page);
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  expect(complaints).toEqual([]);
  await page.goto('/pieces/weir-light/');
  expect(await page.locator('h1').innerText()).toBe(before);
});

test('a file that can’t be read is named, with what to do', async () => {
  const whole = readFileSync(file, 'utf8');
  writeFileSync(file, whole.replace(/^kind: .*$/m, 'kind: hat'));
  const { page, complaints } = await visit(PATH, {}, shop.base);
  await page.getByText('pieces/weir-light.yaml').first().waitFor();
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  expect(complaints).toEqual([]);
  writeFileSync(file, whole);
});
