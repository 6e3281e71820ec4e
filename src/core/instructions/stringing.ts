/** The bench card's data: everything the maker needs to string one piece, from one candidate. */
import type { Component } from '../design/component.ts';
import { pieceMass } from '../design/mass/pieceMass.ts';
import { coverFit, crimpFit, WIRES_IN_CRIMP } from '../design/ends/crimp.ts';
import { cutLength } from '../design/ends/cut.ts';
import { checkGuard } from '../design/ends/guard.ts';
import { flexibility, strengthOf } from './strength.ts';
import { checkTails } from './tail.ts';
import { solveLoop } from '../geometry/loop.ts';
import { adviseHand } from '../sizing/hand/hand.ts';
import type { Hand } from '../design/choice.ts';
import type { Rules } from '../design/rules.ts';
import type { Candidate } from '../sizing/sizing.ts';
import { linkAt } from '../design/chain.ts';
import type { Design } from '../design/design.ts';
import type { Placed } from '../design/expand.ts';
import { finishedLengthMm, loopParts } from '../design/loopParts.ts';
import { balanceOf } from './balance.ts';
import { boardOf } from './board.ts';
import type { Card, EndsCard, StrandCard } from './card.ts';
import { heldAt } from './held.ts';
import { hungPendant } from './hungPendant.ts';
import type { HungPendant } from './hungPendant.ts';
import { pullOf } from './pull.ts';
import { rowsOf } from './rows.ts';
import { stepsOf } from './steps.ts';
import type { Step } from './step.ts';

export type Stringing = Card & { readonly steps: readonly Step[] };

/** What is strung between the crimps, in order. */
function betweenEnds(sequence: readonly Placed[]): Component[] {
  return sequence.filter(({ section }) => section !== 'end').map(({ component }) => component);
}

/** What a cover reaches beyond its crimp, either side. */
function coverRoomMm({ ends, components }: Design): number {
  const coverMm = components[ends.cover ?? '']?.alongMm ?? 0;
  return Math.max(0, (coverMm - (components[ends.crimp]?.alongMm ?? 0)) / 2);
}

/** What one strand's card is made from besides design and rules. */
type Strand = {
  readonly sequence: readonly Placed[];
  readonly index: number;
  /** What hangs on it; null for nothing. */
  readonly pendant: HungPendant | null;
  readonly claspSide: 'left' | 'right';
  readonly chainUsedMm: number;
};

function strandCard(design: Design, rules: Rules, strand: Strand): StrandCard {
  const { sequence, index, pendant, claspSide, chainUsedMm } = strand;
  const beads = betweenEnds(sequence);
  const rows = rowsOf(design, sequence, pendant);
  const { slackMm } = solveLoop(loopParts(design, sequence, chainUsedMm));
  const beadsMm = beads.reduce((sum, { alongMm }) => sum + alongMm, 0);
  const { tailMm, gripMm } = rules.wire;
  const tails = checkTails(beads, design.wire.diameterMm, tailMm);
  // A tail is cut where it leaves a bead, and the wire has to reach there.
  const claspTailMm = Math.max(tailMm, tails.clasp.reachMm);
  const ringTailMm = Math.max(tailMm, tails.ring.reachMm);
  return {
    id: design.strands[index]?.id ?? '',
    rows,
    count: beads.length,
    finishedLengthMm: finishedLengthMm(design, sequence),
    slackMm,
    cut: cutLength(design, rules, beadsMm, slackMm, claspTailMm + ringTailMm),
    outMm: claspTailMm + gripMm + coverRoomMm(design),
    board: boardOf(rows, claspSide),
    tails,
  };
}

function endsCard(design: Design, rules: Rules, chainUsedMm: number): EndsCard {
  const { ends, components, wire } = design;
  // A design that lacks its crimp never passes `validateDesign`; here it only may not throw.
  const crimp = components[ends.crimp] ?? { id: ends.crimp, holeMm: 0, closedMm: null };
  const cover = ends.cover === null ? undefined : components[ends.cover];
  const guard = ends.guard === null ? undefined : components[ends.guard];
  return {
    held: { clasp: heldAt(design, 'clasp'), ring: heldAt(design, 'ring') },
    clasp: ends.clasp,
    ring: ends.ring,
    loopMm: ends.loopMm,
    extenderMm: ends.extenderMm,
    chainUsedMm,
    links: linkAt(ends, ends.extenderMm),
    link: linkAt(ends, chainUsedMm),
    crimp: crimpFit(crimp, WIRES_IN_CRIMP, wire.diameterMm, rules.wire.crimpPlayMm),
    coverId: ends.cover,
    roomMm:
      cover === undefined ? 0 : Math.max(0, (cover.alongMm - (components[ends.crimp]?.alongMm ?? 0)) / 2),
    cover: cover === undefined ? null : coverFit(cover, crimp),
    guard: guard === undefined ? null : checkGuard(guard, wire.diameterMm),
  };
}

/**
 * All of the bench card, recomputed from a candidate's sequences.
 * @param design one that `validateDesign` passes; @param candidate what is to be strung.
 */
export function stringing(design: Design, rules: Rules, candidate: Candidate, hand: Hand): Stringing {
  const advice = adviseHand(design, hand, candidate.counts);
  const claspSide = advice.boardSide ?? 'left';
  const { chainUsedMm } = candidate;
  const first = candidate.sequences[0] ?? [];
  const hung = hungPendant(design, first);
  const strands = candidate.sequences.map((sequence, index) =>
    strandCard(design, rules, {
      sequence,
      index,
      pendant: index === 0 ? hung : null,
      claspSide,
      chainUsedMm,
    }),
  );
  const card = {
    hand: advice,
    wire: design.wire,
    flexibility: flexibility(design.wire),
    strands,
    ends: endsCard(design, rules, candidate.chainUsedMm),
    pendant: hung,
    balance: balanceOf(design, first),
    mass: { massG: candidate.massG, basis: pieceMass(design, candidate.counts).basis },
    strength: strengthOf(design.wire, rules, pullOf(design, candidate.sequences)),
    finishedLengthMm: Math.max(0, ...strands.map((strand) => strand.finishedLengthMm)),
  };
  return { ...card, steps: stepsOf(card) };
}
