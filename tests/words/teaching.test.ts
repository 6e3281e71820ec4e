/** The words of a tutorial: every step's places are there in both languages, and hers stand in for the usual ones. */
import { describe, expect, it } from 'vitest';
import type { Step } from '#core/instructions/step.ts';
import { stringing } from '#core/instructions/stringing.ts';
import { usual } from '#core/sizing/usual.ts';
import { describe as describePiece } from '#core/sizing/usual.ts';
import { formatFor } from '#words/format.ts';
import { LANGS } from '#words/lang.ts';
import { fillPlaces, placesIn, TEACH_PLACES, TEACH_STEPS } from '#words/teachStep.ts';
import { teachingWords } from '#words/words.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { randomWork } from '#tests/judges/hands/designs.ts';

const { shop, pieces } = catalogueOf();

/** Steps of the demo shop's pieces and of random ones, so that every step there is is among them. */
const STEPS: readonly Step[] = [
  ...pieces.flatMap(({ design, listedMinor }) => {
    const listed = describePiece(design, shop.rules, listedMinor, usual(design));
    return stringing(design, shop.rules, listed, 'right').steps;
  }),
  ...Array.from({ length: 60 }, (_, seed) => randomWork(seed + 1)?.card.steps ?? []).flat(),
];

describe.each(LANGS)('in %s', (lang) => {
  const words = teachingWords(lang);
  const format = formatFor(lang, 'in', 'GBP');

  it('the usual words of every step have its places, those that hands need all of them', () => {
    const met = new Set<string>();
    for (const step of STEPS) {
      met.add(step.code);
      const { needed, offered } = TEACH_PLACES[step.code];
      const there = placesIn(words.usual(step));
      expect(there, step.code).toEqual(expect.arrayContaining([...needed]));
      for (const place of there) expect([...needed, ...offered], step.code).toContain(place);
    }
    expect([...met].sort()).toEqual([...TEACH_STEPS].sort());
  });

  it('every sentence is whole: no place is left, no gap, and it ends', () => {
    for (const step of STEPS) {
      const said = words.step(step, format, (id) => id, {});
      expect(said).not.toMatch(/[{}]| {2}| [.,;:]|undefined|NaN/);
      expect(said).toMatch(/^\S.*[.!]$/s);
    }
  });

  it('her own words get the size’s figures, whatever the step', () => {
    for (const step of STEPS) {
      const { needed, offered } = TEACH_PLACES[step.code];
      const own = [...needed, ...offered].map((place) => `{${place}}`).join(' | ');
      const said = words.step(step, format, (id) => id, { [step.code]: `Mine: ${own}` });
      expect(said).toMatch(/^Mine:/);
      expect(placesIn(said)).toEqual([]);
    }
  });
});

it('leaves braces alone that are no places of the step', () => {
  expect(fillPlaces('Cut {length} , then {rest} .', { length: '9 mm' })).toBe('Cut 9 mm, then {rest}.');
});
