import { describe, expect, it } from 'vitest';
import { CHEST_SLOPE_RAD, PIT_DOUBT_MM } from '#core/body/assumptions.ts';
import { figureOf } from '#core/body/figure.ts';
import { dropMm, lieOf, type Load } from '#core/body/lie.ts';

const body = figureOf({ sex: 'female', neckGirthMm: 340, heightMm: 1650 });
if (!body.ok) throw new Error(body.problem.code);
const { figure } = body;
const baseMm = figure.neckBase.mm;
/** 95th percentile of the standard normal (NIST/SEMATECH e-Handbook, section 1.3.6.7.1; from memory). */
const PERCENTILE_95 = 1.645;
const reachMm = PERCENTILE_95 * figure.neckBase.sdMm;

const plain: Load = { lengthMm: 450, gPerMm: 0.05, pendantG: 0, pendantMiddleMm: 0, acrossMm: 4 };

function lie(load: Load, worn = figure) {
  const found = lieOf(load, worn);
  if (found.status === 'too-short') throw new Error('expected it to close');
  return found;
}

/** The drop on another neck base; it has to reach round that one. */
function on(load: Load, mm: number): number {
  const drop = dropMm(load, figure, mm);
  if (drop === null) throw new Error('expected it to reach round');
  return drop;
}

describe('how sure a drop is', () => {
  it('a larger neck lifts it, a smaller one lowers it; the doubt about the pit adds in squares', () => {
    const { dropMm: drop, dropBand } = lie(plain);
    const up = drop - on(plain, baseMm + reachMm);
    const down = on(plain, baseMm - reachMm) - drop;
    expect(up).toBeGreaterThan(0);
    expect(down).toBeGreaterThan(0);
    expect((drop - dropBand.leastMm) ** 2).toBeCloseTo(up ** 2 + PIT_DOUBT_MM ** 2, 3);
    expect((dropBand.mostMm - drop) ** 2).toBeCloseTo(down ** 2 + PIT_DOUBT_MM ** 2, 3);
  });

  it('where a larger neck is more than it reaches round it lies as high as it can', () => {
    const slender = figureOf({ sex: 'female', neckGirthMm: 260, heightMm: 1650 });
    if (!slender.ok) throw new Error(slender.problem.code);
    const { neckBase, neckGirth, napeAbovePit } = slender.figure;
    const short: Load = { ...plain, lengthMm: neckGirth.mm + Math.PI * plain.acrossMm + 0.5 };
    expect(dropMm(short, slender.figure, neckBase.mm + PERCENTILE_95 * neckBase.sdMm)).toBeNull();
    const { dropMm: drop, dropBand } = lie(short, slender.figure);
    const up = napeAbovePit.mm / 2 + drop;
    expect((drop - dropBand.leastMm) ** 2).toBeCloseTo(up ** 2 + PIT_DOUBT_MM ** 2, 6);
  });

  it('of a pendant’s middle is that of the strand, moved down the chest', () => {
    const {
      dropMm: drop,
      dropBand,
      pendantDropMm,
      pendantDropBand,
    } = lie({
      ...plain,
      pendantG: 6,
      pendantMiddleMm: 20,
    });
    const below = 20 * Math.cos(CHEST_SLOPE_RAD);
    expect(pendantDropMm).toBeCloseTo(drop + below, 9);
    expect(pendantDropBand?.leastMm).toBeCloseTo(dropBand.leastMm + below, 9);
    expect(pendantDropBand?.mostMm).toBeCloseTo(dropBand.mostMm + below, 9);
  });
});

describe('what hangs', () => {
  it('is said of a pendant without weight and of one without length, and of nothing else', () => {
    expect(lie({ ...plain, pendantMiddleMm: 20 }).pendantDropMm).not.toBeNull();
    const flat = lie({ ...plain, pendantG: 6 });
    expect(flat.pendantDropMm).toBe(flat.dropMm);
    expect(lie(plain).pendantDropMm).toBeNull();
    expect(lie(plain).pendantDropBand).toBeNull();
  });

  it('on a strand that weighs nothing hangs in two straight lines', () => {
    const bare: Load = { ...plain, gPerMm: 0, pendantG: 6 };
    const { sagMm, pullN } = lie(bare);
    const round = baseMm + Math.PI * 4;
    const half = (bare.lengthMm - round / 2) / 2;
    // Pythagoras: half the span, the sag, half the strand in front; each line bears half the weight along itself.
    expect(sagMm).toBeCloseTo(Math.sqrt(half ** 2 - (round / Math.PI / 2) ** 2), 3);
    expect(pullN).toBeCloseTo(((6e-3 * 9.80665) / 2) * (half / sagMm), 6);
  });

  it.each(['lengthMm', 'gPerMm', 'pendantG', 'pendantMiddleMm', 'acrossMm'] as const)(
    'with %s that is no measure lies nowhere',
    (field) => {
      for (const value of [NaN, Infinity, -1]) {
        expect(dropMm({ ...plain, [field]: value }, figure, baseMm)).toBeNull();
        expect(lieOf({ ...plain, [field]: value }, figure).status).toBe('too-short');
      }
    },
  );
});
