import { describe, expect, it } from 'vitest';
import { careOf } from '#catalogue/facts/care.ts';
import { cautionsOf } from '#catalogue/facts/cautions.ts';
import { colourFamily, familyOf, oklch } from '#catalogue/facts/colour.ts';
import { facetsOf, sharesOf } from '#catalogue/facts/facets.ts';
import { beadIndex, relatedPieces } from '#catalogue/facts/related.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const { pieces, components } = catalogueOf();
const piece = (id: string) => pieces.find((one) => one.id === id)!;

describe('colours', () => {
  it('agree with Oklab’s published examples', () => {
    // CSS Color 4, sample conversions of the sRGB primaries to OKLCh (W3C): red 0.628 0.258 29.23,
    // lime 0.866 0.295 142.5, blue 0.452 0.313 264.05.
    const published = [
      ['#ff0000', 0.628, 0.258, 29.23],
      ['#00ff00', 0.866, 0.295, 142.5],
      ['#0000ff', 0.452, 0.313, 264.05],
    ] as const;
    for (const [colour, lightness, chroma, hue] of published) {
      const found = oklch(colour);
      expect(found.lightness).toBeCloseTo(lightness, 2);
      expect(found.chroma).toBeCloseTo(chroma, 2);
      expect(found.hue).toBeCloseTo(hue, 1);
    }
  });

  it.each([
    // CSS Color 4 named colours, each in the family that its name says.
    ['#ffffff', 'white'],
    ['#808080', 'grey'],
    ['#000000', 'black'],
    ['#8b4513', 'brown'],
    ['#ff0000', 'red'],
    ['#ffc0cb', 'pink'],
    ['#ffa500', 'orange'],
    ['#ffff00', 'yellow'],
    ['#008000', 'green'],
    ['#0000ff', 'blue'],
    ['#800080', 'purple'],
  ])('%s is %s', (colour, family) => {
    expect(colourFamily(colour)).toBe(family);
  });

  it('call metals by their tone', () => {
    expect(familyOf(components['silver-3']!.look)).toBe('silver');
    expect(familyOf(components['brass-3']!.look)).toBe('gold');
    expect(familyOf(components['copper-3']!.look)).toBe('copper');
  });
});

describe('what a piece is found by', () => {
  it('shares add up to the whole', () => {
    for (const { design } of pieces) {
      expect(sharesOf(design).reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    }
  });

  it('names what is most seen first', () => {
    expect(facetsOf(piece('banked-fire'))).toMatchObject({
      kind: 'bracelet',
      year: 2026,
      closing: 'lobster',
      strands: 1,
    });
    expect(facetsOf(piece('weir-light'))).toMatchObject({ materials: ['glass'], colours: ['green'] });
    expect(facetsOf(piece('still-pool'))).toMatchObject({ materials: ['pearl'], colours: ['white'] });
  });
});

describe('cautions and care follow from the components', () => {
  it('cautions, gravest first', () => {
    expect(cautionsOf(piece('lodestone-lane').design)).toEqual(['magnet', 'small-parts', 'sharp']);
    expect(cautionsOf(piece('first-frost').design)).toEqual(['small-parts', 'lead']);
    expect(cautionsOf(piece('thaw').design)).toEqual(['strangling', 'small-parts']);
    expect(cautionsOf(piece('selvedge').design)).toContain('nickel');
  });

  it('care names the materials that ask for it', () => {
    const care = careOf(piece('harvest-moon').design);
    expect(care.find(({ against }) => against === 'perfume')?.materials).toContain('amber');
    expect(care.find(({ against }) => against === 'water')?.materials).toContain('boxwood');
    expect(care.find(({ against }) => against === 'scratching')?.materials).toEqual(['amber']);
  });
});

describe('pieces with the same beads', () => {
  const index = beadIndex(pieces);

  it('share a bead, never name the piece itself, and come nearest first', () => {
    let found = 0;
    for (const one of pieces) {
      const own = new Set(sharesOf(one.design).map(({ component }) => component.id));
      const related = relatedPieces(one, index, 4);
      expect(related).not.toContain(one);
      expect(related.length).toBeLessThanOrEqual(4);
      found += related.length;
      for (const other of related) {
        expect(sharesOf(other.design).some(({ component }) => own.has(component.id))).toBe(true);
      }
    }
    expect(found).toBeGreaterThan(2 * pieces.length);
  });

  it('put a rare bead in common before a common one', () => {
    // Labradorite is in two pieces only, small silver rounds in many.
    expect(relatedPieces(piece('dusk-ferry'), index, 1)[0]?.id).toBe('beck-and-leat');
    expect(relatedPieces(piece('dipper'), index, 1)[0]?.id).toBe('tide-table');
  });
});
