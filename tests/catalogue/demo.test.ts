import { describe, expect, it } from 'vitest';
import { report } from '#catalogue/read/problem.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { facing } from '#core/sizing/hand/facing.ts';
import { rulePrice } from '#core/sizing/price/price.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import { describe as asListed, usual } from '#core/sizing/usual.ts';
import type { Measure } from '#core/design/choice.ts';
import { stringing } from '#core/instructions/stringing.ts';
import type { PieceKind } from '#core/design/design.ts';

// With gaps: no piece misses a common size without saying why.
const reading = readCatalogue(new URL('../../content', import.meta.url).pathname, { gaps: true });
const catalogue = reading.catalogue!;
const { rules } = catalogue.shop;

/**
 * Girths between the 1st and the 99th percentile of women and men together, rounded inwards:
 * ANSUR II (NATICK/TR-15/007, 2014), wrist 138 to 198, ankle 185 to 268, neck 291 to 467 mm. A piece
 * that the shop lists can be made for the middle of them; a necklace for 16 to 18 in., which a
 * catalogue calls the usual length (common practice, no source).
 */
const asked: Readonly<Record<PieceKind, readonly Measure[]>> = {
  bracelet: [150, 160, 170, 180].map((mm) => ({ of: 'wrist', mm })),
  anklet: [205, 216, 230].map((mm) => ({ of: 'ankle', mm })),
  collar: [310, 330, 350, 370].map((mm) => ({ of: 'neck', mm })),
  necklace: [16, 17, 18].map((inches) => ({ of: 'length', mm: inches * 25.4 })),
};

/** The one piece that is meant to hang far below the rest. */
const ropes = new Set(['ropewalk']);

describe('the demo shop', () => {
  it('has nothing to mend and nothing to remark on', () => {
    expect(report([...reading.problems, ...reading.notes], 'en')).toBe('');
  });

  it('is large enough to look through, and goes back some years', () => {
    const years = new Set(catalogue.pieces.map(({ made }) => made.slice(0, 4)));
    expect(catalogue.pieces.length).toBeGreaterThanOrEqual(40);
    expect(Object.keys(catalogue.components).length).toBeGreaterThanOrEqual(60);
    expect([...years].sort()).toEqual(['2019', '2020', '2021', '2022', '2023', '2024', '2025', '2026']);
    expect(new Set(catalogue.pieces.map(({ status }) => status)).size).toBe(3);
  });

  it('tries every turn of the model', () => {
    const designs = catalogue.pieces.map(({ design }) => design);
    expect(new Set(designs.map(({ kind }) => kind))).toEqual(
      new Set(['necklace', 'bracelet', 'anklet', 'collar']),
    );
    expect(new Set(designs.map(({ lie }) => lie))).toEqual(new Set(['single', 'side-by-side', 'nested']));
    expect(designs.some(({ strands }) => strands.some(({ mirrored }) => !mirrored))).toBe(true);
    expect(designs.some(({ hanging }) => hanging?.rings.length === 1)).toBe(true);
    expect(designs.some(({ hanging }) => hanging?.rings.length === 0)).toBe(true);
    expect(designs.some(({ oneSided, upright }) => oneSided && upright !== false)).toBe(true);
    expect(designs.some(({ oneSided, upright }) => oneSided && upright === false)).toBe(true);
    const shapes = designs.flatMap(({ components }) => Object.values(components).map(({ shape }) => shape));
    for (const shape of [
      'ball',
      'tube',
      'cap',
      'rondelle',
      'chip',
      'cube',
      'bicone',
      'drop',
      'magnetic',
      'toggle',
    ]) {
      expect(shapes).toContain(shape);
    }
  });

  it('has a use for everything in its drawers', () => {
    const used = new Set(catalogue.pieces.flatMap(({ design }) => Object.keys(design.components)));
    expect(Object.keys(catalogue.components).filter((id) => !used.has(id))).toEqual([]);
  });

  it('has words in both languages, of a fit length', () => {
    for (const piece of catalogue.pieces) {
      expect(piece.de, piece.id).not.toBeNull();
      for (const { summary, story } of [piece, piece.de!]) {
        const sentences = story.split(/[.!?](?:\s|$)/).filter((sentence) => sentence.trim() !== '');
        expect(sentences.length, piece.id).toBeGreaterThanOrEqual(2);
        expect(sentences.length, piece.id).toBeLessThanOrEqual(6);
        expect(summary.length, piece.id).toBeLessThan(130);
      }
      expect(piece.de!.story).not.toBe(piece.story);
    }
    for (const id of Object.keys(catalogue.components)) expect(catalogue.germanNames[id], id).toBeDefined();
    for (const id of Object.keys(catalogue.components)) expect(catalogue.trays[id], id).toMatch(/^[A-G]\d+$/);
    for (const id of Object.keys(catalogue.wires)) expect(catalogue.trays[`wire/${id}`], id).toBe('W1');
    const guides = (lang: string) =>
      catalogue.guides.filter((guide) => guide.lang === lang).map(({ id }) => id);
    expect(guides('de')).toEqual(guides('en'));
  });

  it.each(catalogue.pieces)('$id comes out for ordinary people, at its price', (piece) => {
    const listed = asListed(piece.design, rules, piece.listedMinor, usual(piece.design));
    expect(listed.priceMinor).toBe(piece.listedMinor);
    const { design, listedMinor } = piece;
    const known = range(design, rules);
    expect(known.status).toBe('known');
    for (const measure of ropes.has(piece.id) ? [] : asked[design.kind]) {
      const sizing = size(design, rules, listedMinor, {
        measure,
        sit: 'easy',
        hand: 'right',
        pick: 'best',
        quantity: 1,
      });
      expect(['fits', 'near'], `${piece.id} ${measure.mm}`).toContain(sizing.status);
    }
  });

  it.each(catalogue.pieces)(
    '$id can be strung and worn: wire strong enough, pendant facing front',
    (piece) => {
      const { design, listedMinor } = piece;
      const card = stringing(design, rules, asListed(design, rules, listedMinor, usual(design)), 'right');
      expect(card.strength.enough).toBe(true);
      expect(card.ends.crimp.fit).toBe('fits');
      expect(['fits', undefined]).toContain(card.ends.cover?.fit);
      for (const { tails } of card.strands)
        expect([tails.clasp.blockedBy, tails.ring.blockedBy]).toEqual([null, null]);
      expect(facing(design)?.faces ?? 'front').toBe('front');
      // A strung piece that is worn all day weighs tens of grams (common practice, no source).
      expect(card.mass.massG).toBeGreaterThan(2);
      expect(card.mass.massG).toBeLessThan(80);
    },
  );

  it.each(catalogue.pieces)('$id is priced by the rule', ({ design, listedMinor, status, made }) => {
    const rule = rulePrice(design, usual(design), rules);
    if (status === 'past') {
      // Sold at the prices of its year: at most a quarter below what it would cost now.
      expect(listedMinor / rule).toBeGreaterThan(0.75);
      expect(listedMinor).toBeLessThanOrEqual(rule);
      expect(Number(made.slice(0, 4))).toBeLessThan(2023);
    } else {
      expect(listedMinor).toBeGreaterThanOrEqual(rule);
      expect(listedMinor - rule).toBeLessThanOrEqual(500);
    }
  });
});
