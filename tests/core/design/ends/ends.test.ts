import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseCover, chooseCrimp, COVER_PLAY_MM, coverFit, crimpFit } from '#core/design/ends/crimp.ts';
import { cutLength } from '#core/design/ends/cut.ts';
import { endPartMm } from '#core/design/ends/endPart.ts';
import { checkGuard } from '#core/design/ends/guard.ts';
import { takes } from '#core/geometry/packing.ts';
import { flexibility, strengthOf, wireBreak } from '#core/instructions/strength.ts';
import { checkTail, checkTails } from '#core/instructions/tail.ts';
import { component, COMPONENTS, design, RULES } from '#tests/support/workshop.ts';

const crimp = (id: string, holeMm: number, closedMm: number | null = null) =>
  component(id, { kind: 'crimp', holeMm, closedMm });
const cover = (id: string, closedMm: number | null) => component(id, { kind: 'cover', closedMm });

describe('a hole', () => {
  it('takes what is as wide as itself, give or take less than a drill’s error', () => {
    expect([takes(1, 1), takes(1, 0.9), takes(0.9996, 1), takes(0.999, 1)]).toEqual([
      true,
      true,
      true,
      false,
    ]);
  });
});

describe('a crimp', () => {
  it.each([
    [0.9, 'tight'],
    [0.96, 'fits'],
    [1.36, 'fits'],
    [1.4, 'loose'],
  ])('%f mm inside on two wires of 0.48 mm with a play of 0.4 mm: %s', (holeMm, fit) => {
    expect(crimpFit(crimp('one', holeMm), 2, 0.48, 0.4)).toEqual({
      crimp: 'one',
      wires: 2,
      insideMm: holeMm,
      needMm: 0.96,
      fit,
    });
  });

  it('for more wires than any table knows is too tight', () => {
    expect(crimpFit(crimp('one', 50), 40, 0.5, 100)).toMatchObject({ needMm: null, fit: 'tight' });
  });

  it('the smallest that takes the wires is chosen, by id where two are as small', () => {
    const all = [crimp('c', 1.3), crimp('b', 1), crimp('a', 1), crimp('tiny', 0.5)];
    expect(chooseCrimp(all, 2, 0.48, 0.4)).toMatchObject({ crimp: 'a', fit: 'fits' });
    expect(chooseCrimp(all.toReversed(), 2, 0.48, 0.4)).toMatchObject({ crimp: 'a' });
    expect(chooseCrimp(all, 3, 0.48, 0.4)).toMatchObject({ crimp: 'c', fit: 'fits' });
    expect(chooseCrimp(all, 2, 0.3, 0.1)).toMatchObject({ crimp: 'a', fit: 'loose' });
    expect(chooseCrimp(all, 6, 0.48, 0.4)).toBeNull();
    expect(chooseCrimp([crimp('a', 1.3), crimp('z', 1)], 2, 0.48, 0.4)).toMatchObject({ crimp: 'z' });
    expect(chooseCrimp([], 2, 0.48, 0.4)).toBeNull();
  });

  it('more wires never need a smaller crimp', () => {
    const sizes = [0.5, 0.8, 1, 1.3, 1.5, 1.8, 2.2, 3].map((hole) => crimp(`c${hole}`, hole));
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        fc.double({ min: 0.25, max: 0.6, noNaN: true }),
        (wires, wireMm) => {
          const some = chooseCrimp(sizes, wires, wireMm, 1)?.insideMm ?? Infinity;
          const more = chooseCrimp(sizes, wires + 1, wireMm, 1)?.insideMm ?? Infinity;
          expect(more).toBeGreaterThanOrEqual(some);
        },
      ),
    );
  });
});

describe('a crimp cover', () => {
  it.each([
    [2, 'tight'],
    [2.2, 'fits'],
    [2.2 + COVER_PLAY_MM, 'fits'],
    [3.1, 'loose'],
  ])('for %f mm over a crimp of 2.2 mm: %s', (takesMm, fit) => {
    expect(coverFit(cover('one', takesMm), crimp('c', 1, 2.2))).toEqual({
      cover: 'one',
      takesMm,
      closedMm: 2.2,
      fit,
    });
  });

  it('says nothing where a measure isn’t stated', () => {
    expect(coverFit(cover('one', null), crimp('c', 1, 2.2))).toBeNull();
    expect(coverFit(cover('one', 2.5), crimp('c', 1))).toBeNull();
  });

  it('the smallest that goes over is chosen', () => {
    const all = [cover('x', null), cover('large', 4), cover('small', 2), cover('right', 2.5)];
    expect(chooseCover(all, crimp('c', 1, 2.2))).toMatchObject({ cover: 'right', fit: 'fits' });
    expect(chooseCover(all, crimp('c', 1, 3))).toMatchObject({ cover: 'large', fit: 'loose' });
    expect(chooseCover(all, crimp('c', 1, 5))).toBeNull();
    expect(chooseCover(all, crimp('c', 1))).toBeNull();
  });
});

describe('the cut', () => {
  it('counts loop and crimp twice an end, tail and grip once', () => {
    // cover 4 mm over the crimp, loops of 4 mm, tail and grip an inch each
    expect(cutLength(design(), RULES, 128, 2)).toEqual({
      beadsMm: 128,
      slackMm: 2,
      loopsMm: 32,
      tailsMm: 50.8,
      gripsMm: 50.8,
      totalMm: 128 + 2 + 32 + 50.8 + 50.8,
    });
  });

  it('the part between bead and loop is the cover’s, or the bare crimp’s', () => {
    const bare = { ...design().ends, cover: null };
    expect(endPartMm(design())).toBe(4);
    expect(endPartMm(design({ ends: bare }))).toBe(2);
    expect(endPartMm(design({ ends: { ...bare, crimp: 'none' } }))).toBe(0);
  });
});

describe('the tail', () => {
  const beads = (...holes: number[]) => holes.map((holeMm, index) => component(`b${index + 1}`, { holeMm }));

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
  const beads = (...holes: number[]) => holes.map((holeMm, index) => component(`b${index + 1}`, { holeMm }));

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
    expect(passed(8)).toEqual([4, 4]);
    expect(passed(7)).toEqual([4, 3]);
    expect(passed(4)).toEqual([2, 2]);
    expect(passed(1)).toEqual([1, 0]);
    expect(passed(0)).toEqual([0, 0]);
  });
});

describe('a wire guard', () => {
  it('takes one wire', () => {
    const guard = COMPONENTS['guard'] ?? component('guard');
    expect(checkGuard(guard, 0.48)).toEqual({ guard: 'guard', holeMm: 0.7, needMm: 0.48, passes: true });
    expect(checkGuard(guard, 0.8).passes).toBe(false);
  });
});

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
