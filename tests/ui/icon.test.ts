/** Browsers ask for /favicon.ico where nothing names an icon, as beside JSON: it is the shop's mark, too. */
import { readFileSync } from 'node:fs';
import sharp, { type Sharp } from 'sharp';
import { expect, test } from 'vitest';

const SIDE = 32;
const HEAD_BYTES = 22;

const pixelsOf = (picture: Sharp): Promise<Buffer> =>
  picture.resize(SIDE, SIDE).ensureAlpha().raw().toBuffer();

test('the icon that browsers ask for unasked is the mark, as a PNG in an ICO', async () => {
  const icon = readFileSync('public/favicon.ico');
  const png = icon.subarray(HEAD_BYTES);
  const head = Buffer.alloc(HEAD_BYTES);
  // An icon, of one picture: its width and height, planes, bits a pixel, bytes, and where they begin.
  for (const [value, at] of [
    [1, 2],
    [1, 4],
    [SIDE | (SIDE << 8), 6],
    [1, 10],
    [32, 12],
    [png.length, 14],
    [HEAD_BYTES, 18],
  ] as const)
    head.writeUInt16LE(value, at);
  expect(icon.subarray(0, HEAD_BYTES)).toEqual(head);

  expect(await sharp(png).metadata()).toMatchObject({ format: 'png', width: SIDE, height: SIDE });
  const [drawn, mark] = await Promise.all([
    pixelsOf(sharp(png)),
    pixelsOf(sharp('public/mark.svg', { density: 400 })),
  ]);
  const differences = drawn.map((value, at) => Math.abs(value - (mark[at] ?? 0)));
  expect(differences.reduce((sum, one) => sum + one, 0) / differences.length).toBeLessThan(3);
});
