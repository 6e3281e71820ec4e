/** What hangs there, end to end, by the hands and by the sizing: two lists that must be the same. */
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { loopParts } from '#core/design/loopParts.ts';
import type { Hand } from '#core/design/choice.ts';
import { solveLoop } from '#core/geometry/loop.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Maker } from './maker.ts';
import type { EndName, Wire } from './wire.ts';

const slack = (mm: number): string => `slack ${mm.toFixed(3)}`;

/** One strand from its clasp end to its ring end. */
export function strung(wire: Wire): string[] {
  const end = (name: EndName): string[] => {
    const { held, guard, crimp, closed, cover } = wire.ends[name];
    return [
      `${held?.what ?? 'open'} ${held?.component?.id ?? ''}`,
      `guard ${guard?.id ?? 'none'}`,
      `${closed ? 'closed' : 'open'} ${crimp?.id ?? 'none'} in ${cover?.id ?? 'nothing'}`,
    ];
  };
  const beads = wire.beads.map(({ name, counts }) => (counts ? name : `hangs ${name}`));
  return [...end('clasp'), ...beads, ...end('ring').toReversed(), slack(wire.slackMm ?? NaN)];
}

/** Clasps that come apart into halves, by what they are. */
const TWO_HALVES = ['toggle', 'hook', 'box', 'magnetic'];

/** Where a pendant belongs: the gap nearest the middle of what is strung, the first of two. */
function gapNearestMiddle(beads: readonly Placed[]): number {
  const ends = beads.map((_, at) =>
    beads.slice(0, at + 1).reduce((sum, { component }) => sum + component.alongMm, 0),
  );
  const middle = (ends.at(-1) ?? 0) / 2;
  let best = beads.length;
  let least = Infinity;
  ends.slice(0, -1).forEach((edge, at) => {
    if (Math.abs(edge - middle) < least - 1e-9) {
      least = Math.abs(edge - middle);
      best = at + 1;
    }
  });
  return best;
}

/** What the sizing says hangs there. */
export function wanted(design: Design, candidate: Candidate): string[][] {
  const { ends, hanging, components } = design;
  const shape = components[ends.clasp]?.shape ?? '';
  const comesApart = ends.ring === null && TWO_HALVES.includes(shape);
  const far = (): string => {
    if (ends.ring !== null) return `whole ${ends.ring}`;
    if (comesApart) return `other-half ${ends.clasp}`;
    return ends.extenderMm > 0 ? 'chain ' : 'nothing ';
  };
  const closing = (held: string): string[] => [
    held,
    `guard ${ends.guard ?? 'none'}`,
    `closed ${ends.crimp} in ${ends.cover ?? 'nothing'}`,
  ];
  return candidate.sequences.map((sequence, strand) => {
    const beads = sequence.filter(({ section }) => section !== 'end');
    const names = beads.map(({ component }) => component.id);
    if (hanging !== null && strand === 0) {
      const hung = `hangs ${[...hanging.rings, hanging.pendant].join(' > ')}`;
      names.splice(gapNearestMiddle(beads), 0, hung);
    }
    return [
      ...closing(`${comesApart ? 'first-half' : 'whole'} ${ends.clasp}`),
      ...names,
      ...closing(far()).toReversed(),
      slack(solveLoop(loopParts(design, sequence, candidate.chainUsedMm)).slackMm),
    ];
  });
}

/** The board's side for the clasp: as seen on another person, so a right hand works at the left. */
export function wantedSide(design: Design, candidate: Candidate, hand: Hand): 'left' | 'right' | null {
  if (design.components[design.ends.clasp]?.handed !== true) return null;
  const readsAlike = candidate.sequences.every((sequence) => {
    const names = sequence.map(({ component }) => component.id);
    return names.join() === names.toReversed().join();
  });
  // Turned end for end, a face without top and bottom still looks out.
  const oneWay = design.hanging !== null || !readsAlike || (design.oneSided && design.upright !== false);
  if (!oneWay) return null;
  return hand === 'right' ? 'left' : 'right';
}

export const hangs = (maker: Maker): string[][] => maker.wires.map(strung);
