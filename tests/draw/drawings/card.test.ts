/** The picture of a piece shows what hangs from it, whole, whether it is draped or lies closed. */
import sharp from 'sharp';
import { expect, test } from 'vitest';
import type { Design } from '#core/design/design.ts';
import { CARD_BOX, drawCard } from '#draw/drawings/card.ts';
import { pieces, usualSequences } from '../designs.ts';

const hung = pieces.find(({ hanging }) => hanging !== null);
if (hung === undefined) throw new Error('expected a sample with a pendant');

const { width, height } = CARD_BOX;

const card = (design: Design): string =>
  drawCard(design, usualSequences(design), { title: 'A piece', description: '', idPrefix: 'p' });

async function pixels(svg: string): Promise<Buffer> {
  return sharp(Buffer.from(svg)).resize({ width }).removeAlpha().raw().toBuffer();
}

/** How far a row of pixels is from a smooth ground: the largest step between neighbours. */
function roughness(image: Buffer, row: number): number {
  let most = 0;
  for (let x = 1; x < width; x += 1) {
    const at = (row * width + x) * 3;
    most = Math.max(most, Math.abs((image[at] ?? 0) - (image[at - 3] ?? 0)));
  }
  return most;
}

test.each(['necklace', 'bracelet', 'anklet', 'collar'] as const)('%s', async (kind) => {
  const design: Design = { ...hung, kind };
  const bare: Design = { ...design, hanging: null };
  expect(card(design).match(/<use/g)?.length ?? 0).toBeGreaterThan(card(bare).match(/<use/g)?.length ?? 0);
  const image = await pixels(card(design));
  // Rough where the pendant is, smooth at the lower edge: nothing of it is cut off.
  const rows = Array.from({ length: 4 }, (_, from) => roughness(image, height - 1 - from));
  expect(Math.max(...rows)).toBeLessThan(12);
  const lower = Array.from({ length: Math.round(height / 3) }, (_, from) =>
    roughness(image, height - 5 - from),
  );
  expect(Math.max(...lower)).toBeGreaterThan(24);
});
