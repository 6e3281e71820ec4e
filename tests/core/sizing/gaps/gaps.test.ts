/** Common sizes that can't be met, and that what is proposed meets them. */
import { describe, expect, it } from 'vitest';
import type { Design } from '#core/design/design.ts';
import { COMMON_SIZES, USUAL_SIT } from '#core/sizing/gaps/commonSizes.ts';
import { gapsOf, missedSizes } from '#core/sizing/gaps/gaps.ts';
import { remediesOf } from '#core/sizing/gaps/remedies.ts';
import { size } from '#core/sizing/size.ts';
import { random, randomDesign } from '#tests/core/random.ts';
import { design, focalBracelet, RULES as rules, section, strand } from '#tests/support/workshop.ts';

/** One run of 8 mm beads that closes with nothing finer. */
const coarse = design({
  strands: [strand([section('run', [['ball-8', 1]], { usual: 10, fewest: 8, most: 13 })])],
});

const statusAt = (one: Design, mm: number): string => {
  const measure = { of: COMMON_SIZES[one.kind]!.of, mm };
  return size(one, rules, 5000, { measure, sit: USUAL_SIT, hand: 'right', pick: 'best', quantity: 1 }).status;
};

describe('a missed size', () => {
  it('is one within reach at which sizing says near, and the other way round', () => {
    let near = 0;
    let fits = 0;
    let outside = 0;
    for (let seed = 1; seed <= 60; seed += 1) {
      const of = random(seed);
      const kind = of.pick(['necklace', 'bracelet'] as const);
      const one = randomDesign(of, kind, { sections: 3, repeats: 6 });
      const missed = missedSizes(one, rules);
      for (const mm of COMMON_SIZES[kind]!.mm) {
        const status = statusAt(one, mm);
        expect(missed.includes(mm), `seed ${seed}, ${mm} mm: ${status}`).toBe(status === 'near');
        near += Number(status === 'near');
        fits += Number(status === 'fits');
        outside += Number(status === 'outside');
      }
    }
    expect(Math.min(near, fits, outside)).toBeGreaterThan(20);
  });

  it('is not looked for in kinds without a list, nor in a design that is unsound', () => {
    expect(gapsOf({ ...coarse, kind: 'collar' }, rules).missedMm).toEqual([]);
    expect(missedSizes({ ...coarse, strands: [] }, rules)).toEqual([]);
  });
});

describe('what closes a gap', () => {
  it('is proven by the changed design, for all its sizes', () => {
    const { missedMm, closings } = gapsOf(coarse, rules);
    expect(missedMm.length).toBeGreaterThan(1);
    expect(closings.flatMap(({ sizesMm }) => sizesMm)).toEqual(missedMm);
    const changes = remediesOf(coarse);
    let proven = 0;
    for (const { sizesMm, remedy } of closings) {
      const changed = changes.find((one) => one.remedy === remedy || same(one.remedy, remedy))?.design;
      for (const mm of sizesMm) {
        expect(statusAt(coarse, mm)).toBe('near');
        expect(statusAt(changed!, mm)).toBe('fits');
        proven += 1;
      }
    }
    expect(proven).toBe(missedMm.length);
  });

  it('leaves every size possible that was', () => {
    const met = COMMON_SIZES.bracelet!.mm.filter((mm) => statusAt(coarse, mm) === 'fits');
    expect(met.length).toBeGreaterThan(2);
    for (const { remedy, design: changed } of remediesOf(coarse)) {
      for (const mm of met) expect(statusAt(changed, mm), JSON.stringify(remedy)).toBe('fits');
    }
  });

  it('never touches the focal, and has a filler, a new length and a chain among it', () => {
    const remedies = remediesOf(focalBracelet).map(({ remedy }) => remedy);
    expect(new Set(remedies.map(({ code }) => code))).toEqual(
      new Set(['widen-section', 'add-filler', 'new-filler', 'chain']),
    );
    const focal = focalBracelet.strands[0]!.sections.find(({ role }) => role === 'focal')!;
    for (const { design: changed } of remediesOf(focalBracelet)) {
      expect(changed.strands[0]!.sections).toContain(focal);
    }
  });

  it('is named as nothing where nothing small does', () => {
    const rough = { ...rules, toleranceMm: { ...rules.toleranceMm, bracelet: 0.001 } };
    const { missedMm, closings } = gapsOf({ ...coarse, ends: { ...coarse.ends, ring: null } }, rough);
    expect(missedMm.length).toBeGreaterThan(0);
    expect(closings.some(({ remedy }) => remedy === null)).toBe(true);
  });
});

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
