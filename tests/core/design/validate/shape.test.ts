import { describe, expect, it } from 'vitest';
import * as caps from '#core/design/caps.ts';
import { ball, changed, codes, found, told } from '#tests/support/validated.ts';
import { design, pendantNecklace, section } from '#tests/support/workshop.ts';

describe('what isn’t a design', () => {
  it.each([null, undefined, 3, 'text', true, [], [1]])('%j', (value) => {
    expect(told(value)).toEqual([['wrong-type', '', { wanted: 'object' }]]);
  });

  it('an empty object lacks every field', () => {
    expect(codes({})).toEqual(
      ['id', 'kind', 'strands', 'lie', 'nestGapMm', 'ends', 'hanging', 'oneSided', 'wire', 'components'].map(
        (field) => `${['kind', 'lie'].includes(field) ? 'not-one-of' : 'wrong-type'} ${field}`,
      ),
    );
  });

  it.each([
    ['id', 3, 'wrong-type', { wanted: 'text' }],
    ['id', 'x'.repeat(caps.MOST_TEXT + 1), 'text-too-long', { length: 201, most: caps.MOST_TEXT }],
    ['kind', 'belt', 'not-one-of', { options: ['necklace', 'bracelet', 'anklet', 'collar'] }],
    ['lie', 'heap', 'not-one-of', { options: ['single', 'side-by-side', 'nested'] }],
    ['strands', {}, 'wrong-type', { wanted: 'list' }],
    ['strands', null, 'wrong-type', { wanted: 'list' }],
    ['strands.0', 3, 'wrong-type', { wanted: 'object' }],
    ['strands.0.mirrored', 1, 'wrong-type', { wanted: 'flag' }],
    ['strands.0.sections', 'x', 'wrong-type', { wanted: 'list' }],
    ['strands.0.sections.0.usual', 1.5, 'wrong-type', { wanted: 'whole' }],
    ['strands.0.sections.0.usual', '8', 'wrong-type', { wanted: 'whole' }],
    ['strands.0.sections.0.role', 'hero', 'not-one-of', { options: ['focal', 'body', 'filler'] }],
    ['strands.0.sections.0.motif', 3, 'wrong-type', { wanted: 'list' }],
    ['strands.0.sections.0.motif.0.component', '', 'wrong-type', { wanted: 'id' }],
    ['strands.0.sections.0.motif.0.component', 'toString', 'wrong-type', { wanted: 'id' }],
    [
      'strands.0.sections.0.motif.0.component',
      'x'.repeat(caps.MOST_TEXT + 1),
      'text-too-long',
      { length: 201, most: caps.MOST_TEXT },
    ],
    ['nestGapMm', NaN, 'wrong-type', { wanted: 'number' }],
    ['nestGapMm', Infinity, 'wrong-type', { wanted: 'number' }],
    ['nestGapMm', '4', 'wrong-type', { wanted: 'number' }],
    ['ends.clasp', 7, 'wrong-type', { wanted: 'id' }],
    ['ends.ring', 7, 'wrong-type', { wanted: 'id' }],
    ['ends.guard', undefined, 'wrong-type', { wanted: 'id' }],
    ['ends.loopMm', null, 'wrong-type', { wanted: 'number' }],
    ['hanging', 'drop', 'wrong-type', { wanted: 'object' }],
    ['hanging', undefined, 'wrong-type', { wanted: 'object' }],
    ['oneSided', 'yes', 'wrong-type', { wanted: 'flag' }],
    ['upright', 'no', 'wrong-type', { wanted: 'flag' }],
    ['wire', null, 'wrong-type', { wanted: 'object' }],
    ['wire.strands', 7.5, 'wrong-type', { wanted: 'whole' }],
    ['wire.breakN', 'strong', 'wrong-type', { wanted: 'number' }],
    ['wire.massGPerM', undefined, 'wrong-type', { wanted: 'number' }],
    ['components', [], 'wrong-type', { wanted: 'object' }],
    ['components', null, 'wrong-type', { wanted: 'object' }],
    [
      'components.ball-8.kind',
      'nut',
      'not-one-of',
      { options: ['bead', 'spacer', 'cap', 'crimp', 'cover', 'ring', 'clasp', 'pendant'] },
    ],
    ['components.ball-8.handed', 0, 'wrong-type', { wanted: 'flag' }],
    ['components.ball-8.look', null, 'wrong-type', { wanted: 'object' }],
    ['components.ball-8.look.accent', 3, 'wrong-type', { wanted: 'text' }],
    ['components.ball-8.massG', undefined, 'wrong-type', { wanted: 'number' }],
    ['components.ball-8.costMinor', 0.5, 'wrong-type', { wanted: 'whole' }],
    ['components.ball-8.cautions', 'sharp', 'wrong-type', { wanted: 'list' }],
    ['components.ball-8.loop', 'square', 'not-one-of', { options: ['in-plane', 'through'] }],
    ['components.ring.joint', null, 'not-one-of', { options: ['closed', 'open', 'split'] }],
  ])('%s as %j', (path, value, code, rest) => {
    expect(told(changed(design(), path, value))).toEqual([[code, path, rest]]);
  });

  it.each([
    ['components.ball-8.cautions.0', 'hot', 'not-one-of', { options: ['magnet', 'nickel', 'lead', 'sharp'] }],
    ['hanging.rings.0', 4, 'wrong-type', { wanted: 'id' }],
  ])('%s as %j', (path, value, code, rest) => {
    const base = changed(pendantNecklace, path.replace(/\.\d+$/, ''), [value]);
    expect(told(base)).toEqual([[code, path, rest]]);
  });

  it('a field that only the prototype has is missing', () => {
    const inherited = Object.assign(Object.create({ id: 'piece' }), changed(design(), 'id', undefined));
    expect(codes(inherited)).toEqual(['wrong-type id']);
  });

  it('fields the core doesn’t know are nobody’s concern', () => {
    expect(found({ ...design(), note: 'hello', 7: null })).toEqual([]);
  });
});

