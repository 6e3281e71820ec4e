import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Shape } from '#core/design/component.ts';
import { densityOf, isMaterial, UNKNOWN_DENSITY_G_PER_CM3 } from '#core/design/mass/density.ts';
import { lessSure, massOf, wireMassG } from '#core/design/mass/mass.ts';
import { closingMass, hangingMass, massOfAll, pieceMass, sequenceMass } from '#core/design/mass/pieceMass.ts';
import { tally, tallyFindings, tallyStrand } from '#core/design/tally.ts';
import { isRough, volumeMm3 } from '#core/design/mass/volume.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import {
  ALL,
  component,
  design,
  focalBracelet,
  pendantNecklace,
  section,
  strand,
  twoStrands,
  withComponent,
} from '#tests/support/workshop.ts';

/** Volume of the turned outline by thin slices: another way to the same figure. */
function sliced(alongMm: number, acrossMm: number, roundingMm: number, holeMm: number): number {
  const slices = 5000;
  let sum = 0;
  for (let n = 0; n < slices; n += 1) {
    const fromEnd = Math.min(n + 0.5, slices - n - 0.5) * (alongMm / slices);
    const into = Math.max(0, roundingMm - fromEnd);
    const radius = acrossMm / 2 - roundingMm + Math.sqrt(Math.max(0, roundingMm ** 2 - into ** 2));
    sum += Math.max(0, radius ** 2 - (holeMm / 2) ** 2) * Math.PI * (alongMm / slices);
  }
  return sum;
}

describe('volume', () => {
  it('of any rounded outline agrees with thin slices', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        part,
        part,
        (alongMm, acrossMm, round, bored) => {
          const roundingMm = (round * Math.min(alongMm, acrossMm)) / 2;
          const holeMm = bored * acrossMm * 0.95;
          const bead = component('bead', { alongMm, acrossMm, roundingMm, holeMm });
          const other = sliced(alongMm, acrossMm, roundingMm, holeMm);
          expect(Math.abs(volumeMm3(bead) - other)).toBeLessThan(5e-4 * acrossMm ** 2 * alongMm);
        },
      ),
      { numRuns: 60 },
    );
  });

  const solid = { alongMm: 10, acrossMm: 6, roundingMm: 0, holeMm: 0 };
  const cylinder = Math.PI * 9 * 10;

  it.each<[Shape, number]>([
    ['tube', cylinder],
    ['rondelle', cylinder],
    ['bicone', cylinder / 3],
    ['cube', 360],
    ['chip', 0.55 * cylinder],
    ['coin', 0.45 * cylinder],
    ['drop', 0.6 * cylinder],
    ['cap', 0.25 * cylinder],
    ['lobster', 0.35 * cylinder],
    ['spring-ring', 0.25 * cylinder],
    ['toggle', 0.2 * cylinder],
    ['hook', 0.2 * cylinder],
    ['box', 0.5 * cylinder],
    ['magnetic', 0.9 * cylinder],
  ])('of a %s', (shape, volume) => {
    expect(volumeMm3(component('one', { ...solid, shape }))).toBeCloseTo(volume, 6);
  });

  it('less the hole, all the way through a bicone or a cube, and never below nothing', () => {
    const bored = { ...solid, holeMm: 2 };
    expect(volumeMm3(component('one', { ...bored, shape: 'bicone' }))).toBeCloseTo(
      cylinder / 3 - Math.PI * 10,
      6,
    );
    expect(volumeMm3(component('one', { ...bored, shape: 'cube' }))).toBeCloseTo(360 - Math.PI * 10, 6);
    expect(volumeMm3(component('one', { ...solid, holeMm: 6, shape: 'bicone' }))).toBe(0);
    expect(volumeMm3(component('one', { ...solid, holeMm: 7, shape: 'tube' }))).toBe(0);
  });

  it('a hole as wide as the flat of a rounded end leaves only its rim out', () => {
    const bead = component('bead', { alongMm: 10, acrossMm: 10, roundingMm: 2, holeMm: 6 });
    expect(volumeMm3(bead)).toBeCloseTo(sliced(10, 10, 2, 6), 2);
    expect(volumeMm3(component('shell', { ...bead, holeMm: 10 }))).toBe(0);
  });

  it('a ring is its wire; a ring with no wire is nothing', () => {
    const ring = component('ring', { shape: 'ring', alongMm: 4, acrossMm: 6 });
    expect(volumeMm3(ring)).toBeCloseTo((Math.PI ** 2 / 4) * 1 * 5, 9);
    expect(volumeMm3({ ...ring, alongMm: 6 })).toBe(0);
    expect(volumeMm3({ ...ring, alongMm: 7 })).toBe(0);
  });

  it('a pendant goes by what it hangs, not by what it takes along the wire', () => {
    const pendant = component('p', {
      kind: 'pendant',
      shape: 'drop',
      alongMm: 2,
      acrossMm: 10,
      roundingMm: 1,
      hangMm: 20,
    });
    expect(volumeMm3(pendant)).toBeCloseTo(0.6 * Math.PI * 25 * 20, 6);
    expect(volumeMm3({ ...pendant, hangMm: 0 })).toBeLessThan(0.6 * Math.PI * 25 * 2);
    expect(volumeMm3({ ...pendant, kind: 'bead' })).toBeLessThan(0.6 * Math.PI * 25 * 2);
  });

  it('says which shapes are guessed', () => {
    const shapes: Shape[] = ['ball', 'rondelle', 'tube', 'bicone', 'cube', 'ring', 'chip', 'drop', 'lobster'];
    expect(shapes.map(isRough)).toEqual([false, false, false, false, false, false, true, true, true]);
  });
});

