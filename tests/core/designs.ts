/** Designs to try the fit on: a few by hand, and as many random ones as asked for. */
import type { Component } from '#core/design/component.ts';
import type { FitSection } from '#core/solver/problem.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Design, PieceKind, Section, Strand } from '#core/design/design.ts';
import { BLANK } from '#tests/support/blank.ts';
import { benchRules as rules } from '../../src/command/benchmarks/designs.ts';

export { rules };

export function component(id: string, part: Partial<Component> = {}): Component {
  const alongMm = part.alongMm ?? BLANK.alongMm;
  const acrossMm = part.acrossMm ?? alongMm;
  const roundingMm = Math.min(alongMm, acrossMm) / 2;
  return { ...BLANK, id, name: id, alongMm, acrossMm, roundingMm, holeMm: 1.2, ...part };
}

export const ball = (id: string, mm: number): Component => component(id, { alongMm: mm });

const tube = (id: string, alongMm: number, acrossMm: number): Component =>
  component(id, { shape: 'tube', alongMm, acrossMm, roundingMm: 0 });

const FINDINGS: readonly Component[] = [
  component('crimp', {
    kind: 'crimp',
    shape: 'tube',
    alongMm: 2,
    acrossMm: 2,
    roundingMm: 0,
    holeMm: 1.3,
    closedMm: 2,
  }),
  component('cover', { kind: 'cover', alongMm: 3, acrossMm: 3, roundingMm: 1.5, holeMm: 1.2, closedMm: 2.4 }),
  component('clasp', {
    kind: 'clasp',
    shape: 'lobster',
    alongMm: 10,
    acrossMm: 6,
    roundingMm: 1,
    holeMm: 0,
    handed: true,
    ways: 4,
  }),
  component('ring', { kind: 'ring', shape: 'ring', alongMm: 4, acrossMm: 5, roundingMm: 2, holeMm: 4 }),
];

export function section(
  id: string,
  motif: Section['motif'],
  counts: readonly [usual: number, fewest: number, most: number],
  role: Section['role'] = 'body',
  cost: number | null = null,
): Section {
  const [usual, fewest, most] = counts;
  return { id, name: id, motif, usual, fewest, most, role, cost };
}

/** One section as a fit sees it: none to three repeats, usually one. */
export const fitSection = (over: Partial<FitSection>): FitSection => ({
  id: 'section',
  usual: 1,
  fewest: 0,
  most: 3,
  cost: 1,
  partsPerRepeat: 1,
  takes: [],
  ...over,
});

export function strand(id: string, sections: readonly Section[], mirrored = true): Strand {
  return { id, sections, mirrored };
}

export function design(
  kind: PieceKind,
  strands: readonly Strand[],
  beads: readonly Component[],
  over: Partial<Design> = {},
): Design {
  return {
    id: 'try',
    kind,
    strands,
    lie: strands.length > 1 ? 'side-by-side' : 'single',
    nestGapMm: 4,
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
      id: 'wire',
      name: 'wire',
      diameterMm: 0.38,
      strands: 19,
      breakN: 60,
      massGPerM: 0.6,
      costMinorPerM: 100,
    },
    components: Object.fromEntries([...FINDINGS, ...beads].map((one) => [one.id, one])),
    ...over,
  };
}

/** One large focal bead among small ones, caps beside it, fillers at the clasp. */
export const focalBracelet = design(
  'bracelet',
  [
    strand('only', [
      section('focal', [{ component: 'focal', count: 1 }], [1, 1, 1], 'focal'),
      section(
        'pairs',
        [
          { component: 'six', count: 1 },
          { component: 'three', count: 1 },
        ],
        [5, 3, 7],
      ),
      section('run', [{ component: 'four', count: 1 }], [4, 0, 10]),
      section('filler', [{ component: 'two', count: 1 }], [1, 0, 4], 'filler'),
    ]),
  ],
  [ball('focal', 20), ball('six', 6), ball('three', 3), ball('four', 4), ball('two', 2)],
);

/** Sharp tubes with thin spacers between. */
export const tubeBracelet = design(
  'bracelet',
  [
    strand('only', [
      section(
        'tubes',
        [
          { component: 'tube', count: 1 },
          { component: 'disc', count: 1 },
        ],
        [7, 5, 9],
      ),
      section('filler', [{ component: 'three', count: 1 }], [2, 0, 6], 'filler'),
    ]),
  ],
  [tube('tube', 10, 6), tube('disc', 1, 7), ball('three', 3)],
);

export const necklace = design(
  'necklace',
  [
    strand('only', [
      section(
        'front',
        [
          { component: 'eight', count: 1 },
          { component: 'three', count: 1 },
        ],
        [9, 9, 9],
      ),
      section('sides', [{ component: 'six', count: 1 }], [14, 8, 24]),
      section(
        'back',
        [
          { component: 'four', count: 1 },
          { component: 'three', count: 2 },
        ],
        [3, 0, 12],
        'filler',
      ),
    ]),
  ],
  [ball('eight', 8), ball('six', 6), ball('four', 4), ball('three', 3)],
);

/** The design with these components counted, and no others. */
export function stocked(piece: Design, stock: Record<string, number>): Design {
  const components: Record<string, Component> = {};
  for (const [id, one] of Object.entries(piece.components))
    components[id] = { ...one, stock: stock[id] ?? null };
  return { ...piece, components };
}

/** The shop's rules with hardly any tolerance, so that most sizes are near ones. */
export const strict: Rules = {
  ...rules,
  toleranceMm: { necklace: 0.2, bracelet: 0.2, anklet: 0.2, collar: 0.2 },
};
