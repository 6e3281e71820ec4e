/** How far the doubled wire runs back at each end. */
import { describe, expect, it } from 'vitest';
import { checkTail, checkTails } from '#core/instructions/tail.ts';
import { component } from '#tests/support/workshop.ts';

const beads = (...holes: number[]) => holes.map((holeMm, index) => component(`b${index + 1}`, { holeMm }));

describe('the tail', () => {
  it('goes in where every bead over its length takes two wires', () => {
    const found = checkTail(beads(1, 1, 1, 1, 0.5), 0.48, 25.4);
    expect(found.beads.map(({ position, passes }) => [position, passes])).toEqual([
      [1, true],
      [2, true],
      [3, true],
      [4, true],
    ]);
    expect(found).toMatchObject({
      tailMm: 25.4,
      needMm: 0.96,
      passed: 4,
      // Cut flush where it leaves the fourth.
      reachMm: 32,
      blockedBy: null,
      fitsWireMm: null,
    });
  });

  it('names the first bead in the way, how far the tail gets, and what would fit', () => {
    const found = checkTail(beads(1, 0.8, 0.6, 1), 0.48, 25.4);
    expect(found.blockedBy).toEqual({ component: 'b2', holeMm: 0.8, position: 2, passes: false });
    expect(found).toMatchObject({ passed: 1, reachMm: 8 });
    expect(found.fitsWireMm).toBe(0.4);
    expect(found.beads).toHaveLength(4);
  });

  it('ends exactly at a bead’s edge, and with the beads', () => {
    expect(checkTail(beads(1, 1, 0.2), 0.48, 16).blockedBy).toBeNull();
    expect(checkTail(beads(1), 0.48, 25.4)).toMatchObject({ reachMm: 8, blockedBy: null });
    expect(checkTail([], 0.48, 25.4)).toMatchObject({ beads: [], reachMm: 0, blockedBy: null });
  });
});

describe('both tails', () => {
  it('go in from either end', () => {
    const { clasp, ring } = checkTails(beads(1, 1, 1, 1, 1, 1, 1, 0.5, 1), 0.48, 16);
    expect(clasp).toMatchObject({ passed: 2, reachMm: 16, blockedBy: null });
    expect(ring).toMatchObject({ passed: 1, reachMm: 8, blockedBy: { component: 'b8', position: 2 } });
  });

  it('on a short strand have half of it each, and never meet in one bead', () => {
    const passed = (count: number) => {
      const { clasp, ring } = checkTails(beads(...new Array<number>(count).fill(1)), 0.48, 25.4);
      return [clasp.passed, ring.passed];
    };
    const { ring } = checkTails(beads(1, 1, 0.5), 0.48, 40);
    // The middle bead belongs to the clasp's tail, and isn't asked to take the ring's as well.
    expect(ring.beads.map((bead) => bead.component)).toEqual(['b3']);
    expect(passed(8)).toEqual([4, 4]);
    expect(passed(7)).toEqual([4, 3]);
    expect(passed(4)).toEqual([2, 2]);
    expect(passed(1)).toEqual([1, 0]);
    expect(passed(0)).toEqual([0, 0]);
  });
});
