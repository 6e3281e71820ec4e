/** Bracelets and necklaces of a wanted size to time the computation on. Made up, alike from run to run. */
import type { Component } from '#core/design/component.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Design, PieceKind, Section } from '#core/design/design.ts';

function bead(id: string, alongMm: number, over: Partial<Component> = {}): Component {
  return {
    id,
    kind: 'bead',
    name: id,
    shape: 'ball',
    alongMm,
    acrossMm: alongMm,
    roundingMm: alongMm / 2,
    holeMm: 1,
    material: 'glass',
    massG: null,
    look: { family: 'glass', colour: '#557788', accent: null },
    costMinor: 10,
    stock: null,
    closedMm: null,
    handed: false,
    ways: 1,
    loop: null,
    hangMm: 0,
    cautions: [],
    ...over,
  };
}

/** Balls, a rim or two, a focal: the mixture that the demo catalogue has. */
const BEADS: readonly Component[] = [
  bead('focal', 14),
  bead('five', 5),
  bead('four', 4),
  bead('three', 3),
  bead('two', 2),
  bead('disc', 1, { acrossMm: 5, roundingMm: 0, shape: 'rondelle' }),
  bead('tube', 6, { acrossMm: 3, roundingMm: 0, shape: 'tube' }),
  bead('crimp', 2, { kind: 'crimp', acrossMm: 2, roundingMm: 0, shape: 'tube', holeMm: 1.3, closedMm: 2 }),
  bead('cover', 3, { kind: 'cover', closedMm: 2.4 }),
  bead('clasp', 12, { kind: 'clasp', shape: 'lobster', acrossMm: 6, roundingMm: 1, holeMm: 0, handed: true }),
  bead('ring', 4, { kind: 'ring', shape: 'ring', acrossMm: 5, roundingMm: 2, holeMm: 3 }),
];

/** Motifs of the adjustable sections, centre first. */
const MOTIFS: readonly Section['motif'][] = [
  [
    { component: 'five', count: 1 },
    { component: 'disc', count: 1 },
  ],
  [{ component: 'three', count: 1 }],
  [{ component: 'tube', count: 1 }],
  [{ component: 'four', count: 1 }],
  [
    { component: 'three', count: 1 },
    { component: 'two', count: 1 },
  ],
  [{ component: 'two', count: 1 }],
];

/** A mirrored design of about `components` beads in `sections` adjustable sections beside its focal. */
export function benchDesign(kind: PieceKind, components: number, sections: number): Design {
  const share = components / 2 / sections;
  const made = MOTIFS.slice(0, sections).map((motif, at): Section => {
    const usual = Math.max(1, Math.round(share / motif.reduce((sum, part) => sum + part.count, 0)));
    const reach = Math.max(2, Math.round(usual / 2));
    return {
      id: `s${at}`,
      name: `s${at}`,
      motif,
      usual,
      fewest: Math.max(0, usual - reach),
      most: usual + reach,
      role: 'body',
      cost: null,
    };
  });
  const focal: Section = {
    id: 'focal',
    name: 'focal',
    motif: [{ component: 'focal', count: 1 }],
    usual: 1,
    fewest: 1,
    most: 1,
    role: 'focal',
    cost: null,
  };
  return {
    id: 'bench',
    kind,
    strands: [{ id: 'one', sections: [focal, ...made], mirrored: true }],
    lie: 'single',
    nestGapMm: 0,
    ends: {
      clasp: 'clasp',
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
      id: 'w',
      name: 'w',
      diameterMm: 0.38,
      strands: 19,
      breakN: 60,
      massGPerM: 0.6,
      costMinorPerM: 100,
    },
    components: Object.fromEntries(BEADS.map((one) => [one.id, one])),
  };
}

export const benchRules: Rules = {
  currency: 'GBP',
  toleranceMm: { necklace: 6, bracelet: 3, anklet: 4, collar: 4 },
  easeMm: {
    necklace: { snug: 10, easy: 40, loose: 90 },
    bracelet: { snug: 6, easy: 13, loose: 25 },
    anklet: { snug: 6, easy: 13, loose: 25 },
    collar: { snug: 8, easy: 15, loose: 30 },
  },
  wire: { tailMm: 25, gripMm: 25, snagN: 20, safetyFactor: 2, crimpPlayMm: 0.6 },
  minutes: { perPiece: 10, perStrand: 5, perEnd: 4, perBead: 0.3 },
  price: {
    labourMinorPerHour: 1600,
    packingMinor: 150,
    materialPercent: 250,
    roundToMinor: 50,
    smallerCostsLess: false,
  },
};
