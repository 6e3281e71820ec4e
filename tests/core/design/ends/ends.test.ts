import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseCover, chooseCrimp, COVER_PLAY_MM, coverFit, crimpFit } from '#core/design/ends/crimp.ts';
import { cutLength } from '#core/design/ends/cut.ts';
import { endPartMm } from '#core/design/ends/endPart.ts';
import { checkGuard } from '#core/design/ends/guard.ts';
import { component, COMPONENTS, design, RULES } from '#tests/support/workshop.ts';

const crimp = (id: string, holeMm: number, closedMm: number | null = null) =>
  component(id, { kind: 'crimp', holeMm, closedMm });
const cover = (id: string, closedMm: number | null) => component(id, { kind: 'cover', closedMm });

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

describe('a wire guard', () => {
  it('takes one wire', () => {
    const guard = COMPONENTS['guard'] ?? component('guard');
    expect(checkGuard(guard, 0.48)).toEqual({ guard: 'guard', holeMm: 0.7, needMm: 0.48, passes: true });
    expect(checkGuard(guard, 0.8).passes).toBe(false);
  });
});
