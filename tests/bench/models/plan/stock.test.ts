/** Beads handed out in turn: never more than there are, and what lacks is what there is to buy. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { handOut } from '#bench/models/plan/stock.ts';

const need = (number: string, parts: Record<string, number>) => ({
  number,
  parts: new Map(Object.entries(parts)),
});

it('serves who comes first, and names what the next one lacks', () => {
  const given = handOut(
    [need('a', { slate: 30, rain: 5 }), need('b', { slate: 30 }), need('c', { rain: 400 })],
    (id) => (id === 'slate' ? 40 : null),
  );
  expect(given.map(({ short }) => short)).toEqual([[], [{ component: 'slate', need: 30, missing: 20 }], []]);
});

it('never hands out more than there is, whatever is asked for', () => {
  let shortages = 0;
  const parts = fc.dictionary(fc.constantFrom('a', 'b', 'c'), fc.integer({ min: 1, max: 50 }));
  const stock = fc.dictionary(fc.constantFrom('a', 'b'), fc.integer({ min: 0, max: 120 }));
  fc.assert(
    fc.property(fc.array(parts, { maxLength: 8 }), stock, (all, there) => {
      const needs = all.map((one, at) => need(`n${at}`, one));
      const given = handOut(needs, (id) => there[id] ?? null);
      for (const id of ['a', 'b', 'c']) {
        const sum = given.reduce((total, one) => total + (one.given.get(id) ?? 0), 0);
        const missing = given.flatMap(({ short }) => short).filter(({ component }) => component === id);
        const lacks = missing.reduce((total, one) => total + one.missing, 0);
        const wanted = needs.reduce((total, one) => total + (one.parts.get(id) ?? 0), 0);
        const has = there[id];
        shortages += missing.length;
        if (has === undefined) expect([sum, lacks]).toEqual([0, 0]);
        else {
          expect(sum).toBeLessThanOrEqual(has);
          expect(lacks).toBe(Math.max(0, wanted - has));
        }
      }
    }),
  );
  expect(shortages).toBeGreaterThan(30);
});
