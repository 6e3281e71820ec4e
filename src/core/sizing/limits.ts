/** How far a whole piece can be made smaller and larger, and what ends it; or why it can't be made at all. */
import type { Measure, Sit } from '../design/choice.ts';
import type { Design } from '../design/design.ts';
import type { Rules } from '../design/rules.ts';
import { tally } from '../design/tally.ts';
import type { JointProblem } from '../solver/jointProblem.ts';
import { jointLimits, type JointLimits, type Limit, type ToFirst } from '../solver/limits.ts';
import { toMm, toNm } from '../solver/outcome.ts';
import { fewestCounts, type FitProblem } from '../solver/problem.ts';
import { jobOf, type Job } from './job.ts';
import { refuse } from './refused.ts';
import type { Limits, Refused, SectionAt, SizingProblem } from './sizing.ts';
import { askedOf } from './target.ts';

/** True where no size brings all strands within tolerance of it. */
const apart = ({ least, most }: JointLimits, toleranceMm: number): boolean =>
  toMm(least.firstNm) - toMm(most.firstNm) > 2 * toleranceMm;

/** The same piece with as many of every component as it could use. */
function ample(job: Job, rules: Rules): Job {
  const components = Object.entries(job.design.components);
  const uncounted = components.map(([id, component]) => [id, { ...component, stock: null }] as const);
  return jobOf({ ...job.design, components: Object.fromEntries(uncounted) }, rules, job.pieces);
}

/** Components whose stock alone keeps the strands apart; none where more of it would not bring them together. */
function keepingApart(job: Job, rules: Rules, mostStock: readonly string[]): readonly string[] {
  if (mostStock.length === 0) return mostStock;
  const found = jointLimits(ample(job, rules).joint, toFirstOf(job));
  return found !== null && apart(found, job.toleranceMm) ? [] : mostStock;
}

/** The component that runs short for even the smallest piece. */
export function stockProblem(design: Design, pieces: number): SizingProblem {
  const smallest = tally(design, design.strands.map(fewestCounts));
  const haveOf = (component: string): number => design.components[component]!.stock ?? Infinity;
  const [component, count] = [...smallest].find(([id, each]) => haveOf(id) < each * pieces)!;
  return { code: 'stock', component, have: haveOf(component), need: count * pieces };
}

/** A strand at a limit, its counts there, and its problem out of what the others leave it. */
type End = {
  readonly strand: number;
  readonly counts: readonly number[];
  readonly problem: FitProblem;
};

function endsOf({ strands, shared }: JointProblem, { strands: there, outcomes }: Limit): End[] {
  return there.map((strand): End => {
    const share = shared.map((left, at) =>
      outcomes.reduce((rest, { counts }, other) => {
        return other === strand ? rest : rest - strands[other]!.uses(counts)[at]!;
      }, left),
    );
    return { strand, counts: outcomes[strand]!.counts, problem: strands[strand]!.within(share).problem };
  });
}

/** Sections that may change and stand at one end of what they may. */
function standingAt({ strand, problem, counts }: End, end: 'fewest' | 'most'): SectionAt[] {
  return problem.sections
    .filter((section, index) => section.fewest < section.most && counts[index] === section[end])
    .flatMap(({ id }) => (id === null ? [] : [{ strand, section: id }]));
}

/** Counted components, by place, of which one more repeat of a section would take more than there is. */
function lacking({ problem: { sections, stock }, counts }: End, section: number): number[] {
  return [...stock.keys()].filter((which) => {
    const used = sections.reduce((sum, { takes }, index) => sum + takes[which]! * counts[index]!, 0);
    return used + sections[section]!.takes[which]! > stock[which]!.left;
  });
}

/** Sections, by place, that the maker's range would let go on. */
const mayGoOn = ({ problem, counts }: End): number[] =>
  [...problem.sections.keys()].filter((section) => counts[section]! < problem.sections[section]!.most);

/** Components that have run out for a section which could otherwise go on. */
function runOut(end: End): string[] {
  const short = new Set(mayGoOn(end).flatMap((section) => lacking(end, section)));
  return end.problem.stock.flatMap(({ component }, which) => (short.has(which) ? [component] : []));
}

/** Of the strands at a most the first that can't go on; else the first. */
function stuck(ends: readonly End[]): End {
  const found = ends.find((end) => mayGoOn(end).every((section) => lacking(end, section).length > 0));
  return found ?? ends[0]!;
}

/** What a strand measures in the first one's. */
export function toFirstOf({ nesting }: Job): ToFirst {
  return (strand, nm) => (strand === 0 ? nm : toNm(nesting.firstMm(strand, toMm(nm))));
}

/**
 * Limits of a piece, told as `of` at this sit: it ends with the strand that ends first.
 * @throws SearchLimit
 */
export function limitsOf(
  job: Job,
  rules: Rules,
  of: Measure['of'],
  sit: Sit,
): { readonly status: 'known'; readonly limits: Limits } | Refused {
  const { design, joint, pieces, toleranceMm } = job;
  const found = jointLimits(joint, toFirstOf(job));
  if (found === null) return refuse(stockProblem(design, pieces));
  const [leastMm, mostMm] = [toMm(found.least.firstNm), toMm(found.most.firstNm)];
  const [least, most] = [endsOf(joint, found.least)[0]!, stuck(endsOf(joint, found.most))];
  const limits: Limits = {
    leastMm,
    mostMm,
    leastAskedMm: askedOf(rules, design.kind, of, leastMm, sit),
    mostAskedMm: askedOf(rules, design.kind, of, mostMm, sit),
    leastBinds: standingAt(least, 'fewest'),
    mostBinds: standingAt(most, 'most'),
    mostStock: runOut(most),
  };
  if (!apart(found, toleranceMm)) return { status: 'known', limits };
  const short = keepingApart(job, rules, limits.mostStock);
  return refuse({ code: 'strands-apart', leastMm, mostMm, short });
}
