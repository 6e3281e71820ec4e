/** Whatever is handed in, `size` and `range` answer: no exception, no figure that is none, no endless search. */
import { expect, test } from 'vitest';
import { explainPiece } from '#core/sizing/explain.ts';
import type { Choice } from '#core/design/choice.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import type { Design } from '#core/design/design.ts';
import { focalBracelet, necklace, rules, tubeBracelet } from '../designs.ts';
import { random, randomDesign, type Random } from '../random.ts';
import { damage } from '#tests/support/damage.ts';

const DESIGNS = process.env['CLASPWISE_THOROUGH'] ? 1_000_000 : 3000;

const ASKED = { bracelet: 'wrist', anklet: 'ankle', collar: 'neck', necklace: 'length' } as const;

/** Every number in the answer is one. */
function finite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  return Object.values(value).every(finite);
}

function answer(of: Random): unknown {
  const base = of.pick<Design>([
    focalBracelet,
    tubeBracelet,
    necklace,
    randomDesign(of, of.pick(['necklace', 'bracelet', 'collar', 'anklet'] as const), {
      sections: 3,
      repeats: 4,
    }),
  ]);
  let design: unknown = base;
  for (let blows = Math.max(0, of.whole(-2, 2)); blows > 0; blows -= 1) design = damage(of, design);
  let choice: unknown = {
    measure: {
      of: of.next() < 0.8 ? ASKED[base.kind] : of.pick(Object.values(ASKED)),
      mm: of.whole(150, 450),
    },
    sit: of.pick(['snug', 'easy', 'loose']),
    hand: of.pick(['left', 'right']),
    pick: of.pick(['best', 'below', 'above']),
    quantity: of.whole(1, 3),
  };
  if (of.next() < 0.3) choice = damage(of, choice);
  const question = of.next();
  if (question < 0.1) return range(design as Design, rules);
  if (question < 0.15) {
    const found = { of: 'length', mm: of.whole(100, 500), sdMm: 1, estimates: null } as const;
    return explainPiece(design as Design, of.whole(-1, 2), found);
  }
  return size(design as Design, rules, 4800, choice as Choice);
}

test('random and hostile designs and choices', () => {
  let refused = 0;
  for (let seed = 1; seed <= DESIGNS; seed += 1) {
    const of = random(seed);
    let result: unknown;
    try {
      result = answer(of);
    } catch (error) {
      throw new Error(`seed ${seed}`, { cause: error });
    }
    if (!finite(result)) throw new Error(`seed ${seed}: a figure that is none`);
    if ((result as { status: string }).status === 'refused') refused += 1;
  }
  // Enough get through to the computation, and enough are stopped before it.
  expect(refused).toBeGreaterThan(DESIGNS / 10);
  expect(refused).toBeLessThan((DESIGNS * 9) / 10);
});
