/** Designs for the drawing tests and the gallery. */
import type { Counts, Design, MotifPart, Section, Strand } from '#core/design/design.ts';
import { expand, type Placed } from '#core/design/expand.ts';
import { COMPONENTS, wire } from './components.ts';

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
