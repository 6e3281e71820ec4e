import { describe, expect, it } from 'vitest';
import { holeForWiresMm, MOST_WIRES } from '#core/geometry/packing.ts';

describe('the smallest round hole for n equal wires', () => {
  // Circle packing in a circle: Graham 1968 (1 to 7), Pirl 1969 (8 to 10),
  // Melissen 1994 (11), Fodor 2000 and 2003 (12, 13).
  it.each([
    [1, 1],
    [2, 2],
    [3, 2.1547005383792515],
    [4, 2.414213562373095],
    [5, 2.7013016167040798],
    [6, 3],
    [7, 3],
    [8, 3.3047648709624866],
    [9, 3.613125929752753],
    [10, 3.8130256313981246],
    [11, 3.923804400163087],
    [12, 4.029601930116184],
    [13, 4.23606797749979],
  ])('%i wires', (wires, ratio) => {
    expect(holeForWiresMm(wires, 1)).toBeCloseTo(ratio, 12);
  });

  // Kravitz, Mathematics Magazine 40 (1967) 65 to 70: radii of n equal circles in the unit circle.
  // His packing of ten (0.26222) was beaten since: the optimum can only be larger.
  it.each([
    [8, 0.3025934],
    [9, 0.2767685],
    [11, 0.2548547],
  ])('%i wires, by their radius in the unit circle', (wires, radius) => {
    expect(Math.abs(1 / (holeForWiresMm(wires, 1) ?? 0) - radius)).toBeLessThan(5e-6);
  });

  it('ten circles are larger than Kravitz found', () => {
    expect(1 / (holeForWiresMm(10, 1) ?? Infinity)).toBeGreaterThan(0.26222);
  });

  it('knows no more than its table, and no part of a wire', () => {
    expect([holeForWiresMm(0, 1), holeForWiresMm(MOST_WIRES + 1, 1), holeForWiresMm(1.5, 1)]).toEqual([
      null,
      null,
      null,
    ]);
  });
});
