/** Components, rules and pieces of a small workshop, for tests of the core. Measures are plausible, not anyone's. */
import type { Component } from '#core/design/component.ts';
import type { Hand } from '#core/design/choice.ts';
import type { Rules } from '#core/design/rules.ts';
import { BLANK } from './blank.ts';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import { stringing } from '#core/instructions/stringing.ts';
import type { Stringing } from '#core/instructions/stringing.ts';
import type { Design, MotifPart, Section, Strand } from '#core/design/design.ts';

export function component(id: string, more: Partial<Component> = {}): Component {
  const alongMm = more.alongMm ?? 8;
  const stone = { family: 'stone', colour: '#8090a0', accent: null } as const;
  const ball = { alongMm, acrossMm: alongMm, roundingMm: alongMm / 2 };
  return { ...BLANK, id, name: id, ...ball, material: 'quartz', look: stone, costMinor: 40, ...more };
}

const metal = { family: 'metal', colour: '#c0c0c0', accent: null } as const;
const small = { look: metal, material: 'silver', roundingMm: 0 } as const;

/** Every component the pieces below name. */
export const COMPONENTS: Readonly<Record<string, Component>> = Object.fromEntries(
  [
    component('ball-8'),
    component('ball-4', { alongMm: 4, costMinor: 12 }),
    component('ball-3', { alongMm: 3, holeMm: 0.8, costMinor: 8 }),
    component('boulder', { alongMm: 20, holeMm: 1.2, costMinor: 900 }),
    component('pearl', { alongMm: 6, holeMm: 0.6, material: 'pearl', costMinor: 150 }),
    component('tube', { ...small, shape: 'tube', alongMm: 10, acrossMm: 3, holeMm: 1.2 }),
    component('crimp', {
      ...small,
      kind: 'crimp',
      shape: 'tube',
      alongMm: 2,
      acrossMm: 2,
      holeMm: 1.2,
      closedMm: 2.2,
    }),
    component('cover', {
      ...small,
      kind: 'cover',
      alongMm: 4,
      acrossMm: 4,
      roundingMm: 2,
      holeMm: 1,
      closedMm: 2.5,
    }),
    component('guard', { ...small, kind: 'spacer', shape: 'tube', alongMm: 5, acrossMm: 0.9, holeMm: 0.7 }),
    component('ring', { ...small, kind: 'ring', shape: 'ring', alongMm: 4, acrossMm: 5.6, holeMm: 4 }),
    component('lobster', {
      ...small,
      kind: 'clasp',
      shape: 'lobster',
      alongMm: 12,
      acrossMm: 6,
      holeMm: 0,
      handed: true,
    }),
    component('toggle', { ...small, kind: 'clasp', shape: 'toggle', alongMm: 14, acrossMm: 14, holeMm: 0 }),
    component('bar-2', {
      ...small,
      kind: 'clasp',
      shape: 'box',
      alongMm: 12,
      acrossMm: 14,
      holeMm: 0,
      ways: 2,
    }),
    component('drop', {
      ...small,
      ...{
        kind: 'pendant',
        shape: 'drop',
        alongMm: 2,
        acrossMm: 12,
        holeMm: 0,
        loop: 'in-plane',
        hangMm: 24,
      },
      ...{ massG: 5, costMinor: 1200 },
    }),
  ].map((one) => [one.id, one]),
);

export const RULES: Rules = {
  currency: 'GBP',
  toleranceMm: { necklace: 6, bracelet: 3, anklet: 4, collar: 4 },
  easeMm: {
    necklace: { snug: 10, easy: 40, loose: 90 },
    bracelet: { snug: 6, easy: 14, loose: 25 },
    anklet: { snug: 6, easy: 14, loose: 25 },
    collar: { snug: 6, easy: 14, loose: 25 },
  },
  wire: { tailMm: 25.4, gripMm: 25.4, snagN: 15, safetyFactor: 2, crimpPlayMm: 0.4 },
  minutes: { perPiece: 20, perStrand: 5, perEnd: 4, perBead: 0.25 },
  price: {
    labourMinorPerHour: 1500,
    packingMinor: 150,
    materialPercent: 250,
    roundToMinor: 50,
    smallerCostsLess: false,
  },
};

