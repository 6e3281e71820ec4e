import { describe, expect, test } from 'vitest';
import type { Choice } from '#core/design/choice.ts';
import type { Rules } from '#core/design/rules.ts';
import { size } from '#core/sizing/size.ts';
import type { Design } from '#core/design/design.ts';
import { withEnds, withHanging } from '#core/design/swap.ts';
import { ball, necklace, rules } from '../designs.ts';

describe('a clasp or pendant swapped by the buyer', () => {
  const asked: Choice = {
    measure: { of: 'length', mm: 444.5 },
    sit: 'easy',
    hand: 'left',
    pick: 'best',
    quantity: 1,
  };
  const exact: Rules = { ...rules, price: { ...rules.price, roundToMinor: 1, smallerCostsLess: true } };
  const priceOf = (piece: Design, listed?: Design): number => {
    const sizing = size(piece, exact, 4800, asked, listed);
    return sizing.status === 'fits' ? sizing.chosen.priceMinor : NaN;
  };
  const asListed = priceOf(necklace);

  test('adds what the other clasp is dearer, by the shop’s rule', () => {
    const clasp = necklace.components[necklace.ends.clasp ?? '']!;
    const dear = { ...clasp, id: 'dear', costMinor: clasp.costMinor + 400 };
    const swapped = withEnds(necklace, { clasp: 'dear' }, [dear]);
    // 400 more of material at 250 %; the listed price was for the other clasp.
    expect(priceOf(swapped, necklace)).toBe(asListed + 1000);
  });

  test('adds the pendant and the work of hanging it', () => {
    const drop = { ...ball('drop', 20), kind: 'pendant', costMinor: 600 } as const;
    const hung = withHanging(necklace, { pendant: 'drop', rings: [] }, [drop]);
    expect(priceOf(hung, necklace)).toBeGreaterThanOrEqual(asListed + 1500);
    // Where it is listed with its pendant, the listed price holds the pendant too.
    expect(priceOf(hung)).toBe(asListed);
  });

  test('a listed piece that isn’t sound is refused like the piece itself', () => {
    const broken: Design = { ...necklace, strands: [] };
    expect(size(necklace, rules, 4800, asked, broken)).toMatchObject({ status: 'refused' });
  });
});
