/** The order of preference, strictly, in whole hundredths of a millimetre. */
import type { FitProblem } from './problem.ts';

/** Millionths of a millimetre: lengths are added as whole numbers of these, so that no sum hangs on its order. */
const NM_PER_MM = 1_000_000;
/** A hundredth of a millimetre, nm. */
export const HUNDREDTH_NM = 10_000;

export const toNm = (mm: number): number => Math.round(mm * NM_PER_MM);
export const toMm = (nm: number): number => nm / NM_PER_MM;

/** Whole hundredths of a millimetre. */
export const toHundredths = (nm: number): number => Math.round(nm / HUNDREDTH_NM);

/** What a strand measures with one choice of counts: the least, and the most with its extender let out. */
export type Span = { readonly lowNm: number; readonly highNm: number };

/** What is wanted of a strand. */
export type Wanted = { readonly targetNm: number; readonly toleranceNm: number };

export type Outcome = {
  readonly counts: readonly number[];
  readonly span: Span;
  /** Hundredths of a millimetre, never negative. */
  readonly error: number;
  readonly excess: number;
  readonly cost: number;
  readonly parts: number;
};

/** Signed distance of the target from the span: negative where the strand stays below it, nm. */
export function offNm(span: Span, targetNm: number): number {
  if (span.lowNm > targetNm) return span.lowNm - targetNm;
  if (span.highNm < targetNm) return span.highNm - targetNm;
  return 0;
}

function costOf(problem: FitProblem, counts: readonly number[]): number {
  let sum = 0;
  problem.sections.forEach((section, index) => {
    sum += section.cost * Math.abs((counts[index] ?? 0) - section.usual);
  });
  return sum;
}

function partsOf(problem: FitProblem, counts: readonly number[]): number {
  let sum = 0;
  problem.sections.forEach((section, index) => {
    sum += section.partsPerRepeat * (counts[index] ?? 0);
  });
  return sum;
}

export function evaluate(
  problem: FitProblem,
  wanted: Wanted,
  counts: readonly number[],
  span: Span,
): Outcome {
  const error = toHundredths(Math.abs(offNm(span, wanted.targetNm)));
  return {
    counts,
    span,
    error,
    excess: Math.max(0, error - toHundredths(wanted.toleranceNm)),
    cost: costOf(problem, counts),
    parts: partsOf(problem, counts),
  };
}

/**
 * The design's own order: of two answers alike in all else, the first section
 * where they differ decides; it keeps nearer to its usual count, or has fewer.
 */
function bySectionOrder(problem: FitProblem, one: readonly number[], other: readonly number[]): number {
  for (const [index, { usual }] of problem.sections.entries()) {
    const a = one[index] ?? 0;
    const b = other[index] ?? 0;
    const difference = Math.abs(a - usual) - Math.abs(b - usual) || a - b;
    if (difference !== 0) return difference;
  }
  return 0;
}

/** Negative where `one` is to be preferred, 0 only for the same counts. */
export function compareOutcomes(problem: FitProblem, one: Outcome, other: Outcome): number {
  return (
    one.excess - other.excess ||
    one.cost - other.cost ||
    one.error - other.error ||
    one.parts - other.parts ||
    bySectionOrder(problem, one.counts, other.counts)
  );
}

const greatestExcess = (outcomes: readonly Outcome[]): number =>
  outcomes.reduce((most, { excess }) => Math.max(most, excess), 0);

const sumOf = (outcomes: readonly Outcome[], key: 'excess' | 'cost' | 'error' | 'parts'): number =>
  outcomes.reduce((sum, outcome) => sum + outcome[key], 0);

/**
 * The order of preference for several strands together: the greatest excess first,
 * then the sums of excess, cost, error and parts, then the design's own order. Of
 * strands that share nothing each is at its own optimum, and only then.
 * @param problems one for each strand, as are the outcomes.
 */
export function compareTogether(
  problems: readonly FitProblem[],
  one: readonly Outcome[],
  other: readonly Outcome[],
): number {
  const difference =
    greatestExcess(one) - greatestExcess(other) ||
    sumOf(one, 'excess') - sumOf(other, 'excess') ||
    sumOf(one, 'cost') - sumOf(other, 'cost') ||
    sumOf(one, 'error') - sumOf(other, 'error') ||
    sumOf(one, 'parts') - sumOf(other, 'parts');
  if (difference !== 0) return difference;
  return problems.reduce((found, problem, strand) => {
    return found || bySectionOrder(problem, one[strand]!.counts, other[strand]!.counts);
  }, 0);
}

/** The order for the nearest piece on one side of the target: least error first. */
export function compareNearest(problem: FitProblem, one: Outcome, other: Outcome): number {
  return one.error - other.error || compareOutcomes(problem, one, other);
}
