/** Every kind of part by itself: whole in its picture, large enough to be seen, small beside large ones. */
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import type { Component } from '#core/design/component.ts';
import { groundFor, paintGround } from '#draw/paint/ground.ts';
import { mixInk } from '#draw/paint/ink/ink.ts';
import { svgDocument } from '#draw/svg/document.ts';
import { CARD_BOX } from '#draw/drawings/card.ts';
import { drawPart } from '#draw/drawings/part.ts';
import { pieces } from '../designs.ts';

const caption = { title: 'A part', description: 'by itself', idPrefix: 'p' };

/** Each part of the samples once, with a design that has it. */
const parts = new Map(
  pieces.flatMap((design) =>
    Object.values(design.components).map((component) => [component.id, { design, component }] as const),
  ),
);

const WIDTH = CARD_BOX.width;

const pixels = (svg: string): Promise<Buffer> =>
  sharp(Buffer.from(svg), { density: 72 }).resize({ width: WIDTH }).removeAlpha().raw().toBuffer();

function bareGround(component: Component): string {
  const ink = mixInk('p');
  const seen = { ...component, alongMm: Math.max(component.alongMm, component.hangMm) };
  const painted = paintGround(ink, CARD_BOX, groundFor([seen]));
  return svgDocument(caption, CARD_BOX, ink.definitions(), painted);
}

/** Where the drawing differs from its bare ground: pixels, and the distance of the nearest to the edge. */
async function seenOf(svg: string, component: Component): Promise<{ count: number; marginPx: number }> {
  const [drawn, bare] = await Promise.all([pixels(svg), pixels(bareGround(component))]);
  let count = 0;
  let marginPx = WIDTH;
  for (let at = 0; at < drawn.length; at += 3) {
    const off = [0, 1, 2].some((i) => Math.abs((drawn[at + i] ?? 0) - (bare[at + i] ?? 0)) > 24);
    if (!off) continue;
    const x = (at / 3) % WIDTH;
    const y = Math.floor(at / 3 / WIDTH);
    count += 1;
    marginPx = Math.min(marginPx, x, y, WIDTH - 1 - x, CARD_BOX.height - 1 - y);
  }
  return { count, marginPx };
}

describe.each([...parts])('%s', (_, { design, component }) => {
  test('stands whole in its picture, and is seen', async () => {
    const { count, marginPx } = await seenOf(drawPart(design, component, caption), component);
    expect(count).toBeGreaterThan((WIDTH * CARD_BOX.height) / 100);
    expect(marginPx).toBeGreaterThan(2);
  });

  test('is a small file, the same each time', () => {
    const svg = drawPart(design, component, caption);
    expect(svg.length).toBeLessThan(10 * 1024);
    expect(drawPart(design, component, caption)).toBe(svg);
  });
});

test('the samples have parts of every kind', () => {
  const kinds = new Set([...parts.values()].map(({ component }) => component.kind));
  expect([...kinds].sort()).toEqual(
    expect.arrayContaining(['bead', 'cap', 'clasp', 'pendant', 'ring', 'spacer']),
  );
});

test('a bead of half the size is never shown larger', async () => {
  const { design, component } =
    [...parts.values()].find(({ component: { shape } }) => shape === 'ball') ?? {};
  if (design === undefined || component === undefined) throw new Error('no ball among the samples');
  const scaleAt = (sizeMm: number): number => {
    const sized = { ...component, alongMm: sizeMm, acrossMm: sizeMm, roundingMm: sizeMm / 2 };
    const scale = Number(/scale\(([\d.]+)\)/.exec(drawPart(design, sized, caption))?.[1]);
    return scale * sizeMm;
  };
  const seen = [2, 4, 8, 16, 32].map(scaleAt);
  expect(seen.every((size) => size > 0)).toBe(true);
  expect(seen).toEqual([...seen].sort((a, b) => a - b));
});
