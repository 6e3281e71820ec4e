/** Distances to hold neighbours at, so that a loop with them bounds every loop with its own: see `girthBounds.ts`. */
import { distanceAt, farthestTurn } from '../geometry/junction.ts';
import { boundTurns, openingOnly, type Neighbourhood, type TurnBounds } from '../geometry/turnBounds.ts';

const FULL_TURN = 2 * Math.PI;
/** Radii at which junctions are bounded anew, mm apart: a bound that holds from a radius on loses little by the next. */
const RADIUS_STEP_MM = 2;

/** For loops that close at some radius or more. */
export type HeldDistances = {
  /** Every distance is `leastMm + leastOpening · turn` or more, whatever its turn; all of them positive. */
  readonly leastMm: Float64Array;
  readonly leastOpening: number;
  /** Every distance is `mostMm + mostOpening · turn` or less. */
  readonly mostMm: Float64Array;
  readonly mostOpening: number;
  /** No chord's line is nearer to the axis, mm; 0 where one may cross it. */
  readonly chordMm: number;
};

/** How wide the bounds will be for one opening or another, by the turns that junctions probably take. */
type Loss = (openingMm: number) => number;

/** The opening that loses least: none, or that of a junction, since losses are piecewise linear with corners there. */
function bestOpening(around: Neighbourhood, loss: Loss): number {
  const openings = new Set(around.junctions.rim.map((rim) => rim / 2));
  return [...openings].reduce((best, opening) => (loss(opening) < loss(best) ? opening : best), 0);
}

/**
 * Which openings to hold apart; any are valid, and the bounds are closest for
 * those that most of the turning falls on.
 * @param times how often each junction is strung, as usual.
 */
function openingsFor(
  around: Neighbourhood,
  times: Float64Array,
  secondHalfAcrossMm: number,
  { mostTurnRad, chordMm }: TurnBounds,
  radiusMm: number,
): { least: number; most: number } {
  const { junctions, one, other, outlines } = around;
  const turns = times.map((count, at) => count * mostTurnRad[at]!);
  const allTurns = turns.reduce((sum, turn) => sum + turn, 0);
  // Each takes its share of the full turn, and that much of its bound is left.
  const taken = Math.min(1, FULL_TURN / allTurns);
  const halfAcrossMm = turns.reduce((sum, turn, at) => {
    return (
      sum + (turn / allTurns) * ((outlines.halfAcross[one[at]!]! + outlines.halfAcross[other[at]!]!) / 2)
    );
  }, 0);
  const shared = (openingMm: number, wider: number, narrower: number): number =>
    turns.reduce((sum, turn, at) => {
      const over = openingMm - junctions.rim[at]! / 2;
      return sum + turn * (over > 0 ? over * wider : -over * narrower);
    }, 0);
  const outer = radiusMm + secondHalfAcrossMm;
  const middle = radiusMm + halfAcrossMm;
  return {
    least: bestOpening(around, (mm) => shared(mm, 1 - taken, taken) + FULL_TURN * mm * (1 - middle / outer)),
    most: bestOpening(around, (mm) => shared(mm, taken, 1 - taken) + FULL_TURN * mm * (middle / chordMm - 1)),
  };
}

function hold(
  { junctions }: Neighbourhood,
  bounds: TurnBounds,
  openings: { least: number; most: number },
): HeldDistances {
  const { mostTurnRad, chordMm } = bounds;
  const lowest = (opening: number): Float64Array =>
    mostTurnRad.map((turn, at) =>
      // Concave in the turn, so least at an end.
      Math.min(distanceAt(junctions, at, 0), distanceAt(junctions, at, turn) - opening * turn),
    );
  const leastMm = lowest(openings.least);
  const leastOpening = leastMm.every((mm) => mm > 0) ? openings.least : 0;
  return {
    leastMm: leastOpening === openings.least ? leastMm : lowest(0),
    leastOpening,
    mostMm: mostTurnRad.map((turn, at) => {
      const top = Math.min(turn, farthestTurn(junctions, at, openings.most));
      return distanceAt(junctions, at, top) - openings.most * top;
    }),
    mostOpening: openings.most,
    chordMm,
  };
}

/**
 * The distances to hold from any radius on, worked out once for a range of radii.
 * @param times how often each junction is strung, as usual.
 * @param usualRadiusMm about what the loop then has.
 */
export function heldDistances(
  around: Neighbourhood,
  times: Float64Array,
  secondHalfAcrossMm: number,
  usualRadiusMm: number,
): (radiusMm: number) => HeldDistances {
  const usual = boundTurns(around, usualRadiusMm);
  const openings =
    usual.chordMm > 0
      ? openingsFor(around, times, secondHalfAcrossMm, usual, usualRadiusMm)
      : { least: 0, most: 0 };
  const needed = openings.least > 0 ? around : openingOnly(around);
  const baseMm = usualRadiusMm / 2;
  const base = boundTurns(needed, baseMm);
  const known = new Map<number, HeldDistances>();
  return (radiusMm) => {
    const step = Math.floor(radiusMm / RADIUS_STEP_MM);
    const found = known.get(step);
    if (found !== undefined) return found;
    const from = step * RADIUS_STEP_MM;
    const made = hold(around, boundTurns(needed, from, from >= baseMm ? base : undefined), openings);
    known.set(step, made);
    return made;
  };
}
