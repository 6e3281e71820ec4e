/** The demo shop's own rules against the bands of the trade. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { crimpFit, WIRES_IN_CRIMP } from '#core/design/ends/crimp.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const { shop, components, wires } = catalogueOf();
const { easeMm, wire } = shop.rules;

describe('common practice, no source', () => {
  it('ease of a bracelet over the wrist: 6 mm snug, 13 to 19 mm comfortable, 25 mm loose', () => {
    const { snug, easy, loose } = easeMm.bracelet;
    expect(Math.abs(snug - 6)).toBeLessThan(1);
    expect(easy).toBeGreaterThanOrEqual(12.7);
    expect(easy).toBeLessThanOrEqual(19.05);
    expect(Math.abs(loose - 25)).toBeLessThan(1);
  });

  it('two inches of wire an end, four in all', () => {
    expect(2 * (wire.tailMm + wire.gripMm)).toBeCloseTo(4 * 25.4, 9);
  });

  it('a tail of 20 to 30 mm', () => {
    expect(wire.tailMm).toBeGreaterThanOrEqual(20);
    expect(wire.tailMm).toBeLessThanOrEqual(30);
  });

  // Seed beads: 8/0 about 3 mm, 11/0 about 2.1 mm, 6/0 about 4 mm outside, give or take 0.2.
  it.each([
    ['11/0', 2.1],
    ['8/0', 3],
    ['6/0', 4],
  ])('seed beads %s are about %f mm across', (size, acrossMm) => {
    const beads = Object.values(components).filter(({ name }) => name.includes(` ${size}`));
    expect(beads.length).toBeGreaterThan(0);
    for (const { name, acrossMm: found } of beads)
      expect(Math.abs(found - acrossMm), name).toBeLessThanOrEqual(0.2);
  });

  // Usual drill holes: pearl 0.6 to 0.8 mm.
  it('pearls are drilled 0.6 to 0.8 mm, or opened to 1 mm at most', () => {
    const pearls = Object.values(components).filter(
      ({ kind, material }) => kind === 'bead' && material === 'pearl',
    );
    expect(pearls.length).toBeGreaterThan(0);
    for (const { name, holeMm } of pearls) {
      expect(holeMm, name).toBeGreaterThanOrEqual(0.6);
      expect(holeMm, name).toBeLessThanOrEqual(1);
    }
  });

  it('every wire of the shop finds a crimp that grips it', () => {
    const crimps = Object.values(components).filter(({ kind }) => kind === 'crimp');
    expect(Object.values(wires).length).toBeGreaterThan(1);
    for (const { name, diameterMm } of Object.values(wires)) {
      const fits = crimps.map((crimp) => crimpFit(crimp, WIRES_IN_CRIMP, diameterMm, wire.crimpPlayMm).fit);
      expect(fits, name).toContain('fits');
    }
  });
});
