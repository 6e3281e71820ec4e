import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CHEST_SLOPE_RAD, PIT_DOUBT_MM } from '#core/body/assumptions.ts';
import { figureOf } from '#core/body/figure.ts';
import type { Figure } from '#core/body/figure.ts';
import { dropMm, lieOf } from '#core/body/lie.ts';
import type { Lie, Load } from '#core/body/lie.ts';
import { nestLengths } from '#core/body/nest.ts';
import { lengthForDrop } from '#core/body/place.ts';

function figure(neckGirthMm: number | null = 340, sex: 'female' | 'male' | 'unstated' = 'female'): Figure {
  const found = figureOf({ sex, neckGirthMm, heightMm: 1650 });
  if (!found.ok) throw new Error(found.problem.code);
  return found.figure;
}

const plain: Omit<Load, 'lengthMm'> = { gPerMm: 0.05, pendantG: 0, pendantMiddleMm: 0, acrossMm: 4 };
const hung: Omit<Load, 'lengthMm'> = { ...plain, pendantG: 6, pendantMiddleMm: 20 };

type Laid = Exclude<Lie, { status: 'too-short' }>;

function laid(lengthMm: number, load = plain, on = figure()): Laid {
  const lie = lieOf({ ...load, lengthMm }, on);
  if (lie.status === 'too-short') throw new Error('it should close');
  return lie;
}

describe('where a strand lies', () => {
  it('as long as the neck base is round it lies at the pit', () => {
    const on = figure();
    const lie = laid(on.neckBase.mm + Math.PI * 4);
    expect(lie.status).toBe('hangs');
    expect(lie.dropMm).toBeCloseTo(0, 9);
  });

  it('shorter it lies on the neck, above the pit; shorter than the neck it does not close', () => {
    const on = figure();
    expect(laid(on.neckBase.mm).status).toBe('on-neck');
    expect(laid(on.neckBase.mm).dropMm).toBeLessThan(0);
    expect(lieOf({ ...plain, lengthMm: 340 }, on)).toEqual({
      status: 'too-short',
      neckBaseMm: on.neckBase.mm,
    });
  });

  it('half of the neck base lies behind, and the front hangs between points as far apart as it is wide', () => {
    const on = figure();
    const round = on.neckBase.mm + Math.PI * 4;
    const lie = laid(480);
    expect(lie.frontMm).toBeCloseTo(480 - round / 2, 9);
    expect(lie.spanMm).toBeCloseTo(round / Math.PI, 9);
    expect(lie.dropMm).toBeCloseTo((lie.sagMm - lie.sagAtPitMm) * Math.cos(CHEST_SLOPE_RAD), 9);
  });

  it('above the pit it follows the lean of the foot of the neck, half of it from the points to the pit', () => {
    const on = figure();
    const lie = laid(on.neckBase.mm);
    expect(lie.dropMm).toBeCloseTo(
      ((lie.sagMm - lie.sagAtPitMm) * on.napeAbovePit.mm) / 2 / lie.sagAtPitMm,
      9,
    );
  });

  it("a pendant's middle lies below the wire, and its weight draws the strand down", () => {
    const without = laid(480);
    const { dropMm: drop, pendantDropMm, pendantDropBand, dropBand, pullN } = laid(480, hung);
    expect(drop).toBeGreaterThan(without.dropMm);
    expect(pullN).toBeGreaterThan(without.pullN);
    expect(pendantDropMm).toBeCloseTo(drop + 20 * Math.cos(CHEST_SLOPE_RAD), 9);
    expect(pendantDropBand?.leastMm).toBeCloseTo(dropBand.leastMm + 20 * Math.cos(CHEST_SLOPE_RAD), 9);
    expect(without.pendantDropMm).toBeNull();
    expect(without.pendantDropBand).toBeNull();
  });

  it('a strand that weighs nothing bears its pendant alone', () => {
    const lie = laid(480, { ...hung, gPerMm: 0 });
    const half = lie.frontMm / 2;
    expect(lie.pullN).toBeCloseTo((0.006 * 9.80665 * half) / (2 * lie.sagMm), 9);
  });

  it('the pull bears at least half of what hangs in front', () => {
    const lie = laid(600, hung);
    expect(lie.pullN).toBeGreaterThan(((lie.frontMm * 0.05 + 6) / 2 / 1000) * 9.80665);
  });

  it('says what it assumes', () => {
    expect(laid(480).assumptions).toEqual(['zero-at-pit', 'chest-slope']);
    expect(laid(480, plain, figure(null, 'unstated')).assumptions).toEqual([
      'pooled',
      'mean-neck',
      'zero-at-pit',
      'chest-slope',
    ]);
  });

  it('the band holds the drop, no narrower than the doubt about the pit, wider where less is known', () => {
    const known = laid(480);
    const unknown = laid(480, plain, figure(null));
    expect(known.dropMm - known.dropBand.leastMm).toBeGreaterThan(PIT_DOUBT_MM);
    expect(known.dropBand.mostMm - known.dropMm).toBeGreaterThan(PIT_DOUBT_MM);
    const width = ({ leastMm, mostMm }: { leastMm: number; mostMm: number }) => mostMm - leastMm;
    expect(width(unknown.dropBand)).toBeGreaterThan(width(known.dropBand) + 5);
  });
});

