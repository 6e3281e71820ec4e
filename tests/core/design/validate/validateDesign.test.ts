import { describe, expect, it } from 'vitest';
import * as caps from '#core/design/caps.ts';
import type { Component } from '#core/design/component.ts';
import type { Design, Section, Strand } from '#core/design/design.ts';
import { ball, codes, found, told } from '#tests/support/validated.ts';
import {
  ALL,
  design,
  focal,
  pendantNecklace,
  section,
  strand,
  twoStrands,
  withComponent,
} from '#tests/support/workshop.ts';

const ends = (more: Partial<Design['ends']>) => design({ ends: { ...design().ends, ...more } });
const oneStrand = (sections: readonly Section[], more: Partial<Strand> = {}) =>
  design({ strands: [strand(sections, more)] });

it('sound designs have no problem', () => {
  for (const piece of ALL) expect(found(piece)).toEqual([]);
});

describe('measures that can’t be true together', () => {
  it.each<[Partial<Component>, unknown[]]>([
    [{ alongMm: 0, roundingMm: 0 }, ['no-length', 'components.ball-8.alongMm', { component: 'ball-8' }]],
    [
      { roundingMm: 4.1 },
      [
        'rounding-too-large',
        'components.ball-8.roundingMm',
        { component: 'ball-8', roundingMm: 4.1, mostMm: 4 },
      ],
    ],
    [
      { acrossMm: 6 },
      [
        'rounding-too-large',
        'components.ball-8.roundingMm',
        { component: 'ball-8', roundingMm: 4, mostMm: 3 },
      ],
    ],
    [
      { holeMm: 8 },
      ['hole-too-wide', 'components.ball-8.holeMm', { component: 'ball-8', holeMm: 8, acrossMm: 8 }],
    ],
    [
      { material: 'cheese' },
      ['unknown-material', 'components.ball-8.material', { component: 'ball-8', material: 'cheese' }],
    ],
    [{ id: 'other' }, ['id-differs', 'components.ball-8.id', { component: 'other', key: 'ball-8' }]],
  ])('%j', (more, problem) => {
    expect(told(ball(more))).toEqual([problem]);
  });

  it('nothing is nothing wide', () => {
    expect(told(ball({ acrossMm: 0, roundingMm: 0 }))).toEqual([
      ['no-width', 'components.ball-8.acrossMm', { component: 'ball-8' }],
    ]);
  });

  it('a pendant, clasp or ring may take no length, and a corner may be a whisker over half', () => {
    const short = { alongMm: 0, roundingMm: 0 };
    for (const id of ['drop', 'lobster', 'ring']) {
      expect(found(withComponent(pendantNecklace, id, short))).toEqual([]);
    }
    expect(found(ball({ roundingMm: 4.0005 }))).toEqual([]);
  });
});

