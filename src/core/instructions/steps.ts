/** The steps at the bench, each at its moment. Codes and args: `words/` makes the sentences. */
import type { Card } from './card.ts';

type End = 'clasp' | 'ring';

/** What the sentence of each step needs: ids of components, lengths in mm, counts. */
export type StepArgs = {
  readonly 'wear-eye-protection': Readonly<Record<never, never>>;
  readonly 'try-clasp': { readonly clasp: string };
  readonly 'cut-wire': { readonly wire: string; readonly lengthMm: number };
  readonly 'thread-end': { readonly end: End; readonly crimp: string; readonly finding: string };
  readonly 'guard-loop': { readonly guard: string };
  readonly 'make-loop': { readonly finding: string; readonly loopMm: number };
  readonly 'wires-side-by-side': { readonly crimp: string };
  readonly 'loop-free': { readonly finding: string };
  readonly crimp: { readonly end: End; readonly crimp: string };
  readonly 'hide-tail': { readonly end: End; readonly tailMm: number; readonly beads: number };
  readonly 'string-beads': { readonly count: number; readonly lengthMm: number };
  readonly 'hang-pendant': { readonly pendant: string; readonly rings: number };
  /** `addRings` more rings for it to face front; 0 where it will. */
  readonly 'check-facing': { readonly pendant: string; readonly addRings: number };
  readonly 'check-pattern': { readonly count: number; readonly lengthMm: number };
  readonly 'leave-slack': { readonly slackMm: number };
  readonly 'cut-away-from-face': Readonly<Record<never, never>>;
  readonly 'close-cover': { readonly cover: string };
  readonly 'check-closed': { readonly lengthMm: number };
};

export type StepCode = keyof StepArgs;

export type Step = {
  readonly [Code in StepCode]: {
    readonly code: Code;
    /** Strand index; null where it is for the whole piece. */
    readonly strand: number | null;
    readonly args: StepArgs[Code];
  };
}[StepCode];

/** Steps that guard hands, eyes or whoever stands near. */
export function isCaution({ code }: Step): boolean {
  return code === 'wear-eye-protection' || code === 'cut-away-from-face';
}

/** Loop, crimp and tail of one end. */
function endSteps(card: Card, strand: number, end: End): Step[] {
  const { crimp, guard, loopMm } = card.ends;
  const tail = card.strands[strand]?.tails[end];
  const finding = end === 'clasp' ? card.ends.clasp : (card.ends.ring ?? card.ends.clasp);
  const guarded: Step[] =
    guard === null ? [] : [{ code: 'guard-loop', strand, args: { guard: guard.guard } }];
  const passed = tail?.beads.filter(({ position }) => position < (tail.blockedBy?.position ?? Infinity));
  return [
    { code: 'thread-end', strand, args: { end, crimp: crimp.crimp, finding } },
    ...guarded,
    { code: 'make-loop', strand, args: { finding, loopMm } },
    { code: 'wires-side-by-side', strand, args: { crimp: crimp.crimp } },
    { code: 'loop-free', strand, args: { finding } },
    { code: 'crimp', strand, args: { end, crimp: crimp.crimp } },
    { code: 'hide-tail', strand, args: { end, tailMm: tail?.reachMm ?? 0, beads: passed?.length ?? 0 } },
  ];
}

function pendantSteps({ pendant }: Card, strand: number): Step[] {
  if (strand !== 0 || pendant === null) return [];
  const { pendant: id, rings, facing } = pendant;
  return [
    { code: 'hang-pendant', strand, args: { pendant: id, rings: rings.length } },
    { code: 'check-facing', strand, args: { pendant: id, addRings: facing?.addRings ?? 0 } },
  ];
}

function strandSteps(card: Card, strand: number): Step[] {
  const found = card.strands[strand];
  if (found === undefined) return [];
  const { count, finishedLengthMm: lengthMm, slackMm, cut } = found;
  return [
    { code: 'cut-wire', strand, args: { wire: card.wire.id, lengthMm: cut.totalMm } },
    ...endSteps(card, strand, 'clasp'),
    { code: 'string-beads', strand, args: { count, lengthMm } },
    ...pendantSteps(card, strand),
    { code: 'check-pattern', strand, args: { count, lengthMm } },
    { code: 'leave-slack', strand, args: { slackMm } },
    ...endSteps(card, strand, 'ring'),
  ];
}

/**
 * Every step of a card, in order. The clasp is tried before it goes on, the
 * pattern checked before the second crimp, the loops left free, and wire cut
 * away from the face with the eyes protected (common practice, no source).
 */
export function stepsOf(card: Card): Step[] {
  const { cover, clasp } = card.ends;
  const covered: Step[] =
    cover === null ? [] : [{ code: 'close-cover', strand: null, args: { cover: cover.cover } }];
  return [
    { code: 'wear-eye-protection', strand: null, args: {} },
    { code: 'try-clasp', strand: null, args: { clasp } },
    ...card.strands.flatMap((_, index) => strandSteps(card, index)),
    { code: 'cut-away-from-face', strand: null, args: {} },
    ...covered,
    { code: 'check-closed', strand: null, args: { lengthMm: card.finishedLengthMm } },
  ];
}
