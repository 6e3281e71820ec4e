/** Designs for the drawing tests and the gallery: made up, with measures such as real components have. */
import type { Component, Look, Wire } from '#core/components/component.ts';
import type { Counts, Design, MotifPart, Section, Strand } from '#core/strand/design.ts';
import { expand, type Placed } from '#core/strand/expand.ts';

const BLANK: Component = {
  id: 'blank',
  kind: 'bead',
  name: 'blank',
  shape: 'ball',
  alongMm: 6,
  acrossMm: 6,
  roundingMm: 3,
  holeMm: 1,
  material: 'glass',
  massG: null,
  look: { family: 'glass', colour: '#808080', accent: null },
  costMinor: 10,
  stock: null,
  closedMm: null,
  handed: false,
  ways: 1,
  loop: null,
  hangMm: 0,
  cautions: [],
};

export const wire: Wire = {
  id: 'wire-49',
  name: 'Steel wire',
  diameterMm: 0.48,
  strands: 49,
  breakN: 116,
  massGPerM: 0.8,
  costMinorPerM: 60,
};

export const looks = {
  river: { family: 'glass', colour: '#2f7f8c', accent: null },
  amber: { family: 'glass', colour: '#c9781e', accent: null },
  lined: { family: 'glass', colour: '#bcd6cf', accent: '#b5485e' },
  clear: { family: 'glass', colour: '#dfe8ea', accent: null },
  black: { family: 'glass', colour: '#16161a', accent: null },
  jasper: { family: 'stone', colour: '#a4502f', accent: '#e0b48a' },
  slate: { family: 'stone', colour: '#5a6672', accent: '#c9d2d8' },
  lapis: { family: 'stone', colour: '#243f8c', accent: '#c9a64a' },
  pearl: { family: 'pearl', colour: '#f1ebe2', accent: '#e2b9c0' },
  greyPearl: { family: 'pearl', colour: '#8e919c', accent: '#7f9c8e' },
  silver: { family: 'metal', colour: '#c4c7cc', accent: null },
  gold: { family: 'metal', colour: '#d3a73f', accent: null },
  copper: { family: 'metal', colour: '#b9714a', accent: null },
  olive: { family: 'wood', colour: '#a97c4b', accent: '#6d4524' },
  ebony: { family: 'wood', colour: '#4b3428', accent: '#241812' },
  nacre: { family: 'shell', colour: '#eee7da', accent: '#d9c2d8' },
} as const satisfies Record<string, Look>;

/** A component of any kind; a ball's measures follow from its size. */
export function component(id: string, more: Partial<Component>): Component {
  return { ...BLANK, id, name: id, ...more };
}

export function ballOf(id: string, sizeMm: number, look: Look, more: Partial<Component> = {}): Component {
  return component(id, { alongMm: sizeMm, acrossMm: sizeMm, roundingMm: sizeMm / 2, look, ...more });
}

export const findings = [
  component('crimp', {
    kind: 'crimp',
    shape: 'tube',
    alongMm: 2,
    acrossMm: 2,
    roundingMm: 0.2,
    holeMm: 1.3,
    look: looks.silver,
    closedMm: 1.8,
  }),
  ballOf('cover', 3, looks.silver, { kind: 'cover', holeMm: 1, closedMm: 1.8 }),
  component('ring', {
    kind: 'ring',
    shape: 'ring',
    alongMm: 4,
    acrossMm: 6,
    roundingMm: 0.8,
    holeMm: 0,
    look: looks.silver,
  }),
  component('lobster', {
    kind: 'clasp',
    shape: 'lobster',
    alongMm: 12,
    acrossMm: 7,
    roundingMm: 1,
    holeMm: 0,
    look: looks.silver,
    handed: true,
  }),
  component('spring', {
    kind: 'clasp',
    shape: 'spring-ring',
    alongMm: 9,
    acrossMm: 7,
    roundingMm: 1,
    holeMm: 0,
    look: looks.gold,
    handed: true,
  }),
  component('toggle', {
    kind: 'clasp',
    shape: 'toggle',
    alongMm: 18,
    acrossMm: 14,
    roundingMm: 1,
    holeMm: 0,
    look: looks.copper,
  }),
  component('hook', {
    kind: 'clasp',
    shape: 'hook',
    alongMm: 18,
    acrossMm: 8,
    roundingMm: 1,
    holeMm: 0,
    look: looks.silver,
  }),
  component('box', {
    kind: 'clasp',
    shape: 'box',
    alongMm: 14,
    acrossMm: 12,
    roundingMm: 1,
    holeMm: 0,
    look: looks.gold,
    ways: 2,
  }),
  component('magnet', {
    kind: 'clasp',
    shape: 'magnetic',
    alongMm: 12,
    acrossMm: 6,
    roundingMm: 1,
    holeMm: 0,
    look: looks.silver,
    cautions: ['magnet'],
  }),
];

