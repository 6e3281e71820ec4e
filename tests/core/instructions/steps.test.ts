import { describe, expect, it } from 'vitest';
import { isCaution } from '#core/instructions/step.ts';
import type { Step, StepCode } from '#core/instructions/step.ts';
import type { Design } from '#core/design/design.ts';
import {
  card,
  design,
  pendantNecklace,
  section,
  strand,
  twoStrands,
  withComponent,
} from '#tests/support/workshop.ts';

const steps = (of: Design): readonly Step[] => card(of).steps;
const codes = (of: Design): StepCode[] => steps(of).map(({ code }) => code);
const argsOf = (of: Design, code: StepCode) =>
  steps(of)
    .filter((step) => step.code === code)
    .map(({ args }) => args);

const READY: StepCode[] = ['wear-eye-protection', 'try-clasp', 'lay-out'];
const FIRST: StepCode[] = ['cut-wire', 'thread-end', 'lead-back', 'check-loop', 'crimp', 'close-cover'];
const SECOND: StepCode[] = [
  ...(['thread-end', 'lead-back', 'draw-up', 'check-loop', 'measure', 'check-pattern'] as const),
  ...(['crimp', 'cut-tail', 'close-cover'] as const),
];

describe('the steps', () => {
  it('come each at its moment, what hangs at its place', () => {
    expect(codes(pendantNecklace)).toEqual([
      ...(['wear-eye-protection', 'try-clasp', 'join-ring', 'check-facing', 'lay-out'] as const),
      ...FIRST,
      ...(['string-beads', 'cut-tail', 'string-beads', 'hang-pendant', 'string-beads'] as const),
      ...SECOND,
      'check-closed',
    ]);
    expect(argsOf(pendantNecklace, 'string-beads')).toEqual([
      { first: 1, last: 4, overTail: true },
      { first: 5, last: 25, overTail: false },
      { first: 26, last: 50, overTail: false },
    ]);
  });

  it('go through every strand in turn, a pendant on the first alone', () => {
    const two = steps({ ...twoStrands, hanging: { pendant: 'drop', rings: ['ring'] } });
    const of = (strand: number): StepCode[] =>
      two.filter((step) => step.strand === strand).map(({ code }) => code);
    expect(of(0)).toContain('hang-pendant');
    expect(of(1)).toEqual([...FIRST, 'string-beads', 'cut-tail', 'string-beads', ...SECOND]);
    expect(two.map(({ strand }) => strand)).toEqual([
      ...new Array<null>(5).fill(null),
      ...of(0).map(() => 0),
      ...of(1).map(() => 1),
      null,
    ]);
  });

  it('leave out what the piece hasn’t got', () => {
    const bare = design({ ends: { ...design().ends, cover: null } });
    expect(codes(bare)).not.toContain('close-cover');
    expect(codes(bare)).not.toContain('hang-pendant');
    expect(codes(bare).slice(0, 3)).toEqual(READY);
  });

  it('carry the card’s figures', () => {
    const { strands } = card(pendantNecklace);
    const cut = strands[0]?.cut.totalMm;
    const round = { held: 'whole', finding: 'lobster' };
    const far = { held: 'whole', finding: 'ring' };
    expect(argsOf(pendantNecklace, 'try-clasp')).toEqual([{ clasp: 'lobster', inHalves: false }]);
    expect(argsOf(pendantNecklace, 'join-ring')).toEqual([
      { ring: 'ring', place: 1, joint: 'open', above: null, below: 'drop' },
    ]);
    expect(argsOf(pendantNecklace, 'lay-out')).toEqual([{ claspSide: 'left' }]);
    expect(argsOf(pendantNecklace, 'cut-wire')).toEqual([{ wire: 'fine-49', lengthMm: cut }]);
    const threaded = { crimp: 'crimp', guard: null, way: null };
    expect(argsOf(pendantNecklace, 'thread-end')).toEqual([
      { end: 'clasp', ...round, ...threaded },
      { end: 'ring', ...far, ...threaded },
    ]);
    // Four beads of 8 mm over the tail, an inch to hold by, and the cover's millimetre beside the crimp.
    expect(argsOf(pendantNecklace, 'lead-back')).toEqual([
      { end: 'clasp', ...round, loopMm: 5, beads: 0, outMm: 32 + 25.4 + 1 },
      { end: 'ring', ...far, loopMm: 5, beads: 4, outMm: null },
    ]);
    expect(argsOf(pendantNecklace, 'check-loop')[1]).toEqual({ end: 'ring', ...far });
    expect(argsOf(pendantNecklace, 'crimp')[1]).toEqual({ end: 'ring', crimp: 'crimp' });
    expect(argsOf(pendantNecklace, 'cut-tail')).toEqual([
      { end: 'clasp', beads: 4, bead: 4 },
      { end: 'ring', beads: 4, bead: 47 },
    ]);
    expect(argsOf(pendantNecklace, 'hang-pendant')).toEqual([{ pendant: 'drop', rings: 1, overTail: false }]);
    expect(argsOf(pendantNecklace, 'check-facing')).toEqual([{ pendant: 'drop', addRings: 0 }]);
    expect(argsOf(pendantNecklace, 'draw-up')).toEqual([{ slackMm: strands[0]?.slackMm, roomMm: 1 }]);
    expect(argsOf(pendantNecklace, 'measure')).toEqual([{ lengthMm: 408, chained: false }]);
    expect(argsOf(pendantNecklace, 'check-pattern')).toEqual([{ count: 50 }]);
    expect(argsOf(pendantNecklace, 'close-cover')[0]).toEqual({ end: 'clasp', cover: 'cover' });
    expect(argsOf(pendantNecklace, 'check-closed')).toEqual([
      { lengthMm: 408, chainMm: 0, chainUsedMm: 0, links: null, link: null },
    ]);
    const guarded = design({ ends: { ...design().ends, guard: 'guard' } });
    expect(argsOf(guarded, 'thread-end')[0]).toMatchObject({ guard: 'guard' });
  });

  it('a cover is closed though the size that it takes isn’t stated', () => {
    expect(codes(withComponent(design(), 'cover', { closedMm: null }))).toContain('close-cover');
  });

  it('a pendant that would turn sideways is told before the wire is cut', () => {
    const sideways = withComponent(pendantNecklace, 'drop', { loop: 'through' });
    expect(argsOf(sideways, 'check-facing')).toEqual([{ pendant: 'drop', addRings: 1 }]);
    expect(codes(sideways).indexOf('check-facing')).toBeLessThan(codes(sideways).indexOf('cut-wire'));
    expect(argsOf(withComponent(pendantNecklace, 'drop', { loop: null }), 'check-facing')[0]).toMatchObject({
      addRings: 0,
    });
  });

  it('a pendant so near an end that the tail passes it goes over wire and tail', () => {
    const short = { ...pendantNecklace, strands: [strand([section('run', [['ball-8', 1]], { usual: 1 })])] };
    expect(argsOf(short, 'hang-pendant')).toEqual([{ pendant: 'drop', rings: 1, overTail: false }]);
    const one = {
      ...short,
      strands: [
        strand(
          [
            section(
              'run',
              [
                ['ball-4', 1],
                ['ball-8', 1],
                ['boulder', 1],
              ],
              { usual: 1 },
            ),
          ],
          { mirrored: false },
        ),
      ],
    };
    expect(argsOf(one, 'string-beads')).toEqual([
      { first: 1, last: 2, overTail: true },
      { first: 3, last: 3, overTail: true },
    ]);
    expect(argsOf(one, 'hang-pendant')).toMatchObject([{ overTail: true }]);
  });

  it('a tail that no bead takes is cut at the crimp, before its cover closes', () => {
    const narrow = withComponent(design(), 'ball-8', { holeMm: 0.6 });
    expect(argsOf(narrow, 'cut-tail')).toEqual([
      { end: 'clasp', beads: 0, bead: null },
      { end: 'ring', beads: 0, bead: null },
    ]);
    expect(codes(narrow).indexOf('cut-tail')).toBe(codes(narrow).indexOf('close-cover') - 1);
    expect(argsOf(narrow, 'string-beads')).toEqual([{ first: 1, last: 16, overTail: false }]);
  });

  it('of a clasp in two halves part it first, and have a half at each end, each strand in its own eye', () => {
    expect(argsOf(twoStrands, 'try-clasp')).toEqual([{ clasp: 'bar-2', inHalves: true }]);
    expect(argsOf(twoStrands, 'thread-end')).toMatchObject([
      { end: 'clasp', held: 'first-half', finding: 'bar-2', way: 1 },
      { end: 'ring', held: 'other-half', finding: 'bar-2', way: 1 },
      { end: 'clasp', held: 'first-half', finding: 'bar-2', way: 2 },
      { end: 'ring', held: 'other-half', finding: 'bar-2', way: 2 },
    ]);
  });

  it('a chain is hung on what it hangs from before that is threaded, or stands in the loop itself', () => {
    const chained = (ring: string | null): Design =>
      design({ ends: { ...design().ends, ring, extenderMm: 40 } });
    expect(argsOf(chained('ring'), 'join-chain')).toEqual([
      { held: 'whole', finding: 'ring', chainMm: 40, links: null },
    ]);
    expect(argsOf(chained('ring'), 'measure')).toMatchObject([{ chained: true }]);
    expect(argsOf(chained('ring'), 'check-closed')).toMatchObject([
      { chainMm: 40, chainUsedMm: 0, link: null },
    ]);
    expect(codes(chained(null))).not.toContain('join-chain');
    expect(argsOf(chained(null), 'thread-end')[1]).toMatchObject({ held: 'chain', finding: null });
    const bare = design({ ends: { ...design().ends, ring: null } });
    expect(argsOf(bare, 'thread-end')[1]).toMatchObject({ held: 'nothing', finding: null });
  });

  it('cautions are eye protection and every cut of a tail', () => {
    const cautions = codes(design()).filter(isCaution);
    expect(cautions).toEqual(['wear-eye-protection', 'cut-tail', 'cut-tail']);
  });
});
