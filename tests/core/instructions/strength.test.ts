/** What pulls on the wire against what it bears. */
import { describe, expect, it } from 'vitest';
import { flexibility, strengthOf, wireBreak } from '#core/instructions/strength.ts';
import { design, RULES } from '#tests/support/workshop.ts';

describe('strength', () => {
  const { wire } = design();

  it('goes by the rating where there is one, crimp loss left out', () => {
    expect(wireBreak({ ...wire, breakN: 90 })).toEqual({
      breakN: 90,
      basis: 'rated',
      caveats: ['no-crimp-loss'],
    });
  });

  it('a make that isn’t known is taken for the weakest known one, and said so', () => {
    const odd = wireBreak({ ...wire, strands: 33 });
    const known = [7, 19, 21, 49].map((strands) => wireBreak({ ...wire, strands }).breakN);
    expect(odd.breakN).toBe(Math.min(...known));
    expect(odd.caveats).toEqual([
      'no-crimp-loss',
      'bare-metal-estimate',
      'coating-assumed',
      'strands-assumed',
    ]);
  });

  it('a wire no thicker than its coating bears nothing', () => {
    expect(wireBreak({ ...wire, diameterMm: 0.02 }).breakN).toBe(0);
  });

  // Geometric fill of equal round wires: 1x7 0.7778, 1x19 0.76, 3x7 0.5026 (closed forms).
  it.each([
    [7, 0.777777778],
    [19, 0.76],
    [21, 0.502577388],
  ])('%i wires fill %f of their circle', (strands, fill) => {
    const { breakN } = wireBreak({ ...wire, strands, diameterMm: 1.03 });
    expect(breakN / (1960 * (Math.PI / 4) * (0.388 / 0.432))).toBeCloseTo(fill, 8);
  });

  it('weighs the break against pull and snag', () => {
    const rated = { ...wire, breakN: 60 };
    expect(strengthOf(rated, RULES, 5)).toMatchObject({
      pullN: 5,
      snagN: 15,
      factor: 3,
      wantedFactor: 2,
      enough: true,
    });
    expect(strengthOf({ ...wire, breakN: 40 }, RULES, 5).enough).toBe(true);
    expect(strengthOf({ ...wire, breakN: 39.9 }, RULES, 5).enough).toBe(false);
  });

  it('no load at all divides by nothing', () => {
    const rules = { ...RULES, wire: { ...RULES.wire, snagN: 0 } };
    expect(strengthOf(wire, rules, 0).factor).toBe(Number.MAX_VALUE);
  });

  it.each([
    [7, 'stiff'],
    [18, 'stiff'],
    [19, 'supple'],
    [48, 'supple'],
    [49, 'softest'],
    [133, 'softest'],
  ])('%i wires are %s', (strands, word) => {
    expect(flexibility({ ...wire, strands })).toBe(word);
  });
});
