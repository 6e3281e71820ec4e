/** A buyer's choice in, the piece she would get out, for a design that is known to be sound. */
import { adviseHand } from './hand/hand.ts';
import type { Design } from '../design/design.ts';
import { candidate, type Listing } from './candidate.ts';
import type { Choice } from '../design/choice.ts';
import { whatHelps } from './help.ts';
import { jobOf } from './job.ts';
import { limitsOf } from './limits.ts';
import { planPiece, type PiecePlan } from './plan.ts';
import { refuse, unlessSearchLimit } from './refused.ts';
import type { Rules } from '../design/rules.ts';
import type { Candidate, Sizing } from './sizing.ts';
import { choiceProblem, targetOf } from './target.ts';

function sizeSound(design: Design, rules: Rules, listing: Listing, choice: Choice): Sizing {
  const job = jobOf(design, rules, choice.quantity);
  const { fitted, toleranceMm } = job;
  const { of, mm } = choice.measure;
  const targetMm = targetOf(rules, design.kind, of, mm, choice.sit);
  const known = limitsOf(job, rules, of, choice.sit);
  if (known.status === 'refused') return known;
  // Where there are limits there is a piece.
  const plan = planPiece(job, targetMm)!;
  const made = ({ counts, chainUsedMm, worstMm, within }: PiecePlan): Candidate =>
    candidate(design, rules, listing, counts, fitted, chainUsedMm, { targetMm, worstMm, within });
  const best = made(plan.best);
  const help = whatHelps(job, rules, plan, targetMm);
  const shared = { choice, fitted, targetMm, toleranceMm, limits: known.limits, help };
  if (plan.status === 'outside') return { status: 'outside', ...shared, side: plan.side, nearest: best };
  const sides =
    plan.status === 'near'
      ? { below: made(plan.below), above: made(plan.above) }
      : { below: null, above: null };
  const chosen = { best, ...sides }[choice.pick] ?? best;
  const hand = adviseHand(design, choice.hand, chosen.counts);
  return { status: plan.status, ...shared, chosen, best, ...sides, hand, proven: true };
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
  return unlessSearchLimit(() => sizeSound(design, rules, listing, choice));
}
