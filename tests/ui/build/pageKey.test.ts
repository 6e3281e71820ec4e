import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Catalogue, Piece } from '#catalogue/model/catalogue.ts';
import { pageKeys } from '#ui/build/pageKey.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

let folder = '';
let whole: Catalogue;
let pictured: Piece;
let other: Piece;
beforeAll(() => {
  const catalogue = catalogueOf();
  const [first, second] = catalogue.pieces;
  if (first === undefined || second === undefined) throw new Error('no two pieces');
  // The key takes the bytes as they are; they needn't be a photograph.
  folder = mkdtempSync(join(tmpdir(), 'keys-'));
  writeFileSync(join(folder, 'front.jpg'), 'bytes');
  const picture = {
    file: 'front.jpg',
    format: 'jpeg',
    alt: { en: 'On grey.', de: null },
    crop: null,
  } as const;
  whole = catalogue;
  [pictured, other] = [
    { ...first, pictures: [picture] },
    { ...second, pictures: [] },
  ];
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** The key a fresh build would give, which remembers nothing of the one before. */
const key = (props: object, frame: unknown = { shop: whole.shop }, everywhere = 'code'): string =>
  pageKeys({ everywhere, contentFolder: folder })(frame, props);

const props = (): { lang: string; piece: Piece; kin: readonly Piece[] } => ({
  lang: 'en',
  piece: pictured,
  kin: [other],
});

test('the same page has the same key in the next build, whichever objects carry it', () => {
  const again = structuredClone(props());
  expect(key(again)).toBe(key(props()));
  expect(key(props())).toMatch(/^[0-9a-f]{24}$/);
});

test.each([
  ['name', (p: Piece) => ({ ...p, name: `${p.name}!` })],
  ['price', (p: Piece) => ({ ...p, listedMinor: p.listedMinor + 1 })],
  ['design', (p: Piece) => ({ ...p, design: { ...p.design, strands: p.design.strands.slice(1) } })],
])('a piece with another %s is another page, its own or among the kin', (_, change) => {
  expect(key({ ...props(), piece: change(pictured) })).not.toBe(key(props()));
  expect(key({ ...props(), kin: [change(other)] })).not.toBe(key(props()));
});

test('kin in another order, or gone, is another page', () => {
  const two = { ...props(), kin: [other, pictured] };
  expect(key({ ...two, kin: [pictured, other] })).not.toBe(key(two));
  expect(key({ ...props(), kin: [] })).not.toBe(key(props()));
});

test('language, shop, guides and code each are part of the key', () => {
  const before = key(props());
  expect(key({ ...props(), lang: 'de' })).not.toBe(before);
  expect(key(props(), { shop: { ...whole.shop, name: 'Another' } })).not.toBe(before);
  expect(key(props(), { shop: whole.shop, guides: ['new'] })).not.toBe(before);
  expect(key(props(), { shop: whole.shop }, 'other code')).not.toBe(before);
});

test('one byte of a photograph is another page, also where it is only among the kin', () => {
  const own = key(props());
  const far = key({ ...props(), piece: other, kin: [pictured] });
  const without = key({ ...props(), piece: other, kin: [] });
  const [picture] = pictured.pictures;
  if (picture === undefined) throw new Error('no photograph');
  const file = join(folder, picture.file);
  const bytes = readFileSync(file);
  writeFileSync(file, Buffer.concat([bytes, Buffer.from([0])]));
  try {
    expect(key(props())).not.toBe(own);
    expect(key({ ...props(), piece: other, kin: [pictured] })).not.toBe(far);
    expect(key({ ...props(), piece: other, kin: [] })).toBe(without);
  } finally {
    writeFileSync(file, bytes);
  }
});

test('the demo catalogue: no two pages of pieces share a key', () => {
  const keyOf = pageKeys({ everywhere: 'code', contentFolder: 'content' });
  const keys = whole.pieces.flatMap((piece) =>
    ['en', 'de'].map((lang) => keyOf({ shop: whole.shop }, { lang, piece, kin: [] })),
  );
  expect(new Set(keys).size).toBe(2 * whole.pieces.length);
});
