/** The hands' order at an end: loop, crimp, cover and tail. */
import type { Card, StrandCard } from './card.ts';
import type { End } from './held.ts';
import type { Step } from './step.ts';

/** What is threaded, led back and looked at, at either end. */
function loopSteps(card: Card, found: StrandCard, strand: number, end: End): [Step, Step, Step] {
  const { crimp, guard, loopMm, roomMm, held } = card.ends;
  const { what, component, ways } = held[end];
  const round = { end, held: what, finding: component };
  const way = ways > 1 && card.strands.length > 1 ? strand + 1 : null;
  const isFirst = end === 'clasp';
  const led = {
    ...round,
    // The cover stands over the crimp's middle, and so reaches a little into the loop.
    loopMm: loopMm + roomMm,
    beads: isFirst ? 0 : found.tails.ring.passed,
    outMm: isFirst ? found.outMm : null,
  };
  return [
    {
      code: 'thread-end',
      strand,
      args: { ...round, crimp: crimp.crimp, guard: guard?.guard ?? null, way },
    },
    { code: 'lead-back', strand, args: led },
    { code: 'check-loop', strand, args: round },
  ];
}

/**
 * Steps of one end of one strand, up to where beads follow (clasp) or nothing
 * does (ring).
 *
 * At the first end the beads come afterwards, so the crimp is closed before
 * them, and its cover too, which they then stand against; the tail is cut when
 * the beads that hide it are over it. At the second the wire runs back through
 * the beads before the crimp is closed, and everything that could still be
 * mended is looked at first: loop, slack, length, pattern.
 */
export function endSteps(card: Card, found: StrandCard, strand: number, end: End): Step[] {
  const { crimp, coverId, roomMm } = card.ends;
  const [thread, lead, look] = loopSteps(card, found, strand, end);
  const { passed } = found.tails[end];
  const crimped: Step = { code: 'crimp', strand, args: { end, crimp: crimp.crimp } };
  const bead = passed === 0 ? null : found.count - passed + 1;
  const cutTail: Step = { code: 'cut-tail', strand, args: { end, beads: passed, bead } };
  const covered: Step[] =
    coverId === null ? [] : [{ code: 'close-cover', strand, args: { end, cover: coverId } }];
  if (end === 'clasp') {
    return [thread, lead, look, crimped, ...(passed === 0 ? [cutTail] : []), ...covered];
  }
  return [
    thread,
    lead,
    { code: 'draw-up', strand, args: { slackMm: found.slackMm, roomMm } },
    look,
    {
      code: 'measure',
      strand,
      args: { lengthMm: found.finishedLengthMm, chained: card.ends.extenderMm > 0 },
    },
    { code: 'check-pattern', strand, args: { count: found.count } },
    crimped,
    cutTail,
    ...covered,
  ];
}