describe('figures out of range', () => {
  it.each([
    ['nestGapMm', -1, 0, caps.MOST_MEASURE_MM, 'mm'],
    ['nestGapMm', caps.MOST_MEASURE_MM + 1, 0, caps.MOST_MEASURE_MM, 'mm'],
    ['ends.loopMm', -0.1, 0, caps.MOST_MEASURE_MM, 'mm'],
    ['ends.extenderMm', 1e9, 0, caps.MOST_MEASURE_MM, 'mm'],
    ['wire.diameterMm', 0.05, 0.1, caps.MOST_WIRE_MM, 'mm'],
    ['wire.diameterMm', 3.5, 0.1, caps.MOST_WIRE_MM, 'mm'],
    ['wire.strands', 0, 1, 1000, 'none'],
    ['wire.breakN', 0, 0.1, 100_000, 'N'],
    ['wire.massGPerM', -1, 0, 1000, 'g/m'],
    ['wire.costMinorPerM', -1, 0, caps.MOST_MINOR, 'minor'],
    ['components.ball-8.alongMm', 1000, 0, caps.MOST_MEASURE_MM, 'mm'],
    ['components.ball-8.holeMm', -1, 0, caps.MOST_MEASURE_MM, 'mm'],
    ['components.ball-8.massG', -1, 0, caps.MOST_MASS_G, 'g'],
    ['components.ball-8.costMinor', caps.MOST_MINOR + 1, 0, caps.MOST_MINOR, 'minor'],
    ['components.ball-8.stock', -1, 0, caps.MOST_MINOR, 'none'],
    ['components.ball-8.ways', 0, 1, caps.MOST_STRANDS, 'none'],
    ['strands.0.sections.0.usual', -1, 0, caps.MOST_REPEATS, 'none'],
    ['strands.0.sections.0.most', caps.MOST_REPEATS + 1, 0, caps.MOST_REPEATS, 'none'],
    ['strands.0.sections.0.cost', -1, 0, 1_000_000, 'none'],
    ['strands.0.sections.0.motif.0.count', 0, 1, caps.MOST_IN_ROW, 'none'],
    ['strands.0.sections.0.motif.0.count', caps.MOST_IN_ROW + 1, 1, caps.MOST_IN_ROW, 'none'],
  ])('%s as %f', (path, value, least, most, unit) => {
    expect(told(changed(design(), path, value))).toEqual([
      ['out-of-range', path, { value, least, most, unit }],
    ]);
  });

  it('lists and tables have an end', () => {
    const many = <Item>(item: Item, count: number) => new Array<Item>(count).fill(item);
    const tooMany = (path: string, value: unknown, length: number, most: number) =>
      expect(told(changed(pendantNecklace, path, value))).toContainEqual([
        'too-many-entries',
        path,
        { count: length, most },
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