describe('names', () => {
  it('of components that aren’t there', () => {
    const nowhere = design({
      strands: [
        strand([
          section('run', [
            ['ball-8', 1],
            ['ghost', 1],
          ]),
        ]),
      ],
      ends: { clasp: 'g1', ring: 'g2', crimp: 'g3', cover: 'g4', guard: 'g5', loopMm: 4, extenderMm: 0 },
      hanging: { pendant: 'g6', rings: ['ring', 'g7'] },
    });
    expect(told(nowhere)).toEqual([
      ['unknown-component', 'strands.0.sections.0.motif.1', { component: 'ghost' }],
      ['unknown-component', 'ends.clasp', { component: 'g1' }],
      ['unknown-component', 'ends.ring', { component: 'g2' }],
      ['unknown-component', 'ends.crimp', { component: 'g3' }],
      ['unknown-component', 'ends.cover', { component: 'g4' }],
      ['unknown-component', 'ends.guard', { component: 'g5' }],
      ['unknown-component', 'hanging.pendant', { component: 'g6' }],
      ['unknown-component', 'hanging.rings.1', { component: 'g7' }],
    ]);
  });

  it('of components that can’t stand there', () => {
    const wrong = design({
      strands: [
        strand([
          section('run', [
            ['lobster', 1],
            ['cover', 1],
            ['drop', 1],
          ]),
        ]),
      ],
      ends: {
        clasp: 'ring',
        ring: 'crimp',
        crimp: 'cover',
        cover: 'crimp',
        guard: 'ring',
        loopMm: 4,
        extenderMm: 0,
      },
      hanging: { pendant: 'ball-8', rings: ['ball-4'] },
    });
    expect(codes(wrong).filter((code) => code.startsWith('wrong-kind'))).toEqual([
      'wrong-kind strands.0.sections.0.motif.0',
      'wrong-kind strands.0.sections.0.motif.1',
      'wrong-kind strands.0.sections.0.motif.2',
      'wrong-kind ends.clasp',
      'wrong-kind ends.ring',
      'wrong-kind ends.crimp',
      'wrong-kind ends.cover',
      'wrong-kind ends.guard',
      'wrong-kind hanging.pendant',
      'wrong-kind hanging.rings.0',
    ]);
    expect(told(wrong)).toContainEqual([
      'wrong-kind',
      'ends.clasp',
      { component: 'ring', kind: 'ring', kinds: ['clasp'] },
    ]);
  });

  it('spacers, caps, rings and crimps may be strung; a bead or spacer may be the far end', () => {
    const kinds = ['spacer', 'cap', 'ring', 'crimp'] as const;
    for (const kind of kinds) expect(found(ball({ kind, shape: 'tube' }))).toEqual([]);
    for (const ring of ['ball-8', 'toggle']) expect(found(ends({ ring }))).toEqual([]);
  });
});

describe('counts', () => {
  const run = (more: Partial<Section>) => section('run', [['ball-8', 1]], more);

  it.each<[Section[], unknown]>([
    [
      [run({ fewest: 9 })],
      ['counts-order', 'strands.0.sections.0', { section: 'run', fewest: 9, usual: 8, most: 40 }],
    ],
    [
      [run({ most: 7 })],
      ['counts-order', 'strands.0.sections.0', { section: 'run', fewest: 0, usual: 8, most: 7 }],
    ],
    [
      [run({}), section('none', [])],
      ['section-empty', 'strands.0.sections.1', { section: 'none' }],
    ],
    [
      [run({}), run({})],
      ['section-twice', 'strands.0.sections.1', { section: 'run' }],
    ],
    [
      [{ ...focal('boulder'), most: 2 }, run({})],
      ['focal-changes', 'strands.0.sections.0', { section: 'focal', fewest: 1, most: 2 }],
    ],
    [
      [{ ...focal('boulder'), fewest: 0 }, run({})],
      ['focal-changes', 'strands.0.sections.0', { section: 'focal', fewest: 0, most: 1 }],
    ],
    [
      [{ ...focal('boulder'), usual: 2, fewest: 2, most: 2 }, run({})],
      ['focal-not-once', 'strands.0.sections.0', { section: 'focal', usual: 2 }],
    ],
    [
      [run({}), focal('boulder')],
      ['focal-not-first', 'strands.0.sections.1', { section: 'focal' }],
    ],
  ])('case %#', (sections, problem) => {
    expect(told(oneStrand(sections))).toEqual([problem]);
  });

  it('in one run a focal stands anywhere, as often as it is usual', () => {
    const twice = { ...focal('boulder'), usual: 2, fewest: 2, most: 2 };
    expect(found(oneStrand([run({}), twice], { mirrored: false }))).toEqual([]);
  });

  it('a piece has a strand, and a strand has something on it', () => {
    expect(told(design({ strands: [] }))).toEqual([['no-strand', 'strands', {}]]);
    expect(told(oneStrand([]))).toEqual([['strand-empty', 'strands.0', {}]]);
    expect(codes(oneStrand([run({ usual: 0, most: 0 })]))).toEqual(['strand-empty strands.0']);
  });

  it('a strand has an end: both sides and every part counted, a focal once', () => {
    const most = (count: number, more: Partial<Strand> = {}) =>
      codes(oneStrand([run({ most: count })], more));
    expect(most(1000, { mirrored: false })).toEqual([]);
    const four = (mirrored: boolean, count: number) =>
      oneStrand(
        [
          section(
            'run',
            [
              ['ball-8', 2],
              ['ball-4', 2],
            ],
            { most: count },
          ),
        ],
        { mirrored },
      );
    expect(found(four(false, 750))).toEqual([]);
    expect(told(four(false, 751))).toEqual([
      ['strand-too-long', 'strands.0', { count: 3004, most: caps.MOST_ON_STRAND }],
    ]);
    expect(found(four(true, 375))).toEqual([]);
    expect(codes(four(true, 376))).toEqual(['strand-too-long strands.0']);
    expect(codes(oneStrand([focal('boulder'), section('run', [['ball-8', 4]], { most: 375 })]))).toEqual([
      'strand-too-long strands.0',
    ]);
    expect(
      codes(
        oneStrand([
          { ...focal('boulder'), motif: [{ component: 'boulder', count: 200 }] },
          section('run', [['ball-8', 4]], { most: 350 }),
        ]),
      ),
    ).toEqual([]);
  });

  it('the clasp has ways enough; nested strands may share one', () => {
    expect(told({ ...twoStrands, ends: { ...twoStrands.ends, clasp: 'lobster' } })).toEqual([
      ['ways', 'ends.clasp', { clasp: 'lobster', ways: 1, strands: 2 }],
    ]);
    expect(found({ ...twoStrands, lie: 'nested', ends: { ...twoStrands.ends, clasp: 'lobster' } })).toEqual(
      [],
    );
    const three = { ...twoStrands, strands: [...twoStrands.strands, ...design().strands] };
    expect(codes({ ...three, lie: 'nested' })).toEqual(['ways ends.clasp']);
    expect(told({ ...twoStrands, lie: 'single' })).toEqual([['lie-single', 'lie', { strands: 2 }]]);
  });
});

