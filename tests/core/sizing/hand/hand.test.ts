import { describe, expect, it } from 'vitest';
import { facing } from '#core/sizing/hand/facing.ts';
import { adviseHand, hasFront } from '#core/sizing/hand/hand.ts';
import {
  card,
  design,
  focalBracelet,
  pendantNecklace,
  section,
  strand,
  unequalNecklace,
  withComponent,
} from '#tests/support/workshop.ts';

const oneRun = (...parts: [string, number][]) =>
  design({
    strands: [
      strand(
        parts.map(([name, usual], index) => section(`s${index}`, [[name, 1]], { usual })),
        { mirrored: false },
      ),
    ],
  });

describe('the clasp’s side', () => {
  it('a right hand works it on the board’s left, a left hand on its right', () => {
    expect(adviseHand(pendantNecklace, 'right')).toEqual({
      hand: 'right',
      boardSide: 'left',
      reason: 'has-front-and-side',
    });
    expect(adviseHand(pendantNecklace, 'left').boardSide).toBe('right');
  });

  it('does not matter where the piece has no front', () => {
    expect(adviseHand(focalBracelet, 'left')).toEqual({ hand: 'left', boardSide: null, reason: 'no-front' });
  });

  it('does not matter for a better side without top and bottom, which turned end for end still faces out', () => {
    const faced = { ...focalBracelet, oneSided: true };
    expect(adviseHand(faced, 'left').boardSide).toBe('right');
    expect(adviseHand({ ...faced, upright: true }, 'left').boardSide).toBe('right');
    expect(adviseHand({ ...faced, upright: false }, 'left')).toEqual({
      hand: 'left',
      boardSide: null,
      reason: 'turns-about',
    });
  });

  it('matters in spite of that where something hangs, or the ends differ', () => {
    for (const one of [pendantNecklace, unequalNecklace]) {
      const faced = { ...one, oneSided: true, upright: false };
      expect(adviseHand(faced, 'right')).toEqual(adviseHand(one, 'right'));
      expect(adviseHand(faced, 'right').boardSide).toBe('left');
    }
  });

  it('does not matter where the clasp has no side, front or not', () => {
    const toggled = { ...pendantNecklace, ends: { ...pendantNecklace.ends, clasp: 'toggle' } };
    expect(adviseHand(toggled, 'left')).toEqual({
      hand: 'left',
      boardSide: null,
      reason: 'clasp-has-no-side',
    });
    expect(adviseHand({ ...toggled, ends: { ...toggled.ends, clasp: 'none' } }, 'left').boardSide).toBeNull();
  });

  it('is the mirror image on the board for the other hand', () => {
    const right = card(pendantNecklace, 'right').strands[0]?.board.marks ?? [];
    const left = card(pendantNecklace, 'left').strands[0]?.board.marks ?? [];
    const mirrored = right.map((mark) => ({ ...mark, side: mark.side === 'left' ? 'right' : 'left' }));
    expect(left).toEqual(mirrored);
    expect(left).not.toEqual(right);
  });
});

describe('a front', () => {
  it('a pendant, a one-sided focal, or a run that reads differently from either end makes one', () => {
    expect(hasFront(pendantNecklace)).toBe(true);
    expect(hasFront({ ...focalBracelet, oneSided: true })).toBe(true);
    expect(hasFront(unequalNecklace)).toBe(true);
  });

  it('a run that reads the same from both ends has none, mirrored or not', () => {
    expect(hasFront(focalBracelet)).toBe(false);
    expect(hasFront(oneRun(['ball-8', 20]))).toBe(false);
    expect(hasFront(oneRun(['ball-8', 5], ['ball-4', 3], ['ball-8', 5]))).toBe(false);
  });

  it('goes by the counts that are made, not by the usual ones', () => {
    const even = oneRun(['ball-8', 5], ['ball-4', 3], ['ball-8', 5]);
    expect(hasFront(even, [[5, 3, 6]])).toBe(true);
    expect(adviseHand(even, 'right', [[5, 3, 6]]).boardSide).toBe('left');
    expect(adviseHand(even, 'right').boardSide).toBeNull();
  });

  it('one strand of several is enough', () => {
    const both = design({ strands: [...focalBracelet.strands, ...unequalNecklace.strands] });
    expect(hasFront(both)).toBe(true);
  });
});

describe('facing', () => {
  // Each ring turns what hangs from it a quarter.
  it.each([
    ['in-plane', 0, 'sideways', 1],
    ['in-plane', 1, 'front', 0],
    ['in-plane', 2, 'sideways', 1],
    ['in-plane', 3, 'front', 0],
    ['through', 0, 'front', 0],
    ['through', 1, 'sideways', 1],
    ['through', 2, 'front', 0],
  ] as const)('%s on %i rings: %s', (loop, rings, faces, addRings) => {
    const hung = withComponent(
      { ...pendantNecklace, hanging: { pendant: 'drop', rings: new Array<string>(rings).fill('ring') } },
      'drop',
      { loop },
    );
    expect(facing(hung)).toEqual({ pendant: 'drop', rings, loop, faces, addRings });
  });

  it('adding the rings it asks for makes it face front', () => {
    for (const loop of ['in-plane', 'through'] as const) {
      for (let rings = 0; rings < 5; rings += 1) {
        const hang = (count: number) =>
          facing(
            withComponent(
              {
                ...pendantNecklace,
                hanging: { pendant: 'drop', rings: new Array<string>(count).fill('ring') },
              },
              'drop',
              { loop },
            ),
          );
        expect(hang(rings + (hang(rings)?.addRings ?? 0))?.faces).toBe('front');
      }
    }
  });

  it('is silent where nothing hangs, or the loop isn’t stated', () => {
    expect(facing(focalBracelet)).toBeNull();
    expect(facing(withComponent(pendantNecklace, 'drop', { loop: null }))).toBeNull();
    expect(facing({ ...pendantNecklace, hanging: { pendant: 'none', rings: [] } })).toBeNull();
  });
});
