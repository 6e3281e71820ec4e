/** Every piece strung by its card, literally: what hangs there is what was sized. */
import { describe, expect, it } from 'vitest';
import { stringing } from '#core/instructions/stringing.ts';
import { describe as asListed, usual } from '#core/sizing/usual.ts';
import { sizeTable } from '#ui/models/sizeRows.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { carryOut } from './hands/carryOut.ts';
import { randomWork } from './hands/designs.ts';
import { EVERY_KIND, kindsOf } from './hands/kinds.ts';

/** 250 as a rule; 10,000 where CLASPWISE_THOROUGH is set. */
const RANDOM = process.env['CLASPWISE_THOROUGH'] ? 10_000 : 250;

const catalogue = catalogueOf();

describe('the demo shop', () => {
  const pieces = catalogue?.pieces ?? [];
  it('has pieces to string', () => {
    expect(pieces.length).toBeGreaterThan(40);
  });

  it.each(pieces.map((piece) => [piece.id, piece] as const))('%s, in every size of its table', (_, piece) => {
    const { design, listedMinor } = piece;
    const rules = catalogue!.shop.rules;
    const sizes = (['en', 'de'] as const).flatMap((lang) => sizeTable(piece, rules, lang)?.rows ?? []);
    const candidates = [
      asListed(design, rules, listedMinor, usual(design)),
      ...sizes.map(({ candidate }) => candidate),
    ];
    expect(candidates.length).toBeGreaterThan(3);
    for (const candidate of candidates) {
      for (const hand of ['left', 'right'] as const) {
        const card = stringing(design, rules, candidate, hand);
        expect(carryOut({ design, rules, candidate, hand, card })).toBeNull();
      }
    }
  });
});

describe('random pieces', () => {
  it(`${RANDOM} of them, of every closing and hanging`, () => {
    const met = new Map<string, number>();
    let strung = 0;
    for (let seed = 1; strung < RANDOM; seed += 1) {
      const work = randomWork(seed);
      if (work === null) continue;
      strung += 1;
      expect(carryOut(work), `seed ${seed}`).toBeNull();
      for (const what of kindsOf(work)) met.set(what, (met.get(what) ?? 0) + 1);
    }
    for (const what of EVERY_KIND) expect(met.get(what) ?? 0, what).toBeGreaterThan(RANDOM / 200);
  });
});
