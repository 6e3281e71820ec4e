import { describe, expect, it } from 'vitest';
import { componentsOf, designWith } from '#core/design/alternatives.ts';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import { limitsOf } from '#core/sizing/limits.ts';
import { jobOf } from '#core/sizing/job.ts';
import { AS_DESIGNED, MEASURES_OF_KIND } from '#core/design/choice.ts';
import { size } from '#core/sizing/size.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const { pieces, shop } = catalogueOf();
const offering = pieces.filter(({ alternatives }) => componentsOf(alternatives).length > 0);

/** Every choice of clasp and pendant together, as listed among them. */
const choices = offering.flatMap((piece) =>
  ['', ...piece.alternatives.clasps.map(({ clasp }) => clasp.id)].flatMap((clasp) =>
    ['', ...piece.alternatives.pendants.map(({ id }) => id)].map((pendant) => ({
      piece,
      chosen: { clasp, pendant },
    })),
  ),
);

describe('parts chosen instead', () => {
  it('are offered by some pieces of the demo shop, clasps and pendants', () => {
    expect(offering.length).toBeGreaterThanOrEqual(3);
    expect(offering.some(({ alternatives }) => alternatives.pendants.length > 0)).toBe(true);
    expect(offering.some(({ status }) => status === 'available')).toBe(true);
  });

  it('leave the design as it is where none is chosen', () => {
    const { design, alternatives } = offering[0]!;
    expect(designWith(design, alternatives, AS_DESIGNED)).toBe(design);
  });

  it('are none where the maker doesn’t offer one of them', () => {
    const { design, alternatives } = offering[0]!;
    expect(designWith(design, alternatives, { clasp: 'box-2-silver', pendant: '' })).toBe(null);
    expect(designWith(design, alternatives, { clasp: '', pendant: 'slate-drop-99' })).toBe(null);
    expect(designWith(design, alternatives, { clasp: design.ends.clasp, pendant: '' })).toBe(null);
  });

  it.each(choices.map((one) => [one.piece.id, one.chosen.clasp, one.chosen.pendant, one] as const))(
    '%s is sound, sized and never cheaper with “%s” and “%s”',
    (_id, clasp, pendant, { piece, chosen }) => {
      const { design: listed, alternatives, listedMinor } = piece;
      const design = designWith(listed, alternatives, chosen)!;
      expect(validateDesign(design)).toEqual([]);
      if (clasp !== '') expect(design.ends.clasp).toBe(clasp);
      if (pendant !== '') expect(design.hanging?.pendant).toBe(pendant);
      const of = MEASURES_OF_KIND[design.kind][0];
      const limits = limitsOf(jobOf(design, shop.rules, 1), shop.rules, of, 'easy');
      if (limits.status === 'refused') throw new Error(limits.problem.code);
      for (const mm of [limits.limits.leastAskedMm, limits.limits.mostAskedMm]) {
        const choice = {
          measure: { of, mm },
          sit: 'easy',
          hand: 'right',
          pick: 'best',
          quantity: 1,
        } as const;
        const sizing = size(design, shop.rules, listedMinor, choice, listed);
        if (sizing.status === 'refused' || sizing.status === 'outside') throw new Error(sizing.status);
        expect(sizing.chosen.priceMinor).toBeGreaterThanOrEqual(listedMinor);
      }
    },
  );
});
