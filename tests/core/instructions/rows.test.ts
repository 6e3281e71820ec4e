/** What hangs, at its place in the list; and what stands in the wire loops. */
import { describe, expect, it } from 'vitest';
import { heldAt } from '#core/instructions/held.ts';
import { card, design, pendantNecklace, twoStrands } from '#tests/support/workshop.ts';

const rowsOf = (of: typeof pendantNecklace, strand = 0) => card(of).strands[strand]!.rows;

describe('a pendant in the list', () => {
  it('stands between the two beads that it hangs between, and takes no length', () => {
    const rows = rowsOf(pendantNecklace);
    const at = rows.findIndex(({ kind }) => kind === 'pendant');
    expect(rows[at]).toMatchObject({
      component: 'drop',
      side: 'centre',
      count: 1,
      eachMm: 0,
      runningCount: 25,
    });
    expect(rows[at]!.fromMm).toBe(rows[at]!.toMm);
    // Half of all beads before it, half after it, crimps and covers not among them.
    expect([rows[at - 1]!.runningCount, rows.at(-1)!.runningCount]).toEqual([25, 50]);
    expect([rows[at - 1]!.component, rows[at + 1]!.component]).toEqual(['ball-4', 'ball-4']);
  });

  it('stands there too where the crimps are bare', () => {
    const bare = { ...pendantNecklace, ends: { ...pendantNecklace.ends, cover: null } };
    const rows = rowsOf(bare);
    const at = rows.findIndex(({ kind }) => kind === 'pendant');
    expect([rows[at - 1]!.runningCount, rows[at]!.runningCount]).toEqual([25, 25]);
  });

  it('is on the first of several strands alone', () => {
    const two = { ...twoStrands, hanging: { pendant: 'drop', rings: ['ring'] } };
    expect(rowsOf(two, 0).map(({ kind }) => kind)).toContain('pendant');
    expect(rowsOf(two, 1).map(({ kind }) => kind)).not.toContain('pendant');
  });
});

describe('what the wire is led round', () => {
  const ends = (more: Partial<ReturnType<typeof design>['ends']>) =>
    design({ ends: { ...design().ends, ...more } });

  it.each([
    ['a clasp and its ring', ends({}), ['whole', 'lobster', 1], ['whole', 'ring', 1]],
    [
      'a clasp of two halves',
      ends({ clasp: 'toggle', ring: null }),
      ['first-half', 'toggle', 1],
      ['other-half', 'toggle', 1],
    ],
    // With a ring of its own at the far end a toggle's bar stands alone.
    ['a toggle with a ring', ends({ clasp: 'toggle' }), ['whole', 'toggle', 1], ['whole', 'ring', 1]],
    ['an eye for each of two strands', twoStrands, ['first-half', 'bar-2', 2], ['other-half', 'bar-2', 2]],
    ['a bare chain', ends({ ring: null, extenderMm: 40 }), ['whole', 'lobster', 1], ['chain', null, 1]],
    ['the wire itself', ends({ ring: null }), ['whole', 'lobster', 1], ['nothing', null, 1]],
  ] as const)('%s', (_, piece, clasp, ring) => {
    const told = (end: 'clasp' | 'ring') => {
      const { what, component, ways } = heldAt(piece, end);
      return [what, component, ways];
    };
    expect([told('clasp'), told('ring')]).toEqual([clasp, ring]);
  });
});

describe('an eye for each strand', () => {
  const wayOf = (piece: typeof twoStrands) =>
    card(piece)
      .steps.filter(({ code }) => code === 'thread-end')
      .map(({ args }) => (args as { way: number | null }).way);

  it('is named where the clasp has several and so has the piece', () => {
    expect(wayOf(twoStrands)).toEqual([1, 1, 2, 2]);
  });

  it('is not where there is one strand, or one eye for all', () => {
    expect(wayOf({ ...twoStrands, strands: [twoStrands.strands[0]!] })).toEqual([null, null]);
    expect(wayOf({ ...twoStrands, ends: { ...twoStrands.ends, clasp: 'toggle' } })).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});
