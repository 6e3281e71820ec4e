/** Bands of the trade. Common practice, no source: they catch a slip of ten, no more. */
import { describe, expect, it } from 'vitest';
import { tallyStrand } from '#core/design/tally.ts';
import { crimpFit, WIRES_IN_CRIMP } from '#core/design/ends/crimp.ts';
import { holeForWiresMm } from '#core/geometry/packing.ts';
import { flexibility } from '#core/instructions/strength.ts';
import { size } from '#core/sizing/size.ts';
import { card, component, COMPONENTS, design, RULES, section, strand } from '#tests/support/workshop.ts';

describe('common practice, no source', () => {
  // Beads to a 16 in. strand; sold strands are often 15 to 15.5 in., 5 % fewer.
  it.each([
    [3, 133],
    [4, 100],
    [6, 67],
    [8, 50],
    [10, 40],
    [12, 33],
    [16, 25],
  ])('%i mm beads to a 16 in. strand: about %i', (sizeMm, beads) => {
    const round = component('round', { alongMm: sizeMm });
    const necklace = design({
      kind: 'necklace',
      strands: [strand([section('run', [['round', 1]], { usual: beads, most: 300 })], { mirrored: false })],
      components: { ...COMPONENTS, round },
    });
    const measure = { of: 'length', mm: 406.4 + 32 } as const;
    const sized = size(necklace, RULES, 5000, {
      measure,
      sit: 'easy',
      hand: 'right',
      pick: 'best',
      quantity: 1,
    });
    if (sized.status !== 'fits' && sized.status !== 'near') throw new Error(sized.status);
    const only = necklace.strands[0];
    const count = only === undefined ? 0 : tallyStrand(only, sized.best.counts[0] ?? []).get('round');
    expect(Math.abs((count ?? 0) - beads) / beads).toBeLessThan(0.05);
  });

  it('four to six inches of wire beyond the finished length, both ends together', () => {
    for (const { cut, finishedLengthMm } of card(design()).strands) {
      expect(cut.totalMm - finishedLengthMm).toBeGreaterThan(95);
      expect(cut.totalMm - finishedLengthMm).toBeLessThan(155);
    }
  });

  it('the tail goes back through two to four beads', () => {
    const tail = card(design()).strands[0]?.tails.clasp;
    expect(tail?.beads.length).toBeGreaterThanOrEqual(2);
    expect(tail?.beads.length).toBeLessThanOrEqual(4);
  });

  it('one to three millimetres of slack for 8 mm beads', () => {
    const slackMm = card(design()).strands[0]?.slackMm ?? 0;
    expect(slackMm).toBeGreaterThan(1);
    expect(slackMm).toBeLessThan(3.5);
  });

  it.each([0.35, 0.38, 0.45, 0.48])('a crimp of 1.2 to 1.3 mm inside takes two passes of %f mm', (wireMm) => {
    const need = holeForWiresMm(WIRES_IN_CRIMP, wireMm) ?? 0;
    const crimp = component('tube', { kind: 'crimp', holeMm: 1.25 });
    expect(need).toBeLessThanOrEqual(1.25);
    expect(crimpFit(crimp, WIRES_IN_CRIMP, wireMm, 0.6).fit).toBe('fits');
  });

  it('more wires make a softer strand', () => {
    const { wire } = design();
    const order = [7, 19, 21, 49].map((strands) => flexibility({ ...wire, strands }));
    expect(order).toEqual(['stiff', 'supple', 'supple', 'softest']);
  });
});
