import { describe, expect, it } from 'vitest';
import type { Joint } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { joinsOf } from '#core/design/joins.ts';
import { told } from '#tests/support/validated.ts';
import { COMPONENTS, component, pendantNecklace } from '#tests/support/workshop.ts';

const ring = (id: string, joint: Joint) => ({ ...COMPONENTS['ring']!, id, joint });
const RINGS = [ring('closed', 'closed'), ring('jump', 'open'), ring('split', 'split')];

function hung(...rings: string[]): Design {
  const components = { ...COMPONENTS, ...Object.fromEntries(RINGS.map((one) => [one.id, one])) };
  return { ...pendantNecklace, components, hanging: { pendant: 'drop', rings } };
}

describe('what hangs is joined', () => {
  it('by its own loop on the wire, or by nothing at all, without a ring opened', () => {
    expect(joinsOf(hung())).toEqual({ joins: [], unjoined: [] });
    expect(joinsOf({ ...hung(), hanging: null })).toEqual({ joins: [], unjoined: [] });
  });

  it('by the ring that holds it, and of two rings by the lower', () => {
    expect(joinsOf(hung('split')).joins).toEqual([
      { ring: 'split', place: 0, joint: 'split', above: null, below: 'drop' },
    ]);
    expect(joinsOf(hung('closed', 'jump')).joins).toEqual([
      { ring: 'jump', place: 1, joint: 'open', above: 'closed', below: 'drop' },
    ]);
    // The lower has taken the upper, which then stays as it is.
    expect(joinsOf(hung('jump', 'split')).joins).toEqual([
      { ring: 'split', place: 1, joint: 'split', above: 'jump', below: 'drop' },
    ]);
    expect(
      joinsOf(hung('closed', 'jump', 'jump', 'jump')).joins.map(({ place, above, below }) => [
        place,
        above,
        below,
      ]),
    ).toEqual([
      [3, 'jump', 'drop'],
      [2, 'jump', null],
      [1, 'closed', null],
    ]);
    expect(
      joinsOf(hung('jump', 'closed', 'split')).joins.map(({ place, above, below }) => [place, above, below]),
    ).toEqual([
      [2, 'closed', 'drop'],
      [0, null, 'closed'],
    ]);
  });

  it('never by a closed ring: the design is refused there', () => {
    expect(told(hung('closed'))).toEqual([
      ['ring-closed', 'hanging.rings.0', { ring: 'closed', hangs: 'drop' }],
    ]);
    expect(told(hung('closed', 'closed', 'jump'))).toEqual([
      ['ring-closed', 'hanging.rings.0', { ring: 'closed', hangs: 'closed' }],
    ]);
    expect(told(hung('jump', 'closed'))).toEqual([
      ['ring-closed', 'hanging.rings.1', { ring: 'closed', hangs: 'drop' }],
    ]);
    expect(told(hung('closed', 'split'))).toEqual([]);
  });

  it('by a ring of which nothing is stated, as designs of before it was asked have them', () => {
    const old = {
      ...pendantNecklace,
      components: { ...COMPONENTS, ring: component('ring', { kind: 'ring' }) },
    };
    expect(told(old)).toEqual([]);
    expect(joinsOf(old).joins).toMatchObject([{ joint: 'open', below: 'drop' }]);
  });
});
