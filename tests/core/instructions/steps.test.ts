import { describe, expect, it } from 'vitest';
import { isCaution } from '#core/instructions/steps.ts';
import type { Step, StepCode } from '#core/instructions/steps.ts';
import type { Design } from '#core/design/design.ts';
import { card, design, pendantNecklace, twoStrands, withComponent } from '#tests/support/workshop.ts';

const steps = (of: Design): readonly Step[] => card(of).steps;
const codes = (of: Design): StepCode[] => steps(of).map(({ code }) => code);
const argsOf = (of: Design, code: StepCode) =>
  steps(of)
    .filter((step) => step.code === code)
    .map(({ args }) => args);

const END = ['thread-end', 'make-loop', 'wires-side-by-side', 'loop-free', 'crimp', 'hide-tail'];

describe('the steps', () => {
  it('come each at its moment', () => {
    expect(codes(pendantNecklace)).toEqual([
      'wear-eye-protection',
      'try-clasp',
      'cut-wire',
      ...END,
      'string-beads',
      'hang-pendant',
      'check-facing',
      'check-pattern',
      'leave-slack',
      ...END,
      'cut-away-from-face',
      'close-cover',
      'check-closed',
    ]);
  });

  it('go through every strand in turn, a pendant on the first alone', () => {
    const two = steps({ ...twoStrands, hanging: { pendant: 'drop', rings: ['ring'] } });
    expect(two.map(({ strand }) => strand)).toEqual([
      ...[null, null],
      ...new Array<number>(18).fill(0),
      ...new Array<number>(16).fill(1),
      ...[null, null, null],
    ]);
  });

  it('leave out what the piece hasn’t got, and put the guard on before its loop', () => {
    const bare = design({ ends: { ...design().ends, cover: null, guard: 'guard' } });
    expect(codes(bare)).not.toContain('close-cover');
    expect(codes(bare)).not.toContain('hang-pendant');
    expect(codes(bare).filter((code) => code === 'guard-loop')).toHaveLength(2);
    expect(codes(bare).indexOf('guard-loop')).toBe(codes(bare).indexOf('make-loop') - 1);
  });

  it('carry the card’s figures', () => {
    const { strands } = card(pendantNecklace);
    const cut = strands[0]?.cut.totalMm;
    expect(argsOf(pendantNecklace, 'try-clasp')).toEqual([{ clasp: 'lobster' }]);
    expect(argsOf(pendantNecklace, 'cut-wire')).toEqual([{ wire: 'fine-49', lengthMm: cut }]);
    expect(argsOf(pendantNecklace, 'thread-end')).toEqual([
      { end: 'clasp', crimp: 'crimp', finding: 'lobster' },
      { end: 'ring', crimp: 'crimp', finding: 'ring' },
    ]);
    expect(argsOf(pendantNecklace, 'make-loop')[0]).toEqual({ finding: 'lobster', loopMm: 4 });
    expect(argsOf(pendantNecklace, 'wires-side-by-side')[0]).toEqual({ crimp: 'crimp' });
    expect(argsOf(pendantNecklace, 'loop-free')[1]).toEqual({ finding: 'ring' });
    expect(argsOf(pendantNecklace, 'crimp')[1]).toEqual({ end: 'ring', crimp: 'crimp' });
    expect(argsOf(pendantNecklace, 'hide-tail')[0]).toEqual({ end: 'clasp', tailMm: 25.4, beads: 4 });
    expect(argsOf(pendantNecklace, 'string-beads')).toEqual([{ count: 50, lengthMm: 408 }]);
    expect(argsOf(pendantNecklace, 'hang-pendant')).toEqual([{ pendant: 'drop', rings: 1 }]);
    expect(argsOf(pendantNecklace, 'check-facing')).toEqual([{ pendant: 'drop', addRings: 0 }]);
    expect(argsOf(pendantNecklace, 'check-pattern')).toEqual([{ count: 50, lengthMm: 408 }]);
    expect(argsOf(pendantNecklace, 'leave-slack')).toEqual([{ slackMm: strands[0]?.slackMm }]);
    expect(argsOf(pendantNecklace, 'close-cover')).toEqual([{ cover: 'cover' }]);
    expect(argsOf(pendantNecklace, 'check-closed')).toEqual([{ lengthMm: 408 }]);
    const guarded = design({ ends: { ...design().ends, guard: 'guard' } });
    expect(argsOf(guarded, 'guard-loop')[0]).toEqual({ guard: 'guard' });
  });

  it('a pendant that would turn sideways is told before it is strung', () => {
    const sideways = withComponent(pendantNecklace, 'drop', { loop: 'through' });
    expect(argsOf(sideways, 'check-facing')).toEqual([{ pendant: 'drop', addRings: 1 }]);
    expect(codes(sideways).indexOf('check-facing')).toBeLessThan(codes(sideways).indexOf('check-pattern'));
    expect(argsOf(withComponent(pendantNecklace, 'drop', { loop: null }), 'check-facing')[0]).toMatchObject({
      addRings: 0,
    });
  });

  it('a tail goes only as far as the bead in the way', () => {
    const narrow = withComponent(design(), 'ball-8', { holeMm: 0.6 });
    expect(argsOf(narrow, 'hide-tail')[0]).toEqual({ end: 'clasp', tailMm: 0, beads: 0 });
  });

  it('of a clasp in two halves name it at both ends', () => {
    expect(argsOf(twoStrands, 'thread-end').map((args) => ('finding' in args ? args.finding : ''))).toEqual(
      new Array<string>(4).fill('bar-2'),
    );
  });

  it('two of them are cautions: eye protection, and cutting away from the face', () => {
    expect(
      steps(design())
        .filter(isCaution)
        .map(({ code }) => code),
    ).toEqual(['wear-eye-protection', 'cut-away-from-face']);
  });
});
