/** Fits strands: the best choice within tolerance, or the nearest ones, or the limit that is in the way. */
import { allocate } from './allocate.ts';
import type { JointProblem, StrandSearch } from './jointProblem.ts';
import { compareOutcomes, compareTogether, evaluate, type Outcome, type Wanted } from './outcome.ts';

/** One outcome for each strand. */
type Outcomes = readonly Outcome[];

export type Fit =
  | { readonly status: 'fits'; readonly best: Outcomes }
  | {
      readonly status: 'near';
      readonly best: Outcomes;
      /** The best in which every strand out of tolerance is below its target, or above it. */
      readonly below: Outcomes;
      readonly above: Outcomes;
    }
  | { readonly status: 'outside'; readonly side: 'below' | 'above'; readonly best: Outcomes };

type Side = 'below' | 'above';

/** A strand's answers to one wish, each found when it is first asked for. */
type Answers = {
  readonly best: () => Outcome | null;
  readonly below: () => Outcome | null;
  readonly above: () => Outcome | null;
};

function once<Value>(find: () => Value): () => Value {
  let found: { readonly value: Value } | null = null;
  return () => (found ??= { value: find() }).value;
}

function answersOf({ problem, search }: StrandSearch, wanted: Wanted): Answers {
  const within = once(() => search.within(wanted));
  const nearest = (side: Side): (() => Outcome | null) =>
    once(() => {
      const found = search.nearest(wanted.targetNm, side);
      return found === null ? null : evaluate(problem, wanted, found.counts, found.span);
    });
  const below = nearest('below');
  const above = nearest('above');
  const nearer = (): Outcome | null => {
    const [one, other] = [below(), above()];
    if (one === null || other === null) return one ?? other;
    return compareOutcomes(problem, other, one) < 0 ? other : one;
  };
  return {
    best: () => within() ?? nearer(),
    below: () => within() ?? below(),
    above: () => within() ?? above(),
  };
}

/** Where not even both sides have an answer, the strand that is furthest off says on which side the piece can't follow. */
function sideOf(best: Outcomes, wanted: readonly Wanted[]): Side {
  const worst = best.reduce((at, { excess }, place) => (excess > best[at]!.excess ? place : at), 0);
  return wanted[worst]!.targetNm < best[worst]!.span.lowNm ? 'below' : 'above';
}

/**
 * The optimum by the order of preference, which holds for all strands together.
 * @param wanted of each strand.
 * @returns null where the stock doesn't reach for any choice.
 * @throws SearchLimit
 */
export function fitJointly(joint: JointProblem, wanted: readonly Wanted[]): Fit | null {
  const known = new Map<StrandSearch, Answers>();
  const asked = (strand: StrandSearch, place: number): Answers => {
    const found = known.get(strand) ?? answersOf(strand, wanted[place]!);
    known.set(strand, found);
    return found;
  };
  const problems = joint.strands.map(({ within }) => within(joint.shared).problem);
  const together = (which: keyof Answers): Outcomes | null =>
    allocate(
      joint,
      (strand, place) => asked(strand, place)[which](),
      (one, other) => compareTogether(problems, one, other),
    );
  const best = together('best');
  if (best === null) return null;
  if (best.every(({ excess }) => excess === 0)) return { status: 'fits', best };
  const [below, above] = [together('below'), together('above')];
  if (below !== null && above !== null) return { status: 'near', best, below, above };
  const side = below !== null ? 'above' : above !== null ? 'below' : sideOf(best, wanted);
  return { status: 'outside', side, best };
}
