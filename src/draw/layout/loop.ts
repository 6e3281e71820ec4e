/** A closed strand, seen along the arm: where core's loop has every part. */
import { solveLoop, type Loop } from '#core/geometry/loop.ts';
import type { Design } from '#core/design/design.ts';
import type { Placed } from '#core/design/expand.ts';
import { loopParts } from '#core/design/loopParts.ts';
import { claspEnd, hangingChain, ringEnd, type ClosingSpot } from './closing.ts';
import { toParts, type Spot } from './spot.ts';

export type PlacedLoop = {
  /** As solved; its cylinder's axis is the drawing's origin. */
  readonly loop: Loop;
  readonly spots: readonly Spot[];
  /** Parts of the strand that the hull lifts off the cylinder, by index. */
  readonly lifted: readonly number[];
  readonly closing: readonly ClosingSpot[];
};

/** Upwards on the page. */
const TOP_RAD = -Math.PI / 2;

/**
 * Lays a closed strand round the origin, its middle on top, its clasp below, running clockwise from the clasp.
 * @param topRad where the strand's middle goes, clockwise from rightwards; the top where left out
 */
export function placeLoop(design: Design, sequence: readonly Placed[], topRad = TOP_RAD): PlacedLoop {
  const parts = toParts(sequence);
  const loop = solveLoop(loopParts(design, sequence));
  // Parts of no length have no spot in the loop, and nothing to draw.
  const strung = parts.filter((part) => part.component.alongMm !== 0);
  const closers = [...ringEnd(design).toReversed(), ...claspEnd(design)].filter(
    (piece) => piece.alongMm !== 0,
  );
  const turn = topRad - middleRad(loop, strung.length);
  const placeOf = (at: number): Pick<Spot, 'xMm' | 'yMm' | 'turnRad'> => {
    const spot = loop.spots[at];
    if (spot === undefined) return { xMm: 0, yMm: 0, turnRad: 0 };
    const placeRad = spot.placeRad + turn;
    return {
      xMm: spot.radiusMm * Math.cos(placeRad),
      yMm: spot.radiusMm * Math.sin(placeRad),
      turnRad: spot.axisRad + turn,
    };
  };
  return {
    loop,
    spots: loop.closes ? strung.map((part, at) => ({ ...part, ...placeOf(at) })) : [],
    lifted: strung.flatMap((_, at) => (loop.spots[at]?.lifted === true ? [at] : [])),
    closing: loop.closes
      ? withChain(
          design,
          closers.map((piece, at) => turnOutwards(piece, placeOf(strung.length + at), at)),
        )
      : [],
  };
}

/** An extender's chain stands out from the ring: it is not part of the round. */
function withChain(design: Design, closing: readonly ClosingSpot[]): readonly ClosingSpot[] {
  const ring = closing.find(({ kind }) => kind === 'ring');
  const [chain] = hangingChain(design);
  if (ring === undefined || chain === undefined) return closing;
  const outRad = Math.atan2(ring.yMm, ring.xMm);
  const outMm = Math.hypot(ring.xMm, ring.yMm) + (ring.alongMm + chain.alongMm) / 2;
  const place = { xMm: outMm * Math.cos(outRad), yMm: outMm * Math.sin(outRad), turnRad: outRad };
  return [{ ...chain, ...place }, ...closing];
}

/** The first half of the closing is the ring end: it faces back to the strand it follows. */
function turnOutwards(
  piece: Pick<ClosingSpot, 'kind' | 'component' | 'alongMm'>,
  place: Pick<Spot, 'xMm' | 'yMm' | 'turnRad'>,
  at: number,
): ClosingSpot {
  const facesBack = piece.kind === 'ring' || (piece.kind === 'wire-loop' && at === 0);
  return { ...piece, ...place, turnRad: facesBack ? place.turnRad + Math.PI : place.turnRad };
}

/** Place of the strand's middle by length, rad. */
function middleRad(loop: Loop, strung: number): number {
  const first = loop.spots[0]?.placeRad ?? 0;
  const last = loop.spots[strung - 1]?.placeRad ?? 0;
  if (strung % 2 === 1) return loop.spots[(strung - 1) / 2]?.placeRad ?? (first + last) / 2;
  return (first + last) / 2;
}
