/** Every size that a piece can be made in. */
import { validateDesign } from '../design/validate/validateDesign.ts';
import { coverOf, type Interval, type Scale } from '../solver/cover.ts';
import { toMm, toNm } from '../solver/outcome.ts';
import type { Design } from '../design/design.ts';
import type { Measure, Sit } from '../design/choice.ts';
import { jobOf, type Job } from './job.ts';
import { limitsOf, toFirstOf } from './limits.ts';
import { refuse, unlessSearchLimit } from './refused.ts';
import type { Rules } from '../design/rules.ts';
import type { Limits, Refused } from './sizing.ts';
import { type Fitted } from '../design/choice.ts';
import { askedOf } from './target.ts';

/** Sizes from one to another, both met within tolerance and everything between too. */
type SizeInterval = { readonly fromMm: number; readonly toMm: number };

type KnownRange = {
  readonly status: 'known';
  readonly fitted: Fitted;
  readonly toleranceMm: number;
  /** Its asked measures are the body's at an easy sit; of a necklace, finished lengths. */
  readonly limits: Limits;
  /** Finished lengths or inside girths that the piece meets within tolerance, rising and apart. */
  readonly intervals: readonly SizeInterval[];
  /** The same as girths of the wearer's wrist, ankle or neck, for every sit. */
  readonly body: Readonly<Record<Sit, readonly SizeInterval[]>>;
};

export type Range = KnownRange | Refused;

/** By what the wearer's body is measured for each kind. */
const BODY_MEASURE: Readonly<Record<Design['kind'], Measure['of']>> = {
  bracelet: 'wrist',
  anklet: 'ankle',
  collar: 'neck',
  necklace: 'neck',
};

function intervalsOf(job: Job): Interval[] {
  const scale: Scale = {
    fromFirst: (strand, nm) => (strand === 0 ? nm : toNm(job.nesting.targetMm(strand, toMm(nm)))),
    toFirst: toFirstOf(job),
  };
  return coverOf(job.joint, scale, toNm(job.toleranceMm));
}

function rangeSound(design: Design, rules: Rules): Range {
  const job = jobOf(design, rules, 1);
  const { fitted, toleranceMm } = job;
  const of = design.kind === 'necklace' ? 'length' : BODY_MEASURE[design.kind];
  const known = limitsOf(job, rules, of, 'easy');
  if (known.status === 'refused') return known;
  const intervals = intervalsOf(job).map(({ fromNm, toNm: endNm }) => ({
    fromMm: toMm(fromNm),
    toMm: toMm(endNm),
  }));
  const bodyFor = (sit: Sit): SizeInterval[] => {
    const asked = (mm: number): number => askedOf(rules, design.kind, BODY_MEASURE[design.kind], mm, sit);
    return intervals.map(({ fromMm, toMm: endMm }) => ({ fromMm: asked(fromMm), toMm: asked(endMm) }));
  };
  return {
    status: 'known',
    fitted,
    toleranceMm,
    limits: known.limits,
    intervals,
    body: { snug: bodyFor('snug'), easy: bodyFor('easy'), loose: bodyFor('loose') },
  };
}

/**
 * Every finished length or inside girth that a piece can be made in within the
 * shop's tolerance, as exact intervals: `size` says `fits` inside them and only
 * there. One piece is made, so the whole stock counts. Nothing is thrown.
 */
export function range(design: Design, rules: Rules): Range {
  const problems = validateDesign(design);
  if (problems.length > 0) return refuse({ code: 'design', problems });
  return unlessSearchLimit(() => rangeSound(design, rules));
}
