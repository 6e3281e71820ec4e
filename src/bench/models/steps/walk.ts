/**
 * The steps of one piece or a batch as they are walked through at the board: stop by stop, each with what there is
 * to tick in it. A place in a walk is how many ticks are done, from 0; it is the same whoever counts.
 */
import { batchOf, type Stage } from '#core/instructions/batch.ts';
import type { Step } from '#core/instructions/step.ts';
import { ALL_LIT, type Lit } from '#draw/drawings/lit.ts';
import { sha256 } from '../../book/snapshot.ts';
import type { PieceCard } from '../benchCard.ts';
import { runsBetween, type Run } from './runs.ts';

/** One thing to tick: a run of beads, one piece's share of a stop, or all of a stop. */
export type Tick = {
  /** Which piece of the walk, from 0. */
  readonly piece: number;
  readonly step: Step;
  /** null where the step isn't strung run by run. */
  readonly run: Run | null;
  /** Of the drawing of the step's strand, or of the first where it is for the whole piece. */
  readonly lit: Lit;
};

export type WalkStop = {
  readonly stage: Stage;
  /** Place before its first tick. */
  readonly from: number;
  readonly ticks: readonly Tick[];
};

export type Walk = {
  readonly stops: readonly WalkStop[];
  /** The place where all is done. */
  readonly total: number;
  /** Of all that there is to do, so that a changed order is noticed. */
  readonly digest: string;
};

/** The walk through the cards of some pieces. */
export function walkOf(cards: readonly PieceCard[]): Walk {
  const lists = cards.map(({ card }) => card.steps);
  const stops: WalkStop[] = [];
  let from = 0;
  for (const { stage, parts } of batchOf(lists)) {
    const each = parts.flatMap(({ piece, at }) => {
      const step = lists[piece]?.[at];
      return step === undefined ? [] : ticksOf(step, piece, cards[piece]);
    });
    const ticks = each.every(({ step }) => isForHerself(step)) ? each.slice(0, 1) : each;
    stops.push({ stage, from, ticks });
    from += ticks.length;
  }
  const done = stops.map(({ ticks }) => ticks.map(({ piece, step, run }) => [piece, step, run]));
  return { stops, total: from, digest: sha256(JSON.stringify(done)) };
}

/** What she does for herself is done once, however many pieces lie on the table. */
export const isForHerself = ({ code }: Step): boolean => code === 'wear-eye-protection';

/** The stop that a place is in; the last one where all is done. */
export function stopAt({ stops }: Walk, place: number): number {
  const next = stops.findIndex(({ from, ticks }) => place < from + ticks.length);
  return next === -1 ? Math.max(0, stops.length - 1) : next;
}

function ticksOf(step: Step, piece: number, card: PieceCard | undefined): Tick[] {
  if (step.code !== 'string-beads') return [{ piece, step, run: null, lit: litBy(step, card) }];
  const groups = card?.strands[step.strand ?? 0] ?? [];
  return runsBetween(groups, step.args.first, step.args.last).map((run) => ({
    piece,
    step,
    run,
    lit: { ...ALL_LIT, beads: { first: run.first, last: run.last } },
  }));
}

/** What hands are at; for what is for the whole of it, all. */
function litBy({ code, args, strand }: Step, card: PieceCard | undefined): Lit {
  switch (code) {
    case 'try-clasp':
      return { ...ALL_LIT, end: 'clasp' };
    case 'join-chain':
      return { ...ALL_LIT, end: 'ring' };
    case 'join-ring':
    case 'check-facing':
    case 'hang-pendant':
      return { ...ALL_LIT, hung: true };
    case 'thread-end':
    case 'check-loop':
    case 'crimp':
    case 'close-cover':
      return { ...ALL_LIT, end: args.end };
    case 'lead-back':
    case 'cut-tail': {
      const count = card?.card.strands[strand ?? 0]?.count ?? 0;
      return { ...ALL_LIT, end: args.end, beads: nextTo(args.end, args.beads, count) };
    }
    case 'draw-up':
      return { ...ALL_LIT, end: 'ring' };
    default:
      return ALL_LIT;
  }
}

/** So many beads from an end on. */
function nextTo(end: 'clasp' | 'ring', beads: number, count: number): Lit['beads'] {
  if (beads === 0) return null;
  return end === 'clasp' ? { first: 1, last: beads } : { first: count - beads + 1, last: count };
}
