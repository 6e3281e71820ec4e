/** Every view of every demo piece is light enough for a phone. */
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { MOST_BYTES, views } from '../views.ts';

const { catalogue } = readCatalogue(resolve(import.meta.dirname, '../../../content'));
const pieces = catalogue?.pieces ?? [];

test('there are pieces', () => {
  expect(pieces.length).toBeGreaterThan(40);
});

test.each(Object.entries(views))('the %s view of each demo piece', (_, draw) => {
  for (const { id, name, design } of pieces) {
    expect(Buffer.byteLength(draw(design, name, 'p')), id).toBeLessThan(MOST_BYTES);
  }
});
