/** The measures that a whole piece can be made in, and what ends them. */
import type { StrandLimits } from '../solver/fit.ts';
import { toMm } from '../solver/outcome.ts';
import type { FitProblem } from '../solver/problem.ts';
import type { Measure, Sit } from '../design/choice.ts';
import type { Job } from './job.ts';
import type { Rules } from '../design/rules.ts';
import type { Limits, SectionAt, SizingProblem } from './sizing.ts';
import { askedOf } from './target.ts';

/** Sections of a strand that may change and stand at one end of what they may. */
function standingAt(
  strand: number,
  problem: FitProblem,
  counts: readonly number[],
  end: 'fewest' | 'most',
): SectionAt[] {
  return problem.sections
    .filter((section, index) => section.fewest < section.most && counts[index] === section[end])
    .map((section) => ({ strand, section: section.id }));
}

/** Components that have run out for a section which could otherwise go on. */
function runOut(problem: FitProblem, counts: readonly number[]): string[] {
  return problem.stock
    .filter(({ left }, stock) => {
      let used = 0;
      problem.sections.forEach((section, index) => {
        used += section.takes[stock]! * counts[index]!;
      });
      return problem.sections.some(
        (section, index) => counts[index]! < section.most && used + section.takes[stock]! > left,
      );
    })
    .map(({ component }) => component);
}

/** Limits of the piece from those of its strands, counted in the first strand's measure. */
export function limitsOf(
  job: Job,
  rules: Rules,
  limits: readonly StrandLimits[],
  of: Measure['of'],
  sit: Sit,
): Limits {
  const { design, nesting } = job;
  const least = limits.map((limit, strand) => nesting.firstMm(strand, toMm(limit.least.span.lowNm)));
  const most = limits.map((limit, strand) => nesting.firstMm(strand, toMm(limit.most.span.highNm)));
  // The whole piece ends with the strand that ends first.
  const leastMm = Math.max(...least);
  const mostMm = Math.min(...most);
  const atLeast = least.indexOf(leastMm);
  const atMost = most.indexOf(mostMm);
  const problemOf = (strand: number): FitProblem => job.strand(strand, []).problem;
  const mostCounts = limits[atMost]!.most.counts;
  return {
    leastMm,
    mostMm,
    leastAskedMm: askedOf(rules, design.kind, of, leastMm, sit),
    mostAskedMm: askedOf(rules, design.kind, of, mostMm, sit),
    leastBinds: standingAt(atLeast, problemOf(atLeast), limits[atLeast]!.least.counts, 'fewest'),
    mostBinds: standingAt(atMost, problemOf(atMost), mostCounts, 'most'),
    mostStock: runOut(problemOf(atMost), mostCounts),
  };
}

/** Strands that no size brings together, not even within tolerance of it; null where there is one. */
export function apartProblem({ leastMm, mostMm }: Limits, toleranceMm: number): SizingProblem | null {
  return leastMm - mostMm > 2 * toleranceMm ? { code: 'strands-apart', leastMm, mostMm } : null;
}
