/** Photographs put on a piece at the bench: from a camera and from a telephone, described, cut, and looked at before they are published. */
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { alive, tooWide, visit } from '../shop.ts';

const PATH = '/bench/pieces/weir-light/photos/';
const HEIC = readFileSync(new URL('../../fixtures/photographs/telephone.heic', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'photos-'));
const textNow = (): string => readFileSync(join(folder, 'pieces/weir-light.yaml'), 'utf8');
let shop: RunningShop;
let jpeg: Buffer;

beforeAll(async () => {
  cpSync('content', folder, { recursive: true });
  jpeg = await sharp({ create: { width: 800, height: 600, channels: 3, background: '#885' } })
    .jpeg()
    .withExif({ IFD0: { Make: 'Camera Works' } })
    .withMetadata({ orientation: 6 })
    .toBuffer();
  shop = await startShop({ CLASPWISE_CONTENT: folder });
});
afterAll(async () => {
  await shop.stop();
  rmSync(folder, { recursive: true });
});

test('a photograph from a camera and one from a telephone, described, cut, turned round, seen before they are published', async () => {
  const { page, complaints } = await visit(PATH, { viewport: { width: 360, height: 780 } }, shop.base);
  const add = async (name: string, buffer: Buffer, alt: string): Promise<void> => {
    const form = page.locator('[data-progress]');
    await form.getByLabel('Photograph').setInputFiles({ name, mimeType: 'image/jpeg', buffer });
    await form.getByLabel('What it shows').fill(alt);
    await form.getByLabel('The same in German').fill(`${alt} (deutsch)`);
    await form.locator('button').click();
    await page.locator(`img[alt="${alt}"]`).waitFor();
  };
  await add('IMG_1.JPG', jpeg, 'On grey slate.');
  await add('IMG_2.HEIC', HEIC, 'On a blue cloth.');
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  // Upright: it was taken lying.
  expect(
    await page
      .locator('img[alt="On grey slate."]')
      .evaluate((img) => [img.getAttribute('width'), img.getAttribute('height')]),
  ).toEqual(['600', '800']);
  await page.getByRole('button', { name: 'Square in the middle' }).first().click();
  await expect.poll(textNow).toContain('crop: 0% 12.5% 100% 75%');
  await page.getByRole('button', { name: /^Move forward/ }).click();
  await expect
    .poll(() => textNow().indexOf('On a blue cloth.') < textNow().indexOf('On grey slate.'))
    .toBe(true);
  expect(textNow()).toContain('alt-de: On grey slate. (deutsch)');
  await page.getByRole('link', { name: 'Preview' }).click();
  await alive(page);
  const first = page.locator('.plate img[alt="On a blue cloth."]');
  await first.waitFor();
  await expect.poll(() => first.evaluate((img: HTMLImageElement) => img.naturalWidth)).toBeGreaterThan(0);
  expect(complaints).toEqual([]);
});

test('a part is drawn with the pointer', async () => {
  const { page } = await visit(PATH, {}, shop.base);
  await page.locator('summary').first().click();
  const box = await page.locator('.crop-picture').first().boundingBox();
  if (box === null) throw new Error('no picture');
  await page.mouse.move(box.x + box.width * 0.25, box.y + box.height * 0.5);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.75, box.y + box.height * 0.9, { steps: 4 });
  await page.mouse.up();
  await page.getByRole('button', { name: 'Show this part' }).first().click();
  await expect.poll(textNow).toMatch(/crop: (2[45]|25)(\.\d)?% (50|49)(\.\d)?% 50(\.\d)?% (40|39)(\.\d)?%/);
});

test('what is no photograph is named beside what was typed, with script and without', async () => {
  for (const javaScriptEnabled of [true, false]) {
    const { page } = await visit(PATH, { javaScriptEnabled }, shop.base);
    const before = textNow();
    const form = page.locator('[data-progress]');
    await form.getByLabel('Photograph').setInputFiles({
      name: 'flower.jpg',
      mimeType: 'image/jpeg',
      buffer: Buffer.from('PK\x03\x04 packed'),
    });
    await form.getByLabel('What it shows').fill('A flower.');
    await form.locator('button').click();
    await page.getByRole('alert').getByText('packed folder').waitFor();
    expect(await form.getByLabel('What it shows').inputValue()).toBe('A flower.');
    expect(textNow()).toBe(before);
  }
});

test('two windows: the second is told, and no file is left over', async () => {
  const { page } = await visit(PATH, {}, shop.base);
  const { page: other } = await visit(PATH, {}, shop.base);
  await other
    .getByRole('button', { name: /^Take it away/ })
    .first()
    .click();
  await expect.poll(() => other.locator('.photo').count()).toBe(1);
  await page.getByRole('button', { name: 'Square in the middle' }).first().click();
  await page.getByRole('alert').getByText('another window').waitFor();
  expect(textNow().match(/file:/g)).toHaveLength(1);
});
