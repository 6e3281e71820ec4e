/** An order sized by what there is for it comes out as the shop's own page sizes with the same numbers. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { recheck } from '#bench/check/recheck.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { reaches, UNCOUNTED, withStock } from '#bench/check/there.ts';
import { size } from '#core/sizing/size.ts';
import { catalogue, frame, orderFor } from '../shop.ts';

const pieces = catalogue.pieces.filter(({ design }) => design.kind === 'bracelet').slice(0, 12);

it('is the shop’s own answer with these numbers, or what is wanted where nothing fits', () => {
  const seen = { same: 0, fewer: 0, short: 0 };
  fc.assert(
    fc.property(
      fc.constantFrom(...pieces),
      fc.integer({ min: 140, max: 190 }),
      fc.integer({ min: 1, max: 3 }),
      fc.array(fc.oneof(fc.constant(null), fc.integer({ min: 8, max: 40 }), fc.constant(90)), {
        minLength: 20,
        maxLength: 20,
      }),
      (piece, mm, quantity, numbers) => {
        const document = { ...orderFor(catalogue, piece.id, mm), quantity };
        const copy = pieceNow(catalogue, piece.id)!;
        const ids = Object.keys(copy.design.components);
        const there = (id: string): number | null => numbers[ids.indexOf(id) % numbers.length] ?? null;
        const { candidate } = recheck(document, copy, frame.now, 'desk', there);
        const limited = withStock(copy, there);
        const choice = {
          ...{ measure: { of: document.measure.of, mm: document.measure.mm }, sit: document.sit },
          ...{ hand: document.hand, pick: document.pick, quantity },
        };
        const answer = size(limited.design, copy.rules, copy.listedMinor, choice);
        const freely = recheck(document, copy, frame.now, 'desk', UNCOUNTED).candidate;
        if (answer.status === 'fits' || answer.status === 'near') {
          expect(candidate!.counts).toEqual(answer.chosen.counts);
          expect(reaches(limited.design, candidate!, quantity)).toBe(true);
          if (JSON.stringify(freely!.counts) === JSON.stringify(candidate!.counts)) seen.same += 1;
          else seen.fewer += 1;
        } else {
          expect(candidate?.counts).toEqual(freely?.counts);
          seen.short += 1;
        }
      },
    ),
    { numRuns: 300 },
  );
  expect(Math.min(seen.same, seen.fewer, seen.short), JSON.stringify(seen)).toBeGreaterThan(3);
});

it('is the same copy for the same numbers, so that what is computed of it is kept', () => {
  const copy = pieceNow(catalogue, pieces[0]!.id)!;
  const there = (): number => 7;
  expect(withStock(copy, there)).toBe(withStock(copy, there));
  expect(withStock(copy, (id) => copy.design.components[id]!.stock)).toBe(copy);
  expect(Object.values(withStock(copy, () => -3).design.components).every(({ stock }) => stock === 0)).toBe(
    true,
  );
});
