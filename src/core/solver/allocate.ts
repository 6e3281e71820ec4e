/**
 * How strands share out what is scarce: branch and bound over shares.
 *
 * A node gives every strand an upper bound on what it may take of each shared
 * component, its share, and each strand its best answer within that share, as if
 * it were alone. That relaxes the real problem, since the shares together may
 * exceed the stock: no choice in the node is better. Where the answers together
 * keep within the stock they are themselves a choice, and the node is settled.
 * Else one component is overdrawn, and the node is split in two by one strand:
 * it takes no more than `split` of that component, or it takes more and leaves so
 * much less to the others. Every choice lies in one of the two, and neither holds
 * the answers again, so the search ends. Nodes are taken best first: the first
 * one settled holds the optimum.
 */
import type { JointProblem, JointStrand, StrandSearch } from './jointProblem.ts';
import { SearchLimit } from './searchLimit.ts';

/** Nodes looked at for one question. Real pieces need one or some dozens; a design made to need more is refused. */
export const MOST_NODES = 20_000;

/** One strand's best answer out of its share; null where it has none. More share never makes it worse. */
export type Ask<Answer> = (strand: StrandSearch, place: number) => Answer | null;

/** Negative where the first answers, one for each strand, are to be preferred. */
export type Compare<Answer> = (one: readonly Answer[], other: readonly Answer[]) => number;

type Counted = { readonly counts: readonly number[] };

/** Bounds on what each strand takes of each shared component, by strand and component, both included. */
type Bounds = {
  readonly least: readonly (readonly number[])[];
  readonly most: readonly (readonly number[])[];
};

type Node<Answer> = { readonly bounds: Bounds; readonly answers: readonly Answer[] };

/** Every `most` cut to what the others' `least` leave of the stock; null where that is too little for somebody. */
function tighten({ shared }: JointProblem, { least, most }: Bounds): Bounds | null {
  const taken = shared.map((_, at) => least.reduce((sum, uses) => sum + uses[at]!, 0));
  const cut = most.map((row, strand) =>
    row.map((bound, at) => Math.min(bound, shared[at]! - taken[at]! + least[strand]![at]!)),
  );
  const room = cut.every((row, strand) => row.every((bound, at) => bound >= least[strand]![at]!));
  return room ? { least, most: cut } : null;
}

const replaced = (
  rows: readonly (readonly number[])[],
  strand: number,
  at: number,
  value: number,
): (readonly number[])[] => rows.with(strand, rows[strand]!.with(at, value));

/** The two halves of a node whose answers overdraw component `at`. */
function halves(
  strands: readonly JointStrand[],
  { bounds, answers }: Node<Counted>,
  at: number,
  left: number,
): readonly Bounds[] {
  const uses = answers.map(({ counts }, place) => strands[place]!.uses(counts)[at]!);
  const over = uses.reduce((sum, each) => sum + each, 0) - left;
  // Some strand takes more than its `least`, for those together keep within the stock. The one that can give most is split.
  const spare = uses.map((each, place) => each - bounds.least[place]![at]!);
  const strand = spare.indexOf(Math.max(...spare));
  // Anything from here on keeps both halves clear of two strands' answers; the middle shrinks both.
  const from = Math.max(bounds.least[strand]![at]!, uses[strand]! - over);
  const split = Math.floor((from + uses[strand]! - 1) / 2);
  return [
    { least: bounds.least, most: replaced(bounds.most, strand, at, split) },
    { least: replaced(bounds.least, strand, at, split + 1), most: bounds.most },
  ];
}

/**
 * The best answers of all strands that the stock allows together, one for
 * each strand; null where there are none.
 * @param ask answers for one strand; `compare` may not prefer an answer that a strand prefers less.
 * @throws SearchLimit
 */
export function allocate<Answer extends Counted>(
  joint: JointProblem,
  ask: Ask<Answer>,
  compare: Compare<Answer>,
): readonly Answer[] | null {
  const { strands, shared } = joint;
  const nodeOf = (loose: Bounds, before: readonly Answer[]): Node<Answer> | null => {
    const bounds = tighten(joint, loose);
    if (bounds === null) return null;
    const answers: Answer[] = [];
    for (const [place, strand] of strands.entries()) {
      const share = bounds.most[place]!;
      const known = before[place];
      // The best within a wider share is the best within this one, where it keeps to it.
      const keeps = known !== undefined && strand.uses(known.counts).every((used, at) => used <= share[at]!);
      const answer = keeps ? known : ask(strand.within(share), place);
      if (answer === null) return null;
      answers.push(answer);
    }
    return { bounds, answers };
  };
  /** Best last; of equal ones the latest, so that the search goes deep. */
  const open: Node<Answer>[] = [];
  const add = (node: Node<Answer> | null): void => {
    if (node === null) return;
    let low = 0;
    let high = open.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (compare(open[middle]!.answers, node.answers) >= 0) low = middle + 1;
      else high = middle;
    }
    open.splice(low, 0, node);
  };
  add(nodeOf({ least: strands.map(({ fewestUses }) => fewestUses), most: strands.map(() => shared) }, []));
  for (let looked = 1; open.length > 0; looked += 1) {
    if (looked > MOST_NODES) throw new SearchLimit();
    const node = open.pop()!;
    const overdrawn = shared.findIndex((left, at) => {
      const used = node.answers.reduce(
        (sum, { counts }, place) => sum + strands[place]!.uses(counts)[at]!,
        0,
      );
      return used > left;
    });
    if (overdrawn < 0) return node.answers;
    for (const half of halves(strands, node, overdrawn, shared[overdrawn]!)) add(nodeOf(half, node.answers));
  }
  return null;
}