export const beads = [
  ballOf('river-8', 8, looks.river),
  ballOf('river-4', 4, looks.river),
  ballOf('amber-10', 10, looks.amber),
  ballOf('lined-6', 6, looks.lined),
  ballOf('clear-8', 8, looks.clear),
  ballOf('black-8', 8, looks.black),
  ballOf('jasper-8', 8, looks.jasper),
  ballOf('lapis-6', 6, looks.lapis),
  ballOf('slate-22', 22, looks.slate),
  ballOf('pearl-7', 7, looks.pearl),
  ballOf('grey-pearl-9', 9, looks.greyPearl),
  ballOf('seed-2', 2.2, looks.gold, { kind: 'spacer', alongMm: 1.6 }),
  ballOf('silver-4', 4, looks.silver, { kind: 'spacer' }),
  ballOf('olive-12', 12, looks.olive),
  component('rondelle', { shape: 'rondelle', alongMm: 4, acrossMm: 8, roundingMm: 1.8, look: looks.amber }),
  component('bicone', { shape: 'bicone', alongMm: 5, acrossMm: 6, roundingMm: 0, look: looks.river }),
  component('bicone-clear', { shape: 'bicone', alongMm: 8, acrossMm: 8, roundingMm: 0, look: looks.clear }),
  component('tube', { shape: 'tube', alongMm: 16, acrossMm: 5, roundingMm: 0, look: looks.slate }),
  component('tube-gold', { shape: 'tube', alongMm: 20, acrossMm: 2.4, roundingMm: 0.2, look: looks.gold }),
  component('cube', { shape: 'cube', alongMm: 7, acrossMm: 7, roundingMm: 0.6, look: looks.lapis }),
  component('cube-wood', { shape: 'cube', alongMm: 9, acrossMm: 9, roundingMm: 0.8, look: looks.ebony }),
  component('chip', { shape: 'chip', alongMm: 5, acrossMm: 8, roundingMm: 1.5, look: looks.jasper }),
  component('coin', { shape: 'coin', alongMm: 14, acrossMm: 14, roundingMm: 2, look: looks.nacre }),
  component('drop', { shape: 'drop', alongMm: 12, acrossMm: 7, roundingMm: 2, look: looks.lined }),
  component('cap', {
    kind: 'cap',
    shape: 'cap',
    alongMm: 3,
    acrossMm: 7,
    roundingMm: 0.5,
    look: looks.silver,
  }),
  component('heishi', {
    kind: 'spacer',
    shape: 'ring',
    alongMm: 1.5,
    acrossMm: 5,
    roundingMm: 0.5,
    look: looks.copper,
  }),
  component('pendant', {
    kind: 'pendant',
    shape: 'drop',
    alongMm: 3,
    acrossMm: 16,
    roundingMm: 1,
    holeMm: 0,
    look: looks.jasper,
    loop: 'in-plane',
    hangMm: 30,
    massG: 6,
  }),
];

const COMPONENTS = Object.fromEntries([...findings, ...beads].map((one) => [one.id, one]));