describe('mass', () => {
  it('as weighed wins', () => {
    expect(massOf(component('one', { massG: 1.5 }))).toEqual({ massG: 1.5, basis: 'weighed' });
    expect(massOf(component('one', { massG: 0 }))).toEqual({ massG: 0, basis: 'weighed' });
  });

  it('by volume and density, roughly where shape or material is guessed', () => {
    const bead = component('bead');
    expect(massOf(bead)).toMatchObject({ basis: 'volume' });
    expect(massOf(bead).massG).toBeCloseTo(0.69331, 5);
    expect(massOf({ ...bead, shape: 'chip' }).basis).toBe('rough');
    expect(massOf({ ...bead, material: 'cheese' })).toEqual({
      massG: (volumeMm3(bead) / 1000) * UNKNOWN_DENSITY_G_PER_CM3,
      basis: 'rough',
    });
  });

  it('knows materials by name, and no name that every object has', () => {
    expect([isMaterial('quartz'), isMaterial('cheese'), isMaterial('constructor')]).toEqual([
      true,
      false,
      false,
    ]);
    expect([densityOf('quartz'), densityOf('toString')]).toEqual([2.648, null]);
  });

  it('the less sure of two counts', () => {
    expect(lessSure('weighed', 'volume')).toBe('volume');
    expect(lessSure('rough', 'weighed')).toBe('rough');
    expect(lessSure('weighed', 'weighed')).toBe('weighed');
  });

  it('of wire goes by the metre', () => {
    expect(wireMassG({ ...design().wire, massGPerM: 0.9 }, 500)).toBeCloseTo(0.45, 12);
  });

  it('of some together is their sum, as sure as the least sure that weighs anything', () => {
    const weighed = component('a', { massG: 2 });
    const rough = component('b', { massG: null, shape: 'chip' });
    const nothing = component('c', { holeMm: 8, shape: 'tube', roundingMm: 0, material: 'cheese' });
    expect(massOfAll([])).toEqual({ massG: 0, basis: 'weighed' });
    expect(massOfAll([weighed, weighed])).toEqual({ massG: 4, basis: 'weighed' });
    expect(massOfAll([weighed, rough]).basis).toBe('rough');
    expect(massOfAll([weighed, nothing])).toEqual({ massG: 2, basis: 'weighed' });
  });

  it('of a piece is that of its strands, closing and pendant', () => {
    for (const piece of ALL) {
      const parts = [
        ...expand(piece, usual(piece)).map(sequenceMass),
        closingMass(piece),
        hangingMass(piece),
      ];
      const sum = parts.reduce((all, { massG }) => all + massG, 0);
      expect(pieceMass(piece, usual(piece)).massG).toBeCloseTo(sum, 9);
    }
    expect(hangingMass(pendantNecklace).massG).toBeGreaterThan(5);
    expect(hangingMass(design())).toEqual({ massG: 0, basis: 'weighed' });
    expect(closingMass({ ...design(), ends: { ...design().ends, ring: null } }).massG).toBeLessThan(
      closingMass(design()).massG,
    );
  });

  it('passes over what the design does not hold', () => {
    const missing = {
      ...pendantNecklace,
      hanging: { pendant: 'none', rings: ['none'] },
      ends: { ...design().ends, clasp: 'none', ring: 'none' },
    };
    expect([hangingMass(missing).massG, closingMass(missing).massG]).toEqual([0, 0]);
    expect(pieceMass(missing, usual(missing)).massG).toBeGreaterThan(0);
  });
});

