/** Every size that a piece can meet within tolerance, as exact intervals. */
import { allocate } from './allocate.ts';
import type { JointProblem, StrandSearch } from './jointProblem.ts';
import type { ToFirst } from './limits.ts';
import { HUNDREDTH_NM, type Outcome } from './outcome.ts';
import { SearchLimit } from './searchLimit.ts';

/** Closed at both ends, nm. */
export type Interval = { readonly fromNm: number; readonly toNm: number };

/** The first strand's measure to another's, and back. */
export type Scale = { readonly fromFirst: ToFirst; readonly toFirst: ToFirst };

/** Steps of one cover, two for a size that stands alone. A step covers at least a bead's length, so a real strand takes some dozens. */
const MOST_STEPS = 10_000;

/** A step worth taking at once, as a share of the tolerance: smaller ones are looked for only if need be. */
const GOOD_STEP = 0.3;

/** Sizes that went through a nested strand's measure and back agree to this, nm; smaller steps could lead nowhere. */
const ROUNDING_NM = 10;

type Steps = {
  /**
   * A choice that begins no more than `startsNm` above a size and still meets it
   * `onNm` further up; null where there is none.
   */
  readonly meeting: (firstNm: number, startsNm: number, onNm: number) => readonly Outcome[] | null;
  /** Where a choice stops being within tolerance. */
  readonly endOf: (outcomes: readonly Outcome[]) => number;
  /** No size from here up to this one is met, where none is met here; null where none is met from here on. */
  readonly nextStart: (firstNm: number) => number | null;
};

function stepsOf(joint: JointProblem, { fromFirst, toFirst }: Scale, toleranceNm: number): Steps {
  const pieceMeeting = (
    { search }: StrandSearch,
    strand: number,
    firstNm: number,
    startsNm: number,
    onNm: number,
  ): Outcome | null => {
    const strandNm = fromFirst(strand, firstNm);
    return search.between(strandNm + onNm - toleranceNm, strandNm + startsNm + toleranceNm);
  };
  const alone = joint.strands.map(({ within }) => within(joint.shared));
  return {
    meeting: (firstNm, startsNm, onNm) =>
      allocate(
        joint,
        (found, strand) => pieceMeeting(found, strand, firstNm, startsNm, onNm),
        // Any will do.
        () => 0,
      ),
    endOf: (outcomes) =>
      Math.min(...outcomes.map(({ span }, strand) => toFirst(strand, span.highNm + toleranceNm))),
    nextStart: (firstNm) => {
      const starts = alone.map(({ search }, strand): number => {
        const found = search.nearest(fromFirst(strand, firstNm) + toleranceNm + ROUNDING_NM, 'above');
        return found === null ? Infinity : toFirst(strand, found.span.lowNm - toleranceNm);
      });
      // A strand that meets nothing here even alone has to begin anew; else they contend, and any new piece may settle it.
      const blocked = starts.filter((_, strand) => {
        return pieceMeeting(alone[strand]!, strand, firstNm, ROUNDING_NM, 0) === null;
      });
      const next = blocked.length > 0 ? Math.max(...blocked) : Math.min(...starts);
      return next < Infinity ? next : null;
    },
  };
}

/**
 * The union of the sizes that every choice meets, in the first strand's measure,
 * stepped from reach to reach: no choice is left out, and few are looked at.
 * @throws SearchLimit
 */
export function coverOf(joint: JointProblem, scale: Scale, toleranceNm: number): Interval[] {
  const { meeting, nextStart, endOf } = stepsOf(joint, scale, toleranceNm);
  // Compared in whole hundredths, two intervals no further apart than one leave no size between them.
  const onward = (firstNm: number): readonly Outcome[] | null =>
    meeting(firstNm, HUNDREDTH_NM, toleranceNm + Math.max(ROUNDING_NM, GOOD_STEP * toleranceNm)) ??
    meeting(firstNm, HUNDREDTH_NM, ROUNDING_NM);
  const intervals: Interval[] = [];
  let fromNm: number | null = null;
  let atNm = nextStart(-toleranceNm);
  for (let step = 0; atNm !== null; step += 1) {
    if (step > MOST_STEPS) throw new SearchLimit();
    const next = fromNm === null ? meeting(atNm, ROUNDING_NM, 0) : onward(atNm);
    if (next !== null) {
      fromNm ??= atNm;
      atNm = Math.max(atNm, endOf(next));
      continue;
    }
    if (fromNm !== null) intervals.push({ fromNm, toNm: atNm });
    fromNm = null;
    atNm = nextStart(atNm);
  }
  return intervals;
}
