/** How much wire to cut for one strand. */
import type { Rules } from '../rules.ts';
import type { Design } from '../design.ts';
import { endPartMm } from './endPart.ts';

/** The cut, part by part, in mm; `totalMm` is their sum. */
export type Cut = {
  /** Through the beads, once. */
  readonly beadsMm: number;
  /** Wire the bent strand needs between its beads. */
  readonly slackMm: number;
  /** Both ends: through the crimp, out round the loop, back, through the crimp again. */
  readonly loopsMm: number;
  /** Both ends: doubled back through the end beads. */
  readonly tailsMm: number;
  /** Both ends: to hold and pull by, cut off afterwards. */
  readonly gripsMm: number;
  readonly totalMm: number;
};

/**
 * Cut length of one strand's wire.
 *
 * The returning wire passes loop and crimp a second time, so each counts
 * twice an end. The common allowance of 2 in. an end, four in all (common
 * practice, no source), is the tail and grip of the shop's rules.
 * @param beadsMm sum of `alongMm` of the strand's components, crimps and covers left out.
 * @param slackMm 0 for a strand laid straight.
 * @param tailsMm both tails, where the beads they run through are known: each is cut flush where it leaves the last of them.
 */
export function cutLength(
  design: Design,
  rules: Rules,
  beadsMm: number,
  slackMm: number,
  tailsMm: number = 2 * rules.wire.tailMm,
): Cut {
  const loopsMm = 4 * (design.ends.loopMm + endPartMm(design));
  const gripsMm = 2 * rules.wire.gripMm;
  const totalMm = beadsMm + slackMm + loopsMm + tailsMm + gripsMm;
  return { beadsMm, slackMm, loopsMm, tailsMm, gripsMm, totalMm };
}
