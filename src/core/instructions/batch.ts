/** Several pieces strung side by side: their cards' steps taken together by what is done in one go. */
import { phasesOfSteps, type PhaseName } from './phase.ts';
import type { Step } from './step.ts';

/** What a batch is worked through by; of one piece alone nothing is taken apart, so it has no `cut` of its own. */
export type Stage = PhaseName | 'cut';

/** The order of stages: everything is made ready and cut before the first crimp, and no end is closed while another waits for beads. */
const STAGES: readonly Stage[] = ['ready', 'cut', 'first', 'beads', 'second', 'done'];

/** One step of one piece: which piece, and its place among that card's steps, both from 0. */
export type Part = { readonly piece: number; readonly at: number };

/** Steps of one piece or several that are done in one go. */
export type Stop = { readonly stage: Stage; readonly parts: readonly Part[] };

/**
 * Stops of several cards, each with the steps as its own card has them. A single
 * card keeps its own order. Of several, each stage is done on all pieces before
 * the next: wires are cut in one go, what makes ready is done once where it is
 * the same for all, and ends and beads piece by piece, since an open crimp can't
 * be laid aside. No piece's steps lose their order among a stage, and a strand's
 * never do (common practice, no source).
 */
export function batchOf(cards: readonly (readonly Step[])[]): Stop[] {
  const [only] = cards;
  if (cards.length === 1 && only !== undefined) {
    const phases = phasesOfSteps(only);
    return only.map((_, at) => ({ stage: phases[at] ?? 'ready', parts: [{ piece: 0, at }] }));
  }
  const staged = cards.map(stagesOf);
  return STAGES.flatMap((stage) => {
    const lists = staged.map((stages, piece) =>
      stages.flatMap((one, at): Part[] => (one === stage ? [{ piece, at }] : [])),
    );
    if (stage === 'cut') return together(stage, lists.flat());
    if (stage === 'ready') return alike(lists, cards).map((parts): Stop => ({ stage, parts }));
    return lists.flat().map((part): Stop => ({ stage, parts: [part] }));
  });
}

const together = (stage: Stage, parts: readonly Part[]): Stop[] =>
  parts.length === 0 ? [] : [{ stage, parts }];

function stagesOf(steps: readonly Step[]): Stage[] {
  const phases = phasesOfSteps(steps);
  return steps.map(({ code }, at) => (code === 'cut-wire' ? 'cut' : (phases[at] ?? 'ready')));
}

/** What differs by what lies there, though it reads alike: each piece is laid out by its own list. */
const ONE_BY_ONE: readonly Step['code'][] = ['lay-out'];

/** Takes the first step of each list that is the same, again and again, so that no list's own order is lost. */
function alike(lists: readonly (readonly Part[])[], cards: readonly (readonly Step[])[]): Part[][] {
  const left = lists.map((list) => [...list]);
  const stops: Part[][] = [];
  const sameAs = (one: Part): string => {
    const { code, args } = cards[one.piece]?.[one.at] ?? { code: '', args: {} };
    return ONE_BY_ONE.some((each) => each === code)
      ? `${code} ${one.piece}`
      : `${code} ${JSON.stringify(args)}`;
  };
  for (;;) {
    const [head] = left.find((list) => list.length > 0) ?? [];
    if (head === undefined) return stops;
    const wanted = sameAs(head);
    stops.push(
      left.flatMap((list) => {
        const [next] = list;
        if (next === undefined || sameAs(next) !== wanted) return [];
        list.shift();
        return [next];
      }),
    );
  }
}
