/** How far a whole piece can be made smaller and larger, or why it can't be made at all. */
import { tally } from '../design/tally.ts';
import { strandLimits, type StrandLimits } from '../solver/fit.ts';
import { fewestCounts } from '../solver/problem.ts';
import type { Design } from '../design/design.ts';
import type { Measure, Sit } from '../design/choice.ts';
import type { Job } from './job.ts';
import { apartProblem, limitsOf } from './limits.ts';
import type { Rules } from '../design/rules.ts';
import { refuse } from './refused.ts';
import type { Limits, Refused, SizingProblem } from './sizing.ts';

type Reach = {
  readonly status: 'known';
  /** Each strand's own, with the others at their fewest. */
  readonly strands: readonly StrandLimits[];
  readonly limits: Limits;
};

/** The component that runs short for even the smallest piece, where one does. */
export function stockProblem(design: Design, pieces: number): SizingProblem {
  const smallest = tally(design, design.strands.map(fewestCounts));
  const haveOf = (component: string): number => design.components[component]!.stock ?? Infinity;
  const [component, count] = [...smallest].find(([id, each]) => haveOf(id) < each * pieces)!;
  return { code: 'stock', component, have: haveOf(component), need: count * pieces };
}

/**
 * Limits of a piece, told as `of` at this sit.
 * @throws TooLarge
 */
export function reachOf(job: Job, rules: Rules, of: Measure['of'], sit: Sit): Reach | Refused {
  const { design, pieces, toleranceMm } = job;
  const all = design.strands.map((_, index) => strandLimits(job.strand(index, []).search));
  const strands = all.filter((limit) => limit !== null);
  if (strands.length < all.length) return refuse(stockProblem(design, pieces));
  const limits = limitsOf(job, rules, strands, of, sit);
  const apart = apartProblem(limits, toleranceMm);
  return apart === null ? { status: 'known', strands, limits } : refuse(apart);
}
