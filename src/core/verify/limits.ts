/** The limits that an answer states, against each strand at its fewest and at its most, measured by the verifier's own code. */
import type { Nesting } from '../sizing/nest.ts';
import type { Sizing } from '../sizing/sizing.ts';
import type { Design } from '../design/design.ts';
import { boundsOf, near } from './candidate.ts';
import { spanMm } from './strand.ts';

/** The girth found by relaxing and a nested strand's place are known to this, mm. */
const LIMIT_MM = 0.01;

/** Whether limits are those of the strand that is met first, all of them told in the first one's measure. */
export function checkLimits(
  design: Design,
  { fitted, limits }: Exclude<Sizing, { status: 'refused' }>,
  nesting: Nesting,
): boolean {
  /** At its fewest with the chain taken in, or at its most with it let out: 0 or 1 of each pair. */
  const all = (end: 0 | 1): number[] =>
    design.strands.map(({ sections }, index) => {
      const counts = sections.map((section) => boundsOf(section)[end]);
      return nesting.firstMm(index, spanMm(design, index, counts, fitted)[end]);
    });
  const leastMm = Math.max(...all(0));
  const mostMm = Math.min(...all(1));
  if (!near(limits.leastMm, leastMm, LIMIT_MM)) return false;
  // A stock may end it before, but nothing lets it go on.
  return limits.mostStock.length > 0
    ? limits.mostMm < mostMm + LIMIT_MM
    : near(limits.mostMm, mostMm, LIMIT_MM);
}