describe('the tally', () => {
  it('takes both sides of a mirrored strand, a focal once, one run once', () => {
    const [only] = focalBracelet.strands;
    if (only === undefined) throw new Error('the bracelet has a strand');
    expect([...tallyStrand(only, [1, 6, 1])]).toEqual([
      ['boulder', 1],
      ['ball-8', 12],
      ['ball-3', 14],
    ]);
    expect([...tallyStrand({ ...only, mirrored: false }, [2, 6, 1])]).toEqual([
      ['boulder', 2],
      ['ball-8', 6],
      ['ball-3', 7],
    ]);
    expect([...tallyStrand(only, [])]).toEqual([]);
  });

  it('takes crimps, covers and guards of every strand, closing and pendant once', () => {
    const guarded = { ...twoStrands, ends: { ...twoStrands.ends, guard: 'guard', ring: 'ring' } };
    expect(Object.fromEntries(tallyFindings(guarded))).toEqual({
      crimp: 4,
      cover: 4,
      guard: 4,
      'bar-2': 1,
      ring: 1,
    });
    expect(Object.fromEntries(tallyFindings(pendantNecklace))).toEqual({
      crimp: 2,
      cover: 2,
      lobster: 1,
      ring: 2,
      drop: 1,
    });
    const bare = { ...design(), ends: { ...design().ends, cover: null, ring: null } };
    expect(Object.fromEntries(tallyFindings(bare))).toEqual({ crimp: 2, lobster: 1 });
  });

  it('agrees with what is laid out', () => {
    for (const piece of ALL) {
      const laid = new Map(tallyFindings(piece));
      for (const { component: one, section: at } of expand(piece, usual(piece)).flat()) {
        if (at !== 'end') laid.set(one.id, (laid.get(one.id) ?? 0) + 1);
      }
      expect(Object.fromEntries(tally(piece, usual(piece)))).toEqual(Object.fromEntries(laid));
    }
  });

  it('of a component used twice adds up', () => {
    const twice = strand(
      [
        section(
          'a',
          [
            ['ball-8', 2],
            ['ball-4', 1],
            ['ball-8', 1],
          ],
          { usual: 3 },
        ),
      ],
      { mirrored: false },
    );
    expect(Object.fromEntries(tallyStrand(twice, [3]))).toEqual({ 'ball-8': 9, 'ball-4': 3 });
    expect(withComponent(design(), 'ball-8', { massG: 1 }).components['ball-8']?.massG).toBe(1);
  });
});