export function section(
  id: string,
  motif: readonly (readonly [string, number])[],
  usual: number,
  role: Section['role'] = 'body',
): Section {
  const parts: MotifPart[] = motif.map(([name, count]) => ({ component: name, count }));
  return { id, name: id, motif: parts, usual, fewest: 0, most: 99, role, cost: null };
}

export function strand(id: string, mirrored: boolean, sections: readonly Section[]): Strand {
  return { id, mirrored, sections };
}

export function design(id: string, more: Partial<Design>): Design {
  return {
    id,
    kind: 'bracelet',
    strands: [],
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
    wire,
    components: COMPONENTS,
    ...more,
  };
}

/** The strands of a design with every section at its usual count. */
export function usualSequences(of: Design): Placed[][] {
  const counts: Counts = of.strands.map(({ sections }) => sections.map(({ usual }) => usual));
  return expand(of, counts);
}

/** One of each kind of piece. */
export const pieces: readonly Design[] = [
  design('balls', {
    strands: [
      strand('a', true, [
        section('middle', [['river-8', 1]], 1, 'focal'),
        section('run', [['river-8', 1]], 9),
      ]),
    ],
  }),
  design('focal', {
    oneSided: true,
    strands: [
      strand('a', true, [
        section('focal', [['slate-22', 1]], 1, 'focal'),
        section(
          'beside',
          [
            ['cap', 1],
            ['amber-10', 1],
            ['cap', 1],
          ],
          1,
        ),
        section(
          'run',
          [
            ['lined-6', 1],
            ['silver-4', 1],
          ],
          3,
        ),
        section('fill', [['river-4', 1]], 4, 'filler'),
      ]),
    ],
  }),
  design('tubes', {
    ends: {
      clasp: 'toggle',
      ring: null,
      crimp: 'crimp',
      cover: null,
      loopMm: 3,
      guard: null,
      extenderMm: 0,
    },
    strands: [
      strand('a', true, [section('run', [['tube', 1]], 4), section('fill', [['cube', 1]], 1, 'filler')]),
    ],
  }),
  design('pendant', {
    kind: 'necklace',
    hanging: { pendant: 'pendant', rings: ['ring'] },
    strands: [
      strand('a', true, [
        section(
          'middle',
          [
            ['seed-2', 1],
            ['grey-pearl-9', 1],
            ['seed-2', 1],
          ],
          1,
        ),
        section(
          'run',
          [
            ['pearl-7', 1],
            ['bicone', 1],
          ],
          12,
        ),
        section('fill', [['silver-4', 1]], 10, 'filler'),
      ]),
    ],
  }),
  design('uneven', {
    kind: 'necklace',
    ends: {
      clasp: 'hook',
      ring: 'ring',
      crimp: 'crimp',
      cover: 'cover',
      loopMm: 4,
      guard: null,
      extenderMm: 0,
    },
    strands: [
      strand('a', false, [
        section(
          'stones',
          [
            ['jasper-8', 2],
            ['chip', 3],
          ],
          7,
        ),
        section(
          'shells',
          [
            ['coin', 1],
            ['heishi', 2],
          ],
          6,
        ),
        section(
          'drops',
          [
            ['drop', 1],
            ['seed-2', 1],
          ],
          6,
        ),
        section(
          'wood',
          [
            ['olive-12', 1],
            ['cube-wood', 1],
          ],
          3,
        ),
      ]),
    ],
  }),
  design('two-strand', {
    lie: 'side-by-side',
    ends: {
      clasp: 'box',
      ring: null,
      crimp: 'crimp',
      cover: null,
      loopMm: 3,
      guard: null,
      extenderMm: 0,
    },
    strands: [
      strand('a', true, [
        section(
          'run',
          [
            ['lapis-6', 1],
            ['seed-2', 1],
          ],
          10,
        ),
      ]),
      strand('b', true, [
        section(
          'run',
          [
            ['pearl-7', 1],
            ['seed-2', 1],
          ],
          9,
        ),
      ]),
    ],
  }),
];
