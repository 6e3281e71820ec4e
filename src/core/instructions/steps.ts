/** The steps at the bench, each at its moment. */
import type { Card, StrandCard } from './card.ts';
import { endSteps } from './endSteps.ts';
import type { HungPendant } from './hungPendant.ts';
import type { Step } from './step.ts';

/** What is done before the first wire is cut. */
function readySteps({ ends, pendant, hand }: Card): Step[] {
  const { held, extenderMm, links } = ends;
  const { what, component } = held.ring;
  const steps: Step[] = [
    { code: 'wear-eye-protection', strand: null, args: {} },
    {
      code: 'try-clasp',
      strand: null,
      args: { clasp: ends.clasp, inHalves: held.clasp.what === 'first-half' },
    },
  ];
  if (extenderMm > 0 && component !== null) {
    steps.push({
      code: 'join-chain',
      strand: null,
      args: { held: what, finding: component, chainMm: extenderMm, links },
    });
  }
  for (const { place, ...join } of pendant?.joins ?? []) {
    steps.push({ code: 'join-ring', strand: null, args: { ...join, place: place + 1 } });
  }
  if (pendant !== null) {
    const args = { pendant: pendant.pendant, addRings: pendant.facing?.addRings ?? 0 };
    steps.push({ code: 'check-facing', strand: null, args });
  }
  return [...steps, { code: 'lay-out', strand: null, args: { claspSide: hand.boardSide } }];
}

/**
 * The strand in the order of its list. The first components go over wire and
 * tail together, which is cut where it leaves the last of them; what hangs goes
 * on between its two neighbours.
 */
function stringSteps({ count, tails }: StrandCard, strand: number, pendant: HungPendant | null): Step[] {
  const { passed } = tails.clasp;
  const stops = new Set([passed, pendant?.after ?? 0, count]);
  const steps: Step[] = [];
  let strung = 0;
  for (const stop of [...stops].sort((one, other) => one - other)) {
    if (stop > strung) {
      const args = { first: strung + 1, last: stop, overTail: stop <= passed };
      steps.push({ code: 'string-beads', strand, args });
    }
    if (stop === passed && passed > 0) {
      steps.push({ code: 'cut-tail', strand, args: { end: 'clasp', beads: passed, bead: passed } });
    }
    if (stop === pendant?.after) {
      const args = { pendant: pendant.pendant, rings: pendant.rings.length, overTail: stop < passed };
      steps.push({ code: 'hang-pendant', strand, args });
    }
    strung = stop;
  }
  return steps;
}

function strandSteps(card: Card, found: StrandCard, strand: number): Step[] {
  const { cut } = found;
  const pendant = strand === 0 ? card.pendant : null;
  return [
    { code: 'cut-wire', strand, args: { wire: card.wire.id, lengthMm: cut.totalMm } },
    ...endSteps(card, found, strand, 'clasp'),
    ...stringSteps(found, strand, pendant),
    ...endSteps(card, found, strand, 'ring'),
  ];
}

/** Every step of a card, in an order that two hands can do (common practice, no source). */
export function stepsOf(card: Card): Step[] {
  const { extenderMm: chainMm, chainUsedMm, links, link } = card.ends;
  const closed = { lengthMm: card.finishedLengthMm, chainMm, chainUsedMm, links, link };
  return [
    ...readySteps(card),
    ...card.strands.flatMap((found, index) => strandSteps(card, found, index)),
    { code: 'check-closed', strand: null, args: closed },
  ];
}
