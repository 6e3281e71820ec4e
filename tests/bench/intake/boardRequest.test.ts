/** What a board sends is read field by field, and anything else is refused before it is looked at further. */
import { expect, test } from 'vitest';
import { readBoardRequest } from '#bench/intake/boardRequest.ts';
import { namedDesign } from '#catalogue/write/authoredDesign.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const catalogue = catalogueOf();
const piece = catalogue.pieces.find(({ id }) => id === 'wash-day')!;
const sent = { digest: 'abc', about: null, design: namedDesign(piece.design) };
const read = (value: unknown) => readBoardRequest(JSON.stringify(value), piece.id, catalogue);

test('a design comes back whole, its parts out of the trays', () => {
  expect(read(sent)?.design).toEqual(piece.design);
});

test('measures sent along for a component are not believed', () => {
  const design = { ...sent.design, components: { 'silver-4': { alongMm: 400 } } };
  expect(read({ ...sent, design })?.design.components).toEqual(piece.design.components);
});

test.each([
  ['no object', []],
  ['no design', { ...sent, design: 'wash-day' }],
  ['no digest', { ...sent, digest: 7 }],
  ['words that are none', { ...sent, about: { name: 1 } }],
  ['a wire that she has not', { ...sent, design: { ...sent.design, wire: 'gold-wire' } }],
  ['a wire of the program’s own', { ...sent, design: { ...sent.design, wire: '__proto__' } }],
  ['strands that are none', { ...sent, design: { ...sent.design, strands: { length: 9 } } }],
])('%s is refused', (_, value) => {
  expect(read(value)).toBeNull();
});

test('what is cut off is refused', () => {
  expect(readBoardRequest(JSON.stringify(sent).slice(0, -9), piece.id, catalogue)).toBeNull();
});
