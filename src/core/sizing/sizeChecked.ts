/** A buyer's choice in, the piece she would get out, for a design that is known to be sound. */
import { tally } from '../components/tally.ts';
import { TooLarge } from '../fit/tooLarge.ts';
import { fewestCounts } from '../fit/problem.ts';
import { adviseHand } from '../hand/hand.ts';
import type { Design } from '../strand/design.ts';
import { candidate, type Listing } from './candidate.ts';
import type { Choice, Pick } from './choice.ts';
import { apartProblem, limitsOf } from './limits.ts';
import { whatHelps } from './help.ts';
import { jobOf, type Job } from './job.ts';
import { allLimits, planStrands, type Plan } from './plan.ts';
import type { Rules } from './rules.ts';
import type { Candidate, Help, Sizing, SizingProblem } from './sizing.ts';
import { choiceProblem, targetOf } from './target.ts';

/** The component that runs short for even the smallest piece. */
export function stockProblem(design: Design, pieces: number): SizingProblem {
  const smallest = tally(design, design.strands.map(fewestCounts));
  for (const [component, count] of smallest) {
    const have = design.components[component]?.stock ?? null;
    if (have !== null && have < count * pieces)
      return { code: 'stock', component, have, need: count * pieces };
  }
  return { code: 'design', problems: [] };
}

function refuse(problem: SizingProblem): Sizing {
  return { status: 'refused', problem };
}

const tooLarge: SizingProblem = {
  code: 'design',
  problems: [{ code: 'too-large', at: 'strands', args: {} }],
};

/** On which side a strand can't follow; null where all can. */
function outsideOf(plan: Plan): 'below' | 'above' | null {
  for (const { fit } of plan.strands) if (fit.status === 'outside') return fit.side;
  return null;
}

/** What would help the first strand that isn't within tolerance. */
function helpFor(job: Job, plan: Plan): Help[] {
  const strand = plan.strands.findIndex(({ fit }) => fit.status !== 'fits');
  const planned = plan.strands[strand];
  if (planned === undefined || planned.fit.status === 'fits') return [];
  const { targetMm, fit } = planned;
  const [below, above] =
    fit.status === 'near'
      ? [fit.below, fit.above]
      : fit.side === 'above'
        ? [fit.nearest, null]
        : [null, fit.nearest];
  return whatHelps(job, { strand, job: planned.job, targetMm, below, above });
}

function sizeSound(design: Design, rules: Rules, listing: Listing, choice: Choice): Sizing {
  const job = jobOf(design, rules, choice.quantity);
  const { fitted, toleranceMm } = job;
  const { of, mm } = choice.measure;
  const targetMm = targetOf(rules, design.kind, of, mm, choice.sit);
  const strandLimits = allLimits(job);
  if (strandLimits === null) return refuse(stockProblem(design, choice.quantity));
  const limits = limitsOf(job, rules, strandLimits, of, choice.sit);
  const apart = apartProblem(limits, toleranceMm);
  if (apart !== null) return refuse(apart);
  const plan = planStrands(job, targetMm, 'best');
  if (plan === null) return refuse(stockProblem(design, choice.quantity));
  const made = (from: Plan): Candidate =>
    candidate(design, rules, listing, from.counts, fitted, from.chainUsedMm, {
      targetMm,
      worstMm: from.worstMm,
      within: from.strands.every(({ fit }) => fit.status === 'fits'),
    });
  const best = made(plan);
  const help = helpFor(job, plan);
  const shared = { choice, fitted, targetMm, toleranceMm, limits, help };
  const side = outsideOf(plan);
  if (side !== null) {
    return { status: 'outside', ...shared, side, nearest: best };
  }
  const near = plan.strands.some(({ fit }) => fit.status === 'near');
  const onSide = (pick: Exclude<Pick, 'best'>): Candidate | null => {
    const found = near ? planStrands(job, targetMm, pick) : null;
    return found === null ? null : made(found);
  };
  const below = onSide('below');
  const above = onSide('above');
  const chosen = { best, below, above }[choice.pick] ?? best;
  const hand = adviseHand(design, choice.hand, chosen.counts);
  return { status: near ? 'near' : 'fits', ...shared, chosen, best, below, above, hand, proven: true };
}

/**
 * `size` for a design that `checkDesign` finds nothing wrong with: a catalogue's,
 * checked when the page was built. Dragging a slider need not check it again.
 * A design that isn't sound may give any answer, or throw.
 */
export function sizeChecked(
  design: Design,
  rules: Rules,
  listedMinor: number,
  choice: Choice,
  listed: Design = design,
): Sizing {
  const problem = choiceProblem(design.kind, choice);
  if (problem !== null) return refuse(problem);
  try {
    return sizeSound(design, rules, { priceMinor: listedMinor, design: listed }, choice);
  } catch (error) {
    if (error instanceof TooLarge) return refuse(tooLarge);
    throw error;
  }
}
