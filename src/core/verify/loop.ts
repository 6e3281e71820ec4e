/**
 * Checks a loop against its definition, from the coordinates alone. It shares
 * no code with the solver, and says what is broken rather than what is right.
 */
import type { Loop, LoopSpot } from '../geometry/loop.ts';
import type { Part } from '../geometry/part.ts';

export type LoopFault = {
  readonly code:
    | 'count'
    | 'not-a-number'
    | 'inside-cylinder'
    | 'off-cylinder'
    | 'not-touching'
    | 'chord-bent'
    | 'corner-inwards'
    | 'axis-askew'
    | 'turn'
    | 'not-closed'
    | 'girth'
    | 'slack';
  /** The part it is found at; -1 for the loop as a whole. */
  readonly at: number;
  readonly by: number;
};

/** Differences below this are the arithmetic's, mm and rad alike. */
const CLOSE = 1e-7;

type Point = { readonly x: number; readonly y: number };

const centreOf = (spot: LoopSpot): Point => ({
  x: spot.radiusMm * Math.cos(spot.placeRad),
  y: spot.radiusMm * Math.sin(spot.placeRad),
});

/** Difference of two directions, from −π to π. */
function between(from: number, to: number): number {
  return Math.atan2(Math.sin(to - from), Math.cos(to - from));
}

const direction = (from: Point, to: Point): number => Math.atan2(to.y - from.y, to.x - from.x);

/** Distance that neighbours keep when they turn by `turnRad`: the two half outlines against the plane between them. */
export function leastDistanceMm(one: Part, other: Part, turnRad: number): number {
  const cut = (part: Part): number => Math.min(part.roundingMm, part.alongMm / 2, part.acrossMm / 2);
  const [c1, c2] = [cut(one), cut(other)];
  const flat = one.alongMm / 2 - c1 + (other.alongMm / 2 - c2);
  const rim = Math.min(one.acrossMm / 2 - c1, other.acrossMm / 2 - c2);
  return flat * Math.cos(turnRad / 2) + 2 * rim * Math.sin(turnRad / 2) + c1 + c2;
}

function checkSpot(parts: readonly Part[], loop: Loop, at: number, faults: LoopFault[]): void {
  const { spots, radiusMm } = loop;
  const count = spots.length;
  const [before, here, after] = [spots[(at + count - 1) % count]!, spots[at]!, spots[(at + 1) % count]!];
  const part = parts[at]!;
  const next = parts[(at + 1) % count]!;
  const fault = (code: LoopFault['code'], by: number): void => {
    if (!(Math.abs(by) <= CLOSE)) faults.push({ code, at, by });
  };
  const clear = here.radiusMm - radiusMm - part.acrossMm / 2;
  if (clear < -CLOSE) faults.push({ code: 'inside-cylinder', at, by: clear });
  if (!here.lifted) fault('off-cylinder', clear);
  const [p, q, r] = [centreOf(before), centreOf(here), centreOf(after)];
  const turn = between(here.axisRad, after.axisRad);
  fault('turn', turn - here.turnRad);
  fault('not-touching', Math.hypot(r.x - q.x, r.y - q.y) - leastDistanceMm(part, next, turn));
  const [arriving, leaving] = [direction(p, q), direction(q, r)];
  const corner = between(arriving, leaving);
  if (here.lifted) fault('chord-bent', corner);
  if (corner < -CLOSE) faults.push({ code: 'corner-inwards', at, by: corner });
  fault('axis-askew', between(arriving + corner / 2, here.axisRad));
  const opened = leastDistanceMm(part, next, turn) - ((part.alongMm + next.alongMm) / 2) * Math.cos(turn / 2);
  fault('slack', opened - here.gapMm);
}

/**
 * What is broken in a loop, as it stands on the parts it was solved for; empty
 * where nothing is. A loop that doesn't close is passed over.
 */
export function verifyLoop(parts: readonly Part[], loop: Loop): LoopFault[] {
  if (!loop.closes) return [];
  const taking = parts.filter((part) => part.alongMm !== 0);
  const { spots } = loop;
  if (spots.length !== taking.length) return [{ code: 'count', at: -1, by: spots.length - taking.length }];
  const faults: LoopFault[] = [];
  spots.forEach((spot, at) => {
    const figures = [spot.radiusMm, spot.placeRad, spot.axisRad, spot.turnRad, spot.gapMm];
    if (!figures.every(Number.isFinite)) faults.push({ code: 'not-a-number', at, by: NaN });
    else checkSpot(taking, loop, at, faults);
  });
  const round = spots.reduce((sum, spot, at) => {
    const step = spots[(at + 1) % spots.length]!.placeRad - spot.placeRad;
    return sum + (step < -CLOSE ? step + 2 * Math.PI : step);
  }, 0);
  const whole = (code: LoopFault['code'], by: number): void => {
    if (!(Math.abs(by) <= CLOSE)) faults.push({ code, at: -1, by });
  };
  whole('not-closed', round - 2 * Math.PI);
  whole('girth', loop.insideGirthMm - 2 * Math.PI * loop.radiusMm);
  whole('slack', loop.slackMm - spots.reduce((sum, spot) => sum + spot.gapMm, 0));
  return faults;
}