export function section(
  id: string,
  motif: readonly [string, number][],
  more: Partial<Section> = {},
): Section {
  const parts: MotifPart[] = motif.map(([name, count]) => ({ component: name, count }));
  return { id, name: id, motif: parts, usual: 8, fewest: 0, most: 40, role: 'body', cost: null, ...more };
}

export function strand(sections: readonly Section[], more: Partial<Strand> = {}): Strand {
  return { id: 'only', sections, mirrored: true, ...more };
}

export function design(more: Partial<Design> = {}): Design {
  return {
    id: 'piece',
    kind: 'bracelet',
    strands: [strand([section('run', [['ball-8', 1]])])],
    lie: 'single',
    nestGapMm: 4,
    ends: {
      clasp: 'lobster',
      ring: 'ring',
      crimp: 'crimp',
      cover: 'cover',
      loopMm: 4,
      guard: null,
      extenderMm: 0,
    },
    hanging: null,
    oneSided: false,
    wire: {
      id: 'fine-49',
      name: 'Fine wire',
      diameterMm: 0.48,
      strands: 49,
      breakN: null,
      massGPerM: 0.9,
      costMinorPerM: 120,
    },
    components: COMPONENTS,
    ...more,
  };
}

export const focal = (name: string): Section =>
  section('focal', [[name, 1]], { usual: 1, fewest: 1, most: 1, role: 'focal' });

/** One large bead among small ones. */
export const focalBracelet: Design = design({
  strands: [
    strand([
      focal('boulder'),
      section(
        'run',
        [
          ['ball-8', 1],
          ['ball-3', 1],
        ],
        { usual: 6 },
      ),
      section('filler', [['ball-3', 1]], { role: 'filler', usual: 1 }),
    ]),
  ],
});

/** A pendant between two equal small beads. */
export const pendantNecklace: Design = design({
  id: 'pendant',
  kind: 'necklace',
  strands: [
    strand([
      section('middle', [['ball-4', 1]], { usual: 3 }),
      section('run', [['ball-8', 1]], { usual: 22 }),
    ]),
  ],
  hanging: { pendant: 'drop', rings: ['ring'] },
});

/** Long tubes at one end, balls at the other. */
export const unequalNecklace: Design = design({
  id: 'unequal',
  kind: 'necklace',
  strands: [
    strand(
      [section('tubes', [['tube', 1]], { usual: 18 }), section('balls', [['ball-8', 1]], { usual: 26 })],
      {
        mirrored: false,
      },
    ),
  ],
});

/** Two strands side by side on a clasp with two ways. */
export const twoStrands: Design = design({
  id: 'two',
  lie: 'side-by-side',
  strands: [
    strand([section('run', [['ball-8', 1]])], { id: 'upper' }),
    strand([section('run', [['ball-4', 1]], { usual: 16 })], { id: 'lower' }),
  ],
  ends: { ...design().ends, clasp: 'bar-2', ring: null },
});

export const ALL: readonly Design[] = [design(), focalBracelet, pendantNecklace, unequalNecklace, twoStrands];

/** A copy with some fields of one component changed. */
export function withComponent(of: Design, id: string, more: Partial<Component>): Design {
  const found = of.components[id];
  if (found === undefined) throw new Error(`the workshop has no component ${id}`);
  return { ...of, components: { ...of.components, [id]: { ...found, ...more } } };
}

/** The bench card of a piece with its usual counts. */
export function card(of: Design, hand: Hand = 'right', rules: Rules = RULES): Stringing {
  return stringing(of, rules, describePiece(of, rules, 5000, usual(of)), hand);
}
