/** Which side the clasp goes, and whether it matters. */
import type { Hand } from '../../design/choice.ts';
import type { Counts, Design } from '../../design/design.ts';
import { expand } from '../../design/expand.ts';
import type { Placed } from '../../design/expand.ts';
import { usualCounts } from '../../design/usualCounts.ts';

export type HandAdvice = {
  readonly hand: Hand;
  /** Side of the maker's board (the piece seen as on another person) that the clasp goes to; null where either will do. */
  readonly boardSide: 'left' | 'right' | null;
  /** Why it matters, or why not. */
  readonly reason: 'has-front-and-side' | 'no-front' | 'turns-about' | 'clasp-has-no-side';
};

/** True where the strand reads the same from either end, so that it may be worn either way round. */
function readsBothWays(sequence: readonly Placed[]): boolean {
  return sequence.every(({ component }, index) => {
    return component.id === sequence[sequence.length - 1 - index]?.component.id;
  });
}

/** True where every strand reads the same from either end and nothing hangs. */
function turnsAbout(design: Design, counts: Counts): boolean {
  return design.hanging === null && expand(design, counts).every(readsBothWays);
}

/** A piece has a front if it hangs something, shows one side, or doesn't read the same from both ends. */
export function hasFront(design: Design, counts: Counts = usualCounts(design)): boolean {
  return design.oneSided || !turnsAbout(design, counts);
}

/**
 * The clasp's side for a hand.
 *
 * The piece lies on the board as seen on another person, so the board's left
 * is the wearer's right: a right-handed wearer's clasp goes to the board's
 * left (common practice, no source). It matters only where the clasp has a
 * side to work and the piece one way of being worn. A middle with a better
 * side, yet no top and bottom, leaves two: turned end for end about the line
 * through its face, the better side still faces out (plain geometry).
 * @param counts repeats to judge an unsymmetrical run by; the usual ones where left out.
 */
export function adviseHand(design: Design, hand: Hand, counts: Counts = usualCounts(design)): HandAdvice {
  const either = (reason: HandAdvice['reason']): HandAdvice => ({ hand, boardSide: null, reason });
  if (design.components[design.ends.clasp]?.handed !== true) return either('clasp-has-no-side');
  if (!hasFront(design, counts)) return either('no-front');
  if (design.upright === false && turnsAbout(design, counts)) return either('turns-about');
  return { hand, boardSide: hand === 'right' ? 'left' : 'right', reason: 'has-front-and-side' };
}
