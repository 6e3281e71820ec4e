import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as caps from '#core/components/caps.ts';
import { checkDesign } from '#core/components/check.ts';
import type { Component } from '#core/components/component.ts';
import type { DesignProblem } from '#core/sizing/sizing.ts';
import type { Design, Section, Strand } from '#core/strand/design.ts';
import {
  ALL,
  COMPONENTS,
  design,
  focal,
  pendantNecklace,
  section,
  strand,
  twoStrands,
  withComponent,
} from '#tests/support/workshop.ts';

const found = (of: unknown): DesignProblem[] => checkDesign(of as Design);
const told = (of: unknown) => found(of).map(({ code, at, args }) => [code, at, args]);
const codes = (of: unknown) => found(of).map(({ code, at }) => `${code} ${at}`);

const ends = (more: Partial<Design['ends']>) => design({ ends: { ...design().ends, ...more } });
const oneStrand = (sections: readonly Section[], more: Partial<Strand> = {}) =>
  design({ strands: [strand(sections, more)] });
const ball = (more: Partial<Component>) => withComponent(design(), 'ball-8', more);

/** A copy with the value at a dotted path replaced; `undefined` takes it away. */
function changed(of: Design, path: string, value: unknown): unknown {
  const copy = structuredClone(of) as unknown as Record<string, unknown>;
  const steps = path.split('.');
  let at: Record<string, unknown> = copy;
  for (const step of steps.slice(0, -1)) at = at[step] as Record<string, unknown>;
  const last = steps.at(-1) ?? '';
  if (value === undefined) delete at[last];
  else at[last] = value;
  return copy;
}

it('sound designs have no problem', () => {
  for (const piece of ALL) expect(found(piece)).toEqual([]);
});

describe('what isn’t a design', () => {
  it.each([null, undefined, 3, 'text', true, [], [1]])('%j', (value) => {
    expect(told(value)).toEqual([['bad-shape', '', { want: 'object' }]]);
  });

  it('an empty object lacks every field', () => {
    expect(codes({})).toEqual(
      ['id', 'kind', 'strands', 'lie', 'nestGapMm', 'ends', 'hanging', 'oneSided', 'wire', 'components'].map(
        (field) => `bad-shape ${field}`,
      ),
    );
  });

  it.each([
    ['id', 3, { want: 'text' }],
    ['id', 'x'.repeat(caps.MOST_TEXT + 1), { want: 'text' }],
    ['kind', 'belt', { want: 'necklace, bracelet, anklet, collar' }],
    ['lie', 'heap', { want: 'single, side-by-side, nested' }],
    ['strands', {}, { want: 'list' }],
    ['strands', null, { want: 'list' }],
    ['strands.0', 3, { want: 'object' }],
    ['strands.0.mirrored', 1, { want: 'true or false' }],
    ['strands.0.sections', 'x', { want: 'list' }],
    ['strands.0.sections.0.usual', 1.5, { want: 'whole number' }],
    ['strands.0.sections.0.usual', '8', { want: 'whole number' }],
    ['strands.0.sections.0.role', 'hero', { want: 'focal, body, filler' }],
    ['strands.0.sections.0.motif', 3, { want: 'list' }],
    ['strands.0.sections.0.motif.0.component', '', { want: 'id' }],
    ['strands.0.sections.0.motif.0.component', 'toString', { want: 'id' }],
    ['strands.0.sections.0.motif.0.component', 'x'.repeat(caps.MOST_TEXT + 1), { want: 'id' }],
    ['nestGapMm', NaN, { want: 'number' }],
    ['nestGapMm', Infinity, { want: 'number' }],
    ['nestGapMm', '4', { want: 'number' }],
    ['ends.clasp', 7, { want: 'id' }],
    ['ends.ring', 7, { want: 'id' }],
    ['ends.guard', undefined, { want: 'id' }],
    ['ends.loopMm', null, { want: 'number' }],
    ['hanging', 'drop', { want: 'object' }],
    ['hanging', undefined, { want: 'object' }],
    ['oneSided', 'yes', { want: 'true or false' }],
    ['wire', null, { want: 'object' }],
    ['wire.strands', 7.5, { want: 'whole number' }],
    ['wire.breakN', 'strong', { want: 'number' }],
    ['wire.massGPerM', undefined, { want: 'number' }],
    ['components', [], { want: 'object' }],
    ['components', null, { want: 'object' }],
    ['components.ball-8.kind', 'nut', { want: 'bead, spacer, cap, crimp, cover, ring, clasp, pendant' }],
    ['components.ball-8.handed', 0, { want: 'true or false' }],
    ['components.ball-8.look', null, { want: 'object' }],
    ['components.ball-8.look.accent', 3, { want: 'text' }],
    ['components.ball-8.massG', undefined, { want: 'number' }],
    ['components.ball-8.costMinor', 0.5, { want: 'whole number' }],
    ['components.ball-8.cautions', 'sharp', { want: 'list' }],
    ['components.ball-8.loop', 'square', { want: 'in-plane, through' }],
  ])('%s as %j', (path, value, args) => {
    expect(told(changed(design(), path, value))).toEqual([['bad-shape', path, args]]);
  });

  it.each([
    ['components.ball-8.cautions.0', 'hot', { want: 'magnet, nickel, lead, sharp' }],
    ['hanging.rings.0', 4, { want: 'id' }],
  ])('%s as %j', (path, value, args) => {
    const base = changed(pendantNecklace, path.replace(/\.\d+$/, ''), [value]);
    expect(told(base)).toEqual([['bad-shape', path, args]]);
  });

  it('a field that only the prototype has is missing', () => {
    const inherited = Object.assign(Object.create({ id: 'piece' }), changed(design(), 'id', undefined));
    expect(codes(inherited)).toEqual(['bad-shape id']);
  });

  it('fields the core doesn’t know are nobody’s concern', () => {
    expect(found({ ...design(), note: 'hello', 7: null })).toEqual([]);
  });
});

