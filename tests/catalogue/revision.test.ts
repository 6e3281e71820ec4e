import { describe, expect, it } from 'vitest';
import { designIn, textsOf, type Piece } from '#catalogue/model/catalogue.ts';
import { restorePiece, storePiece } from '#catalogue/model/stored.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { contentFolder, type Edit } from './contentFolder.ts';

const row = 'pieces/row.yaml';
const parts = 'components/parts.yaml';

function revisionAfter(...edits: Edit[]): string {
  return catalogueOf(contentFolder(edits)).pieces[0]!.revision;
}

describe('a revision', () => {
  const before = (): string => revisionAfter();

  it('changes with what may be chosen instead', () => {
    const more = `lobster-14:\n  name: Larger clasp\n  kind: clasp\n  shape: lobster\n  along: 12 mm\n  across: 7 mm\n  material: silver\n  colour: '#dddddd'\n  cost: £3.60\n`;
    const instead = 'instead: { clasps: [{ clasp: lobster-14 }] }\nmirrored: no\n';
    expect(
      revisionAfter(
        { file: 'components/more.yaml', write: more },
        { file: row, from: 'mirrored: no\n', to: instead },
      ),
    ).not.toBe(before());
  });

  it('is twelve hexadecimal digits, the same each time', () => {
    expect(before()).toMatch(/^[0-9a-f]{12}$/);
    expect(revisionAfter()).toBe(before());
  });

  it.each<[string, Edit]>([
    ['a count', { file: row, from: 'usual: 22', to: 'usual: 21' }],
    ['a bound', { file: row, from: 'most: 27', to: 'most: 28' }],
    ['the price', { file: row, from: '£35.00', to: '£36.00' }],
    ['a bead’s size', { file: parts, from: 'size: 8 mm', to: 'size: 8.1 mm' }],
    ['a colour', { file: parts, from: '#5c8f86', to: '#5c8f87' }],
    ['the wire', { file: 'wires/wires.yaml', from: '0.019 in', to: '0.018 in' }],
  ])('changes with %s', (_what, edit) => {
    expect(revisionAfter(edit)).not.toBe(before());
  });

  it.each<[string, Edit]>([
    ['the story', { file: row, from: 'One after the other.', to: 'All in a line.' }],
    ['the stock', { file: parts, from: 'cost: £0.19', to: 'cost: £0.19\n  stock: 12' }],
    ['what a bead cost her', { file: parts, from: 'cost: £0.19', to: 'cost: £0.18' }],
    ['how a ring closes', { file: parts, from: 'kind: ring', to: 'kind: ring\n  joint: split' }],
    ['a bead’s name', { file: parts, from: 'Glass round', to: 'Round of glass' }],
    [
      'the order of fields',
      { file: row, from: 'made: 2026-09\nprice: £35.00', to: 'price: £35.00\nmade: 2026-09' },
    ],
  ])('stays with %s', (_what, edit) => {
    expect(revisionAfter(edit)).toBe(before());
  });
});

describe('pieces in the store', () => {
  const catalogue = catalogueOf();
  const { wires, components } = catalogue;

  it('come back as they went, through text', () => {
    for (const piece of catalogue.pieces) {
      const kept = JSON.parse(JSON.stringify(storePiece(piece)));
      expect(restorePiece(kept, wires, components, catalogue)).toEqual(piece);
    }
  });

  it('take a fraction of the room', () => {
    const length = (pieces: readonly object[]): number => JSON.stringify(pieces).length;
    expect(length(catalogue.pieces.map(storePiece))).toBeLessThan(length(catalogue.pieces) / 2);
  });

  it('lose nothing silently', () => {
    const kept = storePiece(catalogue.pieces[0]!);
    expect(() => restorePiece(kept, wires, {}, catalogue)).toThrow(/no component/);
    expect(() => restorePiece(kept, {}, components, catalogue)).toThrow(/no wire/);
  });

  it('speak German where they can', () => {
    const piece: Piece = catalogue.pieces.find(({ id }) => id === 'weir-light')!;
    expect(textsOf(piece, 'de').summary).toContain('Glaskugeln');
    expect(designIn(piece, 'de').components['river-8']?.name).toBe('Flussgrünes Glas, 8 mm');
    expect(designIn(piece, 'de').wire.name).toBe('Weicher Draht, 0,48 mm');
    expect(designIn(piece, 'en')).toBe(piece.design);
    expect(textsOf({ ...piece, de: null }, 'de').summary).toBe(piece.summary);
  });
});
