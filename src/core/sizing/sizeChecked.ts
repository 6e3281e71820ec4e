/** A buyer's choice in, the piece she would get out, for a design that is known to be sound. */
import { adviseHand } from './hand/hand.ts';
import type { Design } from '../design/design.ts';
import { candidate, type Listing } from './candidate.ts';
import type { Choice, Pick } from '../design/choice.ts';
import { whatHelps } from './help.ts';
import { jobOf, type Job } from './job.ts';
import { planStrands, type Plan } from './plan.ts';
import { reachOf } from './reach.ts';
import { refuse, unlessTooLarge } from './refused.ts';
import type { Rules } from '../design/rules.ts';
import type { Candidate, Help, Sizing } from './sizing.ts';
import { choiceProblem, targetOf } from './target.ts';

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
  const reach = reachOf(job, rules, of, choice.sit);
  if (reach.status === 'refused') return reach;
  const plan = planStrands(job, targetMm, 'best')!;
  const made = (from: Plan): Candidate =>
    candidate(design, rules, listing, from.counts, fitted, from.chainUsedMm, {
      targetMm,
      worstMm: from.worstMm,
      within: from.strands.every(({ fit }) => fit.status === 'fits'),
    });
  const best = made(plan);
  const help = helpFor(job, plan);
  const shared = { choice, fitted, targetMm, toleranceMm, limits: reach.limits, help };
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
 * `size` for a design that `validateDesign` finds nothing wrong with: a catalogue's,
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
  const listing = { priceMinor: listedMinor, design: listed };
  return unlessTooLarge(() => sizeSound(design, rules, listing, choice));
}