const lengths = fc.double({ min: 400, max: 1500, noNaN: true });
const necks = fc.double({ min: 220, max: 450, noNaN: true });
const loads = fc.record({
  gPerMm: fc.double({ min: 0, max: 1, noNaN: true }),
  pendantG: fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 80, noNaN: true })),
  pendantMiddleMm: fc.double({ min: 0, max: 60, noNaN: true }),
  acrossMm: fc.double({ min: 0, max: 20, noNaN: true }),
});

const pendants = loads.filter(({ pendantG }) => pendantG > 0);

const RUNS = 200;

/** On a thick neck a strand of 40 cm is too short to hang. */
function mostHung(hung: number): void {
  expect(hung).toBeGreaterThan(0.8 * RUNS);
}

describe('properties', () => {
  it('a longer strand never hangs higher', () => {
    let hung = 0;
    fc.assert(
      fc.property(
        loads,
        necks,
        lengths,
        fc.double({ min: 0, max: 300, noNaN: true }),
        (load, neck, length, more) => {
          const on = figure(neck);
          const drop = dropMm({ ...load, lengthMm: length }, on, on.neckBase.mm);
          const lower = dropMm({ ...load, lengthMm: length + more }, on, on.neckBase.mm);
          if (drop === null) return;
          hung += 1;
          expect(lower).toBeGreaterThanOrEqual(drop - 1e-6);
        },
      ),
      { numRuns: RUNS },
    );
    mostHung(hung);
  });

  it('on a larger neck the same strand never hangs lower', () => {
    let hung = 0;
    fc.assert(
      fc.property(loads, necks, lengths, (load, neck, length) => {
        const on = figure(neck);
        const drop = dropMm({ ...load, lengthMm: length }, on, on.neckBase.mm);
        const larger = dropMm({ ...load, lengthMm: length }, on, on.neckBase.mm + 10);
        if (drop === null || larger === null) return;
        hung += 1;
        expect(larger).toBeLessThanOrEqual(drop + 1e-6);
      }),
      { numRuns: RUNS },
    );
    mostHung(hung);
  });

  it.each(['strand', 'pendant'] as const)(
    'the length for a place of the %s is the length that lies there',
    (aim) => {
      let hung = 0;
      fc.assert(
        fc.property(aim === 'pendant' ? pendants : loads, necks, lengths, (load, neck, length) => {
          const on = figure(neck);
          const lie = lieOf({ ...load, lengthMm: length }, on);
          if (lie.status === 'too-short') return;
          hung += 1;
          const at = aim === 'pendant' ? lie.pendantDropMm! : lie.dropMm;
          expect(Math.abs((lengthForDrop(load, on, at, aim) ?? NaN) - length)).toBeLessThan(1e-3);
        }),
        { numRuns: RUNS },
      );
      mostHung(hung);
    },
  );

  it('nested strands hang each below the one inside by half their diameters and the gap', () => {
    fc.assert(
      fc.property(
        loads,
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 2, max: 12 }),
        (load, gap, across) => {
          const on = figure();
          const strands = [load, load, load].map((one) => ({ load: one, lowestAcrossMm: across }));
          const found = nestLengths(strands, 480, gap, on);
          const drops = found.map((lengthMm) =>
            lengthMm === null ? NaN : (dropMm({ ...load, lengthMm }, on, on.neckBase.mm) ?? NaN),
          );
          const step = (across + gap) * Math.cos(CHEST_SLOPE_RAD);
          expect((drops[1] ?? NaN) - (drops[0] ?? NaN)).toBeCloseTo(step, 4);
          expect((drops[2] ?? NaN) - (drops[1] ?? NaN)).toBeCloseTo(step, 4);
        },
      ),
    );
  });

  it('any load at all: never NaN, never a throw', () => {
    const wild = fc.record({
      lengthMm: fc.double(),
      gPerMm: fc.double(),
      pendantG: fc.double(),
      pendantMiddleMm: fc.double({ noNaN: true, noDefaultInfinity: true }),
      acrossMm: fc.double(),
    });
    fc.assert(
      fc.property(wild, (load) => {
        const lie = lieOf(load, figure());
        expect(lie.status === 'too-short' || !Number.isNaN(lie.dropMm)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('what can not be reached', () => {
  it('a place above what closes round the neck, or farther than five metres of strand', () => {
    expect(lengthForDrop(plain, figure(), -60)).toBeNull();
    expect(lengthForDrop(plain, figure(), 1e5)).toBeNull();
    for (const nowhere of [NaN, Infinity, -Infinity]) {
      expect(lengthForDrop(plain, figure(), nowhere)).toBeNull();
    }
  });

  it('just above and just below where the shortest that closes hangs', () => {
    const shortest = figure().neckGirth.mm + Math.PI * plain.acrossMm;
    const drop = dropMm({ ...plain, lengthMm: shortest }, figure(), figure().neckBase.mm);
    expect(lengthForDrop(plain, figure(), drop! - 0.01)).toBeNull();
    expect(lengthForDrop(plain, figure(), drop! + 0.01)).toBeCloseTo(shortest, 0);
  });

  it('a nest whose innermost strand does not close has no lengths', () => {
    const strands = [plain, plain].map((load) => ({ load, lowestAcrossMm: 4 }));
    expect(nestLengths(strands, 100, 4, figure())).toEqual([null, null]);
  });
});
