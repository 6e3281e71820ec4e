/** Every view of every demo piece is light enough for a phone. */
import { expect, test } from 'vitest';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { MOST_BYTES, views } from '../views.ts';

const { pieces } = catalogueOf();

test('there are pieces', () => {
  expect(pieces.length).toBeGreaterThan(40);
});

test.each(Object.entries(views))('the %s view of each demo piece', (_, draw) => {
  for (const { id, name, design } of pieces) {
    expect(Buffer.byteLength(draw(design, name, 'p')), id).toBeLessThan(MOST_BYTES);
  }
});
