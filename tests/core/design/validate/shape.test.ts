import { describe, expect, it } from 'vitest';
import * as caps from '#core/design/caps.ts';
import { ball, changed, codes, found, told } from '#tests/support/validated.ts';
import { design, pendantNecklace, section } from '#tests/support/workshop.ts';

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
    ['components.ring.joint', null, { want: 'closed, open, split' }],
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
