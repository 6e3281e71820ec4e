import { describe, expect, it } from 'vitest';
import { DENSITY_G_PER_CM3, mixtureDensity } from '#core/design/mass/density.ts';
import type { Material } from '#core/design/mass/density.ts';
import { massOf } from '#core/design/mass/mass.ts';
import { volumeMm3 } from '#core/design/mass/volume.ts';
import { component } from '#tests/support/workshop.ts';

describe('densities, g/cm³, against a source other than the one taken', () => {
  it.each<[Material, number, number, string]>([
    ['quartz', 2.6482, 0.005, 'molar volume, CHNOSZ SUPCRT92'],
    ['feldspar', 2.655, 0.105, 'USGS, Natural Gemstones: 2.55 to 2.76'],
    ['amazonite', 2.655, 0.105, 'USGS, Natural Gemstones: feldspar group 2.55 to 2.76'],
    ['labradorite', 2.7026, 0.02, 'ideal mixing of albite and anorthite, CHNOSZ volumes'],
    ['serpentine', 2.5823, 0.05, 'lizardite, PHREEQC core10'],
    ['fluorite', 3.18, 0.02, 'NIST-STAR CaF2'],
    ['hematite', 5.2, 0.1, 'NIST-STAR Fe2O3'],
    ['turquoise', 2.75, 0.15, 'Hurlbut and Klein 1985: 2.6 to 2.9'],
    ['pearl', 2.725, 0.125, 'from memory: 2.60 to 2.85'],
    ['amber', 1.085, 0.025, 'CRC Handbook: 1.06 to 1.11'],
    ['bone', 1.85, 0.15, 'CRC Handbook: 1.7 to 2.0'],
    ['glass', 2.6, 0.2, 'CRC Handbook, common glass: 2.4 to 2.8'],
    ['borosilicate', 2.23, 0.01, 'NIST-STAR Pyrex'],
    ['porcelain', 2.4, 0.1, 'CRC Handbook: 2.3 to 2.5'],
    ['acrylic', 1.19, 0.01, 'NIST-STAR PMMA'],
    ['copper', 8.96, 0.02, 'NIST-STAR'],
    ['fine-silver', 10.5, 0.02, 'NIST-STAR'],
    ['gold', 19.32, 0.02, 'NIST-STAR'],
    ['tin', 7.31, 0.02, 'NIST-STAR'],
    ['aluminium', 2.699, 0.02, 'NIST-STAR'],
    ['steel', 8.0, 0.04, 'PNNL-15870, stainless 304'],
    ['brass', 8.52, 0.05, 'NIST-STAR, leaded brass'],
    ['bronze', 8.78, 0.04, 'NIST-STAR: 8.74 to 8.82'],
    ['titanium', 4.51, 0.04, 'commercially pure, from memory'],
  ])('%s', (material, value, tolerance) => {
    expect(Math.abs(DENSITY_G_PER_CM3[material] - value)).toBeLessThanOrEqual(tolerance);
  });

  // https://tmtpages.com/specific-gravity.htm, worked example of the reciprocal rule: 583 Au, 104 Ag, 313 Cu.
  it('the rule of mixtures gives the worked 14 carat example', () => {
    const parts = [
      { share: 0.583, density: 19.32 },
      { share: 0.104, density: 10.49 },
      { share: 0.313, density: 8.96 },
    ];
    expect(Math.abs(mixtureDensity(parts) - 13.33)).toBeLessThan(0.005);
  });

  // Reciprocal rule from the pure metals; handbook value 10.36 from memory.
  it('sterling silver is what its metals make it', () => {
    const parts = [
      { share: 0.925, density: 10.49 },
      { share: 0.075, density: 8.96 },
    ];
    expect(mixtureDensity(parts)).toBeCloseTo(DENSITY_G_PER_CM3.silver, 4);
  });
});

describe('drilled round beads', () => {
  // The napkin-ring identity: π/6 (D² − d²)^1.5, mm³.
  it.each([
    [8, 1, 261.823996],
    [6, 0.8, 110.094851],
    [4, 0.6, 32.385734],
  ])('%f mm with a %f mm hole', (size, hole, volume) => {
    const bead = component('bead', { alongMm: size, holeMm: hole });
    expect(volumeMm3(bead)).toBeCloseTo(volume, 5);
  });

  // The same volume at 2.648 g/cm³ (quartz, PNNL-15870).
  it.each([
    [8, 1, 0.69331],
    [6, 0.8, 0.291531],
  ])('%f mm of quartz weighs %f', (size, hole, grams) => {
    const bead = component('bead', { alongMm: size, holeMm: hole });
    expect(massOf(bead).massG).toBeCloseTo(grams, 5);
  });
});

describe('rings', () => {
  // Mean circumference π (ID + d) of 18 gauge wire round 4 mm: 15.7823876 mm.
  it('a ring is its wire bent round', () => {
    const wire = 1.02369;
    const ring = component('ring', { kind: 'ring', shape: 'ring', alongMm: 4, acrossMm: 4 + 2 * wire });
    expect(volumeMm3(ring)).toBeCloseTo((15.7823876 * Math.PI * wire ** 2) / 4, 5);
  });
});
