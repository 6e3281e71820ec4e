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

export function judge(problem: FitProblem, wanted: Wanted, counts: readonly number[], span: Span): Outcome {
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

/** The order for the nearest piece on one side of the target: least error first. */
export function compareNearest(problem: FitProblem, one: Outcome, other: Outcome): number {
  return one.error - other.error || compareOutcomes(problem, one, other);
}
