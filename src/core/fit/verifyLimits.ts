/** The limits that an answer states, against each strand at its fewest and at its most, measured by the verifier's own code. */
import type { Nesting } from '../sizing/nest.ts';
import type { Sizing } from '../sizing/sizing.ts';
import type { Design, Strand } from '../strand/design.ts';
import { near } from './verifyCandidate.ts';
import { spanMm } from './verifyStrand.ts';

/** The girth found by relaxing and a nested strand's place are known to this, mm. */
const LIMIT_MM = 0.01;

const countsAt = (strand: Strand, end: 'fewest' | 'most'): number[] =>
  strand.sections.map((section) => (section.role === 'focal' ? section.usual : section[end]));

/** Whether limits are those of the strand that is met first, all of them told in the first one's measure. */
export function checkLimits(
  design: Design,
  { fitted, limits }: Exclude<Sizing, { status: 'refused' }>,
  nesting: Nesting,
): boolean {
  const all = (end: 'fewest' | 'most'): number[] =>
    design.strands.map((strand, index) => {
      const [leastMm, mostMm] = spanMm(design, index, countsAt(strand, end), fitted);
      return nesting.firstMm(index, end === 'fewest' ? leastMm : mostMm);
    });
  const leastMm = Math.max(...all('fewest'));
  const mostMm = Math.min(...all('most'));
  if (!near(limits.leastMm, leastMm, LIMIT_MM)) return false;
  // A stock may end it before, but nothing lets it go on.
  return limits.mostStock.length > 0
    ? limits.mostMm < mostMm + LIMIT_MM
    : near(limits.mostMm, mostMm, LIMIT_MM);
}