describe('figures out of range', () => {
  it.each([
    ['nestGapMm', -1, 'bad-measure', 0, caps.MOST_MEASURE_MM],
    ['nestGapMm', caps.MOST_MEASURE_MM + 1, 'too-large', 0, caps.MOST_MEASURE_MM],
    ['ends.loopMm', -0.1, 'bad-measure', 0, caps.MOST_MEASURE_MM],
    ['ends.extenderMm', 1e9, 'too-large', 0, caps.MOST_MEASURE_MM],
    ['wire.diameterMm', 0.05, 'bad-measure', 0.1, caps.MOST_WIRE_MM],
    ['wire.diameterMm', 3.5, 'too-large', 0.1, caps.MOST_WIRE_MM],
    ['wire.strands', 0, 'bad-measure', 1, 1000],
    ['wire.breakN', 0, 'bad-measure', 0.1, 100_000],
    ['wire.massGPerM', -1, 'bad-measure', 0, 1000],
    ['wire.costMinorPerM', -1, 'bad-measure', 0, caps.MOST_MINOR],
    ['components.ball-8.alongMm', 1000, 'too-large', 0, caps.MOST_MEASURE_MM],
    ['components.ball-8.holeMm', -1, 'bad-measure', 0, caps.MOST_MEASURE_MM],
    ['components.ball-8.massG', -1, 'bad-measure', 0, caps.MOST_MASS_G],
    ['components.ball-8.costMinor', caps.MOST_MINOR + 1, 'too-large', 0, caps.MOST_MINOR],
    ['components.ball-8.stock', -1, 'bad-measure', 0, caps.MOST_MINOR],
    ['components.ball-8.ways', 0, 'bad-measure', 1, caps.MOST_STRANDS],
    ['strands.0.sections.0.usual', -1, 'bad-measure', 0, caps.MOST_REPEATS],
    ['strands.0.sections.0.most', caps.MOST_REPEATS + 1, 'too-large', 0, caps.MOST_REPEATS],
    ['strands.0.sections.0.cost', -1, 'bad-measure', 0, 1_000_000],
    ['strands.0.sections.0.motif.0.count', 0, 'bad-measure', 1, caps.MOST_IN_ROW],
    ['strands.0.sections.0.motif.0.count', caps.MOST_IN_ROW + 1, 'too-large', 1, caps.MOST_IN_ROW],
  ])('%s as %f is %s', (path, value, code, least, most) => {
    expect(told(changed(design(), path, value))).toEqual([[code, path, { value, least, most }]]);
  });

  it('lists and tables have an end', () => {
    const many = <Item>(item: Item, count: number) => new Array<Item>(count).fill(item);
    const tooMany = (path: string, value: unknown, length: number, most: number) =>
      expect(told(changed(pendantNecklace, path, value))).toContainEqual([
        'too-large',
        path,
        { value: length, least: 0, most },
      ]);
    tooMany('strands', many(pendantNecklace.strands[0], 13), 13, caps.MOST_STRANDS);
    tooMany('strands.0.sections', many(section('s', []), 61), 61, caps.MOST_SECTIONS);
    tooMany(
      'strands.0.sections.0.motif',
      many({ component: 'ball-8', count: 1 }, 41),
      41,
      caps.MOST_MOTIF_PARTS,
    );
    tooMany('hanging.rings', many('ring', 13), 13, caps.MOST_RINGS);
    const table = Object.fromEntries(many(0, 201).map((_, n) => [`c${n}`, null]));
    tooMany('components', table, 201, caps.MOST_KINDS);
  });

  it('at their limits they pass', () => {
    expect(
      found(
        ball({
          alongMm: 300,
          acrossMm: 300,
          roundingMm: 0,
          costMinor: caps.MOST_MINOR,
          massG: caps.MOST_MASS_G,
        }),
      ),
    ).toEqual([]);
    expect(found(design({ wire: { ...design().wire, diameterMm: 0.1, breakN: 0.1 } }))).toEqual([]);
  });
});

