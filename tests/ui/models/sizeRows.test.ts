import { describe, expect, test } from 'vitest';
import { range } from '#core/sizing/range.ts';
import { changesText } from '#ui/models/changesText.ts';
import { fitsOf } from '#ui/search/fitsOf.ts';
import { ASKED_BY, roundSizes, sizeTable } from '#ui/models/sizeRows.ts';
import { tally } from '#core/design/tally.ts';
import { usual } from '#core/sizing/usual.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const catalogue = catalogueOf();
const { pieces, shop } = catalogue;

describe('the table of sizes', () => {
  test.each(pieces.map((piece) => [piece.id, piece] as const))(
    '%s: every row says what it is',
    (_, piece) => {
      const table = sizeTable(piece, shop.rules, 'en');
      if (table === null) throw new Error('no table');
      expect(table.rows.length).toBeGreaterThan(0);
      const kinds = fitsOf(piece.design.kind, range(piece.design, shop.rules));
      const fits = kinds.find(({ of }) => of === ASKED_BY[piece.design.kind]);
      for (const { askedMm, candidate, within } of table.rows) {
        // Two ways to the same answer: the row's own fit, and the intervals of the range.
        const inRange = fits?.stretches.some(
          ({ leastMm, mostMm }) => leastMm - 0.02 <= askedMm && askedMm <= mostMm + 0.02,
        );
        expect(inRange, `${askedMm} mm`).toBe(within);
        // What the words say is added or left out is what the counts say.
        const before = tally(piece.design, usual(piece.design));
        const after = tally(piece.design, candidate.counts);
        const changed = [...new Set([...before.keys(), ...after.keys()])].filter(
          (id) => before.get(id) !== after.get(id),
        );
        const text = changesText({ askedMm, candidate, within }, piece.design, 'en');
        for (const id of changed) {
          const by = Math.abs((after.get(id) ?? 0) - (before.get(id) ?? 0));
          expect(text).toContain(
            `${by} ${(after.get(id) ?? 0) > (before.get(id) ?? 0) ? 'more' : 'fewer'}: `,
          );
          expect(text).toContain(piece.design.components[id]?.name);
        }
        if (changed.length === 0) expect(text).toMatch(/^as shown/);
      }
    },
  );

  test('names round sizes of the country, few enough to be read', () => {
    expect(roundSizes('bracelet', 152, 179, 'en').map((mm) => Math.round((mm / 25.4) * 1e6) / 1e6)).toEqual([
      6, 6.25, 6.5, 6.75, 7,
    ]);
    expect(roundSizes('bracelet', 152, 179, 'de')).toEqual([155, 160, 165, 170, 175]);
    expect(roundSizes('necklace', 300, 1500, 'de').length).toBeLessThanOrEqual(12);
    expect(roundSizes('bracelet', 161, 163, 'de')).toEqual([]);
  });
});
