/** The steps at the bench, each at its moment. Codes and args: `words/` makes the sentences. */
import type { Stringing } from './stringing.ts';

export type StepCode =
  | 'wear-eye-protection'
  | 'lay-out'
  | 'try-clasp'
  | 'cut-wire'
  | 'stop-end'
  | 'thread-end'
  | 'hang-pendant'
  | 'check-facing'
  | 'check-pattern'
  | 'leave-slack'
  | 'guard-loop'
  | 'make-loop'
  | 'wires-side-by-side'
  | 'crimp'
  | 'hide-tail'
  | 'loop-free'
  | 'close-cover'
  | 'cut-away-from-face'
  | 'check-closed';

export type Step = {
  readonly code: StepCode;
  /** Strand index; null where it is for the whole piece. */
  readonly strand: number | null;
  readonly args: Readonly<Record<string, string | number>>;
  /** True where it guards hands, eyes or the wearer. */
  readonly caution: boolean;
};

type Card = Omit<Stringing, 'steps'>;

const step = (code: StepCode, strand: number | null = null, args: Step['args'] = {}): Step => ({
  code,
  strand,
  args,
  caution: code === 'wear-eye-protection' || code === 'cut-away-from-face',
});

/** Loop, crimp and tail of one end. */
function endSteps(card: Card, strand: number, end: 'clasp' | 'ring'): Step[] {
  const { crimp, guard } = card.ends;
  const tail = card.strands[strand]?.tails[end];
  const finding = end === 'clasp' ? card.ends.clasp : (card.ends.ring ?? card.ends.clasp);
  return [
    step('thread-end', strand, { end, crimp: crimp.crimp, finding }),
    ...(guard === null ? [] : [step('guard-loop', strand, { guard: guard.guard })]),
    step('make-loop', strand, { end, finding, loopMm: card.ends.loopMm }),
    step('wires-side-by-side', strand, { crimp: crimp.crimp }),
    step('loop-free', strand, { finding }),
    step('crimp', strand, { end, crimp: crimp.crimp }),
    step('hide-tail', strand, { end, tailMm: tail?.reachMm ?? 0, beads: tail?.beads.length ?? 0 }),
  ];
}

function strandSteps(card: Card, strand: number): Step[] {
  const found = card.strands[strand];
  if (found === undefined) return [];
  const { pendant } = card;
  const hangs = strand === 0 && pendant !== null;
  const addRings = pendant?.facing?.addRings ?? 0;
  return [
    step('cut-wire', strand, { wire: card.wire.id, lengthMm: found.cut.totalMm }),
    ...endSteps(card, strand, 'clasp'),
    step('lay-out', strand, { count: found.count, lengthMm: found.finishedLengthMm }),
    ...(hangs
      ? [step('hang-pendant', strand, { pendant: pendant.pendant, rings: pendant.rings.length })]
      : []),
    ...(hangs ? [step('check-facing', strand, { pendant: pendant.pendant, addRings })] : []),
    step('stop-end', strand),
    step('check-pattern', strand, { count: found.count }),
    step('leave-slack', strand, { slackMm: found.slackMm }),
    ...endSteps(card, strand, 'ring'),
  ];
}

/**
 * Every step of a card, in order. The clasp is tried before it goes on, the
 * pattern checked before the second crimp, the loops left free, and wire cut
 * away from the face with the eyes protected (common practice, no source).
 */
export function stepsOf(card: Card): Step[] {
  const { cover } = card.ends;
  return [
    step('wear-eye-protection'),
    step('try-clasp', null, { clasp: card.ends.clasp }),
    ...card.strands.flatMap((_, index) => strandSteps(card, index)),
    step('cut-away-from-face'),
    ...(cover === null ? [] : [step('close-cover', null, { cover: cover.cover })]),
    step('check-closed', null, { lengthMm: card.finishedLengthMm }),
  ];
}
