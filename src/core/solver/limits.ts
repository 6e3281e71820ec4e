/** How far all strands together can be made smaller and larger. */
import { allocate } from './allocate.ts';
import type { JointProblem } from './jointProblem.ts';
import type { Outcome } from './outcome.ts';

/**
 * One figure for strands of different lengths: what the first strand measures
 * where another one measures so much. Rising, nm.
 */
export type ToFirst = (strand: number, nm: number) => number;

export type Limit = {
  /** In the first strand's measure, nm. */
  readonly firstNm: number;
  /** The strands that stand there; of several some may yet be able to go on. */
  readonly strands: readonly number[];
  /** A choice that lies at the limit. */
  readonly outcomes: readonly Outcome[];
};

export type JointLimits = { readonly least: Limit; readonly most: Limit };

/** Beyond any strand, nm: a hundred kilometres. */
const FAR_NM = 1e14;

/** The piece ends with the strand whose smallest is largest (`end` 1), or whose largest is smallest (-1). */
function limitOf(outcomes: readonly Outcome[], toFirst: ToFirst, end: 1 | -1): Limit {
  const firsts = outcomes.map(({ span }, strand) => toFirst(strand, end === 1 ? span.lowNm : span.highNm));
  const firstNm = end === 1 ? Math.max(...firsts) : Math.min(...firsts);
  const strands = [...firsts.keys()].filter((strand) => firsts[strand] === firstNm);
  return { firstNm, strands, outcomes };
}

/**
 * Null where the stock doesn't reach for any choice.
 * @throws SearchLimit
 */
export function jointLimits(joint: JointProblem, toFirst: ToFirst): JointLimits | null {
  const limit = (end: 1 | -1): Limit | null => {
    const found = allocate(
      joint,
      ({ search }) => (end === 1 ? search.nearest(0, 'above') : search.nearest(FAR_NM, 'below')),
      (one, other) => end * (limitOf(one, toFirst, end).firstNm - limitOf(other, toFirst, end).firstNm),
    );
    return found === null ? null : limitOf(found, toFirst, end);
  };
  const least = limit(1);
  if (least === null) return null;
  // Where there is a smallest choice there is a largest.
  return { least, most: limit(-1)! };
}
