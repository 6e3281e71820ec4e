import { describe, expect, it } from 'vitest';
import { usual } from '#core/sizing/usual.ts';
import { balanceOf, SHOWS_MM, type Balance } from '#core/instructions/balance.ts';
import { hungPendant } from '#core/instructions/hungPendant.ts';
import type { Design } from '#core/design/design.ts';
import { expand } from '#core/design/expand.ts';
import {
  design,
  focal,
  focalBracelet,
  pendantNecklace,
  section,
  strand,
  unequalNecklace,
  withComponent,
} from '#tests/support/workshop.ts';

const sequence = (of: Design) => expand(of, usual(of))[0] ?? [];
const balance = (of: Design) => balanceOf(of, sequence(of));
const pendant = (of: Design) => hungPendant(of, sequence(of));

describe('balance', () => {
  it('of a mirrored piece is off by half of what clasp and ring differ, and equal in weight', () => {
    const found = balance(focalBracelet);
    expect(found).toMatchObject({ about: 'focal', offMm: 4, notable: false });
    expect(found.claspSide.lengthMm).toBe(12 + 4 + 4 + 69 + 10);
    expect(found.ringSide.lengthMm).toBe(4 + 4 + 4 + 69 + 10);
    expect(found.heavierG).toBeCloseTo(0, 9);
  });

  it('clasp and ring count for the length alone', () => {
    const heavy = withComponent(focalBracelet, 'lobster', { massG: 50, alongMm: 40, roundingMm: 0 });
    expect(balance(heavy).heavierG).toBeCloseTo(0, 9);
    expect(balance(heavy).offMm).toBe(18);
    expect(balance(heavy).notable).toBe(false);
  });

  it('says which side is heavier, and when it pulls round', () => {
    const found = balance(unequalNecklace);
    // 26 balls of quartz against 18 thin silver tubes
    expect(found.about).toBe('middle');
    expect(found.heavierG).toBeLessThan(0);
    expect(found.claspSide.massG - found.ringSide.massG).toBeCloseTo(found.heavierG, 9);
    expect(found.notable).toBe(true);
    const turned = balance({
      ...unequalNecklace,
      strands: unequalNecklace.strands.map((one) => ({ ...one, sections: one.sections.toReversed() })),
    });
    expect(turned.heavierG).toBeCloseTo(-found.heavierG, 9);
  });

  it('a focal off its middle is told by how much', () => {
    const off = design({
      strands: [
        strand(
          [
            section('a', [['ball-8', 1]], { usual: 6 }),
            focal('boulder'),
            section('b', [['ball-8', 1]], { usual: 9 }),
          ],
          { mirrored: false },
        ),
      ],
    });
    const found = balance(off);
    // three balls of 8 mm more on the ring's side, 8 mm less of clasp and ring
    expect(found.about).toBe('focal');
    expect(found.offMm).toBeCloseTo((8 - 24) / 2, 9);
    expect(found.notable).toBe(true);
    expect(Math.abs(found.offMm)).toBeGreaterThan(SHOWS_MM);
  });

  /** One run of eights round a focal, `before` on the clasp's side and `after` on the ring's; nothing weighs but what is told. */
  const round = (before: number, after: number, massG: Record<string, number>): Balance => {
    const sections = [
      section('before', [['ball-8', 1]], { usual: before }),
      focal('boulder'),
      section('after', [['tube', 1]], { usual: after }),
    ];
    const of = design({ strands: [strand(sections, { mirrored: false })] });
    const components = Object.fromEntries(
      Object.values(of.components).map((one) => [one.id, { ...one, massG: massG[one.id] ?? 0 }]),
    );
    const even = { ...components, tube: { ...components['tube']!, alongMm: 8 } };
    return balance({ ...of, components: even });
  };

  it('off its middle by length alone is told from beyond five millimetres on', () => {
    expect(round(6, 7, {})).toMatchObject({ heavierG: 0, notable: false });
    expect(round(6, 8, {})).toMatchObject({ heavierG: 0, notable: true });
    expect(round(8, 6, {})).toMatchObject({ heavierG: 0, notable: true });
  });

  it('out of balance by weight alone is told from beyond a twentieth of all that is strung', () => {
    expect(round(5, 5, { 'ball-8': 1, tube: 1.08 })).toMatchObject({ notable: false });
    expect(round(5, 5, { 'ball-8': 1, tube: 1.12 })).toMatchObject({ notable: true });
    expect(round(5, 5, { 'ball-8': 1.12, tube: 1 })).toMatchObject({ notable: true });
    // The heavier the focal, the less the same difference pulls.
    expect(round(5, 5, { 'ball-8': 1.12, tube: 1, boulder: 10 })).toMatchObject({ notable: false });
  });

  it('about the pendant where one hangs, on either side of which the wire is', () => {
    expect(balance(pendantNecklace)).toMatchObject({ about: 'pendant', offMm: 4 });
    expect(balance(design())).toMatchObject({ about: 'middle', offMm: 4 });
  });

  it('of nothing is nothing', () => {
    const empty = balanceOf(design(), []);
    expect(empty.heavierG).toBe(0);
    expect(empty.about).toBe('middle');
  });
});

describe('a pendant', () => {
  it('hangs between two equal components at the middle', () => {
    expect(pendant(pendantNecklace)).toEqual({
      pendant: 'drop',
      rings: ['ring'],
      joins: [{ ring: 'ring', place: 0, joint: 'open', above: null, below: 'drop' }],
      after: 25,
      facing: { pendant: 'drop', rings: 1, loop: 'in-plane', faces: 'front', addRings: 0 },
      left: 'ball-4',
      right: 'ball-4',
      centred: true,
      offMiddleMm: 0,
    });
  });

  it('with a bead in the middle hangs beside it, by half of it', () => {
    const odd = design({
      kind: 'necklace',
      hanging: { pendant: 'drop', rings: [] },
      strands: [strand([focal('boulder'), section('run', [['ball-8', 1]])])],
    });
    expect(pendant(odd)).toMatchObject({
      offMiddleMm: -10,
      left: 'ball-8',
      right: 'boulder',
      centred: false,
    });
    expect(balance(odd).offMm).toBeCloseTo(4 - 10, 9);
  });

  it('between unlike components leans', () => {
    const unlike = {
      ...pendantNecklace,
      strands: [
        strand([section('a', [['ball-8', 1]], { usual: 2 }), section('b', [['ball-4', 1]], { usual: 4 })], {
          mirrored: false,
        }),
      ],
    };
    expect(pendant(unlike)).toMatchObject({
      left: 'ball-8',
      right: 'ball-4',
      centred: false,
      offMiddleMm: 0,
    });
  });

  it('on one bead hangs at an end, and is not centred; where none hangs there is none', () => {
    const lone = {
      ...pendantNecklace,
      strands: [strand([section('a', [['ball-8', 1]], { usual: 1 })], { mirrored: false })],
    };
    expect(pendant(lone)).toMatchObject({ left: null, right: null, centred: false, offMiddleMm: 0 });
    expect(pendant(design())).toBeNull();
  });
});