describe('measures that can’t be true together', () => {
  it.each<[Partial<Component>, unknown[]]>([
    [
      { alongMm: 0, roundingMm: 0 },
      ['bad-measure', 'components.ball-8.alongMm', { value: 0, why: 'nothing-long' }],
    ],
    [
      { roundingMm: 4.1 },
      ['bad-measure', 'components.ball-8.roundingMm', { value: 4.1, most: 4, why: 'over-half' }],
    ],
    [
      { acrossMm: 6 },
      ['bad-measure', 'components.ball-8.roundingMm', { value: 4, most: 3, why: 'over-half' }],
    ],
    [
      { holeMm: 8 },
      ['bad-measure', 'components.ball-8.holeMm', { value: 8, most: 8, why: 'hole-over-bead' }],
    ],
    [{ material: 'cheese' }, ['unknown-material', 'components.ball-8.material', { material: 'cheese' }]],
    [{ id: 'other' }, ['bad-shape', 'components.ball-8.id', { want: 'ball-8' }]],
  ])('%j', (more, problem) => {
    expect(told(ball(more))).toEqual([problem]);
  });

  it('nothing is nothing wide', () => {
    expect(told(ball({ acrossMm: 0, roundingMm: 0 }))).toEqual([
      ['bad-measure', 'components.ball-8.acrossMm', { value: 0, why: 'nothing-wide' }],
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
    expect(found(wrong).find(({ at }) => at === 'ends.clasp')?.args).toEqual({
      component: 'ring',
      kind: 'ring',
      kinds: 'clasp',
    });
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
      ['bad-counts', 'strands.0.sections.0', { section: 'run', usual: 8, fewest: 9, most: 40, why: 'order' }],
    ],
    [
      [run({ most: 7 })],
      ['bad-counts', 'strands.0.sections.0', { section: 'run', usual: 8, fewest: 0, most: 7, why: 'order' }],
    ],
    [
      [run({}), section('none', [])],
      [
        'bad-counts',
        'strands.0.sections.1',
        { section: 'none', usual: 8, fewest: 0, most: 40, why: 'empty-motif' },
      ],
    ],
    [
      [run({}), run({})],
      ['bad-counts', 'strands.0.sections.1', { section: 'run', why: 'same-id' }],
    ],
    [
      [{ ...focal('boulder'), most: 2 }, run({})],
      [
        'bad-counts',
        'strands.0.sections.0',
        { section: 'focal', usual: 1, fewest: 1, most: 2, why: 'focal-changes' },
      ],
    ],
    [
      [{ ...focal('boulder'), fewest: 0 }, run({})],
      [
        'bad-counts',
        'strands.0.sections.0',
        { section: 'focal', usual: 1, fewest: 0, most: 1, why: 'focal-changes' },
      ],
    ],
    [
      [{ ...focal('boulder'), usual: 2, fewest: 2, most: 2 }, run({})],
      [
        'bad-counts',
        'strands.0.sections.0',
        { section: 'focal', usual: 2, fewest: 2, most: 2, why: 'focal-once' },
      ],
    ],
    [
      [run({}), focal('boulder')],
      [
        'bad-counts',
        'strands.0.sections.1',
        { section: 'focal', usual: 1, fewest: 1, most: 1, why: 'focal-first' },
      ],
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
    expect(told(oneStrand([]))).toEqual([['no-strand', 'strands.0', { strand: 'only' }]]);
    expect(codes(oneStrand([run({ usual: 0, most: 0 })]))).toEqual(['no-strand strands.0']);
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
      ['too-large', 'strands.0', { value: 3004, least: 0, most: caps.MOST_ON_STRAND }],
    ]);
    expect(found(four(true, 375))).toEqual([]);
    expect(codes(four(true, 376))).toEqual(['too-large strands.0']);
    expect(codes(oneStrand([focal('boulder'), section('run', [['ball-8', 4]], { most: 375 })]))).toEqual([
      'too-large strands.0',
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
      ['ways', 'ends.clasp', { strands: 2, ways: 1, clasp: 'lobster', why: 'clasp' }],
    ]);
    expect(found({ ...twoStrands, lie: 'nested', ends: { ...twoStrands.ends, clasp: 'lobster' } })).toEqual(
      [],
    );
    const three = { ...twoStrands, strands: [...twoStrands.strands, ...design().strands] };
    expect(codes({ ...three, lie: 'nested' })).toEqual(['ways ends.clasp']);
    expect(told({ ...twoStrands, lie: 'single' })).toEqual([
      ['ways', 'lie', { strands: 2, ways: 1, why: 'single' }],
    ]);
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
      ['crimp-too-small', 'ends.crimp', { component: 'crimp', holeMm: 0.9, needMm: 0.96, wires: 2 }],
    ]);
    expect(found(withComponent(design(), 'crimp', { holeMm: 0.96 }))).toEqual([]);
  });

  it('a cover too small for the closed crimp; a loose one is no fault of the design', () => {
    expect(told(withComponent(design(), 'cover', { closedMm: 2 }))).toEqual([
      ['cover-wrong', 'ends.cover', { component: 'cover', crimp: 'crimp', takesMm: 2, closedMm: 2.2 }],
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

describe('hostile input', () => {
  const runs = process.env['CLASPWISE_THOROUGH'] === '1' ? 200_000 : 3000;

  it('any JSON at all comes back as problems, never as a throw', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const problems = found(value);
        expect(problems.length).toBeGreaterThan(0);
        expect(problems.length).toBeLessThanOrEqual(caps.MOST_PROBLEMS);
      }),
      { numRuns: runs },
    );
  });

  /** Every path of a design, for damage at random. */
  function paths(value: unknown, at = ''): string[] {
    if (typeof value !== 'object' || value === null) return [at];
    const below = Object.entries(value).flatMap(([key, entry]) =>
      paths(entry, at === '' ? key : `${at}.${key}`),
    );
    return at === '' ? below : [at, ...below];
  }
  const everywhere = ALL.map((piece) => ({ piece, all: paths(piece) }));

  it('a design damaged anywhere is judged, never thrown at', () => {
    const junk = fc.oneof(
      fc.jsonValue(),
      fc.double(),
      fc.constantFrom(undefined, -0, 1e308, '__proto__', 'constructor'),
    );
    fc.assert(
      fc.property(fc.nat(everywhere.length - 1), fc.nat(), junk, (which, pick, value) => {
        const { piece, all } = everywhere[which] ?? { piece: design(), all: [] };
        const path = all[pick % all.length] ?? 'id';
        const problems = found(changed(piece, path, value));
        expect(Array.isArray(problems)).toBe(true);
      }),
      { numRuns: runs },
    );
  });

  it('tells no more than its cap', () => {
    const table = Object.fromEntries(Array.from({ length: 200 }, (_, n) => [`c${n}`, null]));
    expect(found({ ...design(), components: table })).toHaveLength(caps.MOST_PROBLEMS);
  });

  it('a name every object has is no component', () => {
    const tricky = JSON.parse(JSON.stringify(design()).replaceAll('"ball-8"', '"__proto__"'));
    expect(codes(tricky)).toContain('bad-shape strands.0.sections.0.motif.0.component');
    expect(COMPONENTS['ball-8']).toBeDefined();
  });
});