describe('holes', () => {
  it('a bead that doesn’t take the wire is named once, wherever it stands', () => {
    const narrow = withComponent(twoStrands, 'ball-8', { holeMm: 0.4 });
    const both = { ...narrow, strands: [narrow.strands[0], { ...narrow.strands[0], id: 'again' }] };
    expect(told(both)).toEqual([
      [
        'hole-too-small',
        'strands.0.sections.0',
        { component: 'ball-8', holeMm: 0.4, needMm: 0.48, wire: 'fine-49' },
      ],
    ]);
    expect(found(withComponent(design(), 'ball-8', { holeMm: 0.48 }))).toEqual([]);
  });

  it('two different beads are two problems', () => {
    const two = oneStrand([
      section('run', [
        ['ball-8', 1],
        ['ball-4', 1],
      ]),
    ]);
    const narrow = withComponent(withComponent(two, 'ball-8', { holeMm: 0.4 }), 'ball-4', { holeMm: 0.4 });
    expect(codes(narrow)).toEqual([
      'hole-too-small strands.0.sections.0',
      'hole-too-small strands.0.sections.0',
    ]);
  });

  it('a crimp that doesn’t take two wires', () => {
    expect(told(withComponent(design(), 'crimp', { holeMm: 0.9 }))).toEqual([
      ['crimp-too-tight', 'ends.crimp', { crimp: 'crimp', insideMm: 0.9, needMm: 0.96, wire: 'fine-49' }],
    ]);
    expect(found(withComponent(design(), 'crimp', { holeMm: 0.96 }))).toEqual([]);
  });

  it('a cover too small for the closed crimp; a loose one is no fault of the design', () => {
    expect(told(withComponent(design(), 'cover', { closedMm: 2 }))).toEqual([
      ['cover-too-tight', 'ends.cover', { cover: 'cover', takesMm: 2, crimp: 'crimp', closedMm: 2.2 }],
    ]);
    expect(found(withComponent(design(), 'cover', { closedMm: 5 }))).toEqual([]);
    expect(found(ends({ cover: null }))).toEqual([]);
  });

  it('a guard that doesn’t take the wire', () => {
    const guarded = ends({ guard: 'guard' });
    expect(found(guarded)).toEqual([]);
    expect(told(withComponent(guarded, 'guard', { holeMm: 0.3 }))).toEqual([
      ['hole-too-small', 'ends.guard', { component: 'guard', holeMm: 0.3, needMm: 0.48, wire: 'fine-49' }],
    ]);
  });
});
