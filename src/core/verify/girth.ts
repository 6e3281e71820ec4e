/**
 * The inside girth by slow relaxation, another way than the solver's. At a
 * trial radius the strand is pulled taut by moving one part at a time to where
 * its neighbours pull it, never below the cylinder; the radius is bisected
 * until the strand comes round once, and the bends this makes set the
 * distances for the next round.
 */
import { leastDistanceMm } from './loop.ts';
import type { Part } from '../geometry/part.ts';

const FULL_TURN = 2 * Math.PI;
/** Rounds of bends. Most strands settle to a tenth or so each time; tight rings of discs hardly do. */
const MOST_ROUNDS = 300;
/** Radius at which a round is called still, mm. Tight rings of discs settle by a thousandth of what is left. */
const STILL_MM = 3e-7;
/** A pass is the last one when no square moves by more, mm². */
const STILL_SQUARE = 2e-8;
/** Each part goes beyond where it is pulled by this factor, which takes fewer passes (successive over-relaxation). */
const BEYOND = 1.6;
const BISECTIONS = 34;
/** Passes over the strand at one radius; a fat neighbour over a run of thin parts needs most. */
const MOST_PASSES = 2000;

/** Angle between sides `one` and `other` of a triangle, rad. */
function angleOpposite(far: number, one: number, other: number): number {
  const cosine = (one * one + other * other - far * far) / (2 * one * other);
  return Math.acos(Math.max(-1, Math.min(1, cosine)));
}

/**
 * Squares of the centres' distances from the axis. A centre between two
 * neighbours on a straight line has, by Stewart's theorem, the square
 * `(d2·u1 + d1·u2)/(d1 + d2) − d1·d2`; it rises to that, or rests on the cylinder.
 */
function pullTaut(squares: Float64Array, floors: readonly number[], apart: readonly number[]): void {
  const count = floors.length;
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    let moved = 0;
    for (let at = 0; at < count; at += 1) {
      const before = at === 0 ? count - 1 : at - 1;
      const after = at + 1 === count ? 0 : at + 1;
      const [d1, d2] = [apart[before]!, apart[at]!];
      const line = (d2 * squares[before]! + d1 * squares[after]!) / (d1 + d2) - d1 * d2;
      const here = squares[at]!;
      const now = Math.max(floors[at]! ** 2, here + BEYOND * (line - here));
      moved = Math.max(moved, Math.abs(now - here));
      squares[at] = now;
    }
    if (moved < STILL_SQUARE) return;
  }
}

/** How far round the strand comes, rad. */
function angleRound(squares: Float64Array, apart: readonly number[]): number {
  return apart.reduce((sum, far, at) => {
    const after = at + 1 === apart.length ? 0 : at + 1;
    return sum + angleOpposite(far, Math.sqrt(squares[at]!), Math.sqrt(squares[after]!));
  }, 0);
}

/** The bend of the strand at every part, rad. */
function bendsOf(squares: Float64Array, apart: readonly number[]): number[] {
  const radii = Array.from(squares, Math.sqrt);
  return apart.map((after, at) => {
    const before = at === 0 ? apart.length - 1 : at - 1;
    const next = at + 1 === apart.length ? 0 : at + 1;
    const inner =
      angleOpposite(radii[before]!, radii[at]!, apart[before]!) +
      angleOpposite(radii[next]!, radii[at]!, after);
    return Math.PI - inner;
  });
}

/**
 * Inside girth of a loop of parts, mm, right to a thousandth; 0 where it
 * passes round no cylinder.
 */
export function girthByRelaxing(parts: readonly Part[]): number {
  const taking = parts.filter((part) => part.alongMm > 0);
  const count = taking.length;
  if (count < 3) return 0;
  const lengthMm = taking.reduce((sum, part) => sum + part.alongMm, 0);
  const squares = new Float64Array(count);
  let turns = taking.map(
    (part, at) => (Math.PI * (part.alongMm + taking[(at + 1) % count]!.alongMm)) / lengthMm,
  );
  let last = 0;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const apart = taking.map((part, at) => leastDistanceMm(part, taking[(at + 1) % count]!, turns[at]!));
    const comesRound = (radiusMm: number): boolean => {
      pullTaut(
        squares,
        taking.map((part) => radiusMm + part.acrossMm / 2),
        apart,
      );
      return angleRound(squares, apart) >= FULL_TURN;
    };
    // Near the last radius first: later rounds hardly move it.
    let width = round === 0 ? lengthMm : Math.max(1e-5, lengthMm / 4 ** round);
    let low = Math.max(0, last - width);
    let high = round === 0 ? lengthMm / 4 : last + width;
    while (!comesRound(low)) {
      if (low === 0) return 0;
      width *= 2;
      low = Math.max(0, low - width);
    }
    while (comesRound(high)) {
      width *= 2;
      high += width;
    }
    for (let step = 0; step < BISECTIONS && high - low > STILL_MM / 10; step += 1) {
      const middle = (low + high) / 2;
      if (comesRound(middle)) low = middle;
      else high = middle;
    }
    const bends = bendsOf(squares, apart);
    const wanted = bends.map((bend, at) => (bend + bends[(at + 1) % count]!) / 2);
    const damping = round < 8 ? 1 : 0.5;
    turns = turns.map((turn, at) => turn + damping * (wanted[at]! - turn));
    if (Math.abs(low - last) < STILL_MM) return FULL_TURN * low;
    last = low;
  }
  return FULL_TURN * last;
}
