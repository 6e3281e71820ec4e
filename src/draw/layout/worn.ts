/**
 * A necklace as it lies on the body, seen from the front. The origin is the pit of the neck, x to the
 * wearer's left (the picture's right), y down. The strand is laid on core's curve unrolled, where its
 * measures are true, and only then tilted into the picture.
 */
import type { Lie } from '#core/body/lie.ts';
import type { Placed } from '#core/design/expand.ts';
import { placeAlong } from './along.ts';
import { arc, joined, type Curve } from './curve.ts';
import { hanging } from './hanging.ts';
import { toParts, type Spot } from './spot.ts';

/** A lie that can be drawn. */
export type WornLie = Extract<Lie, { status: 'on-neck' | 'hangs' }>;

export type Worn = {
  /** In front of the neck, from the top down, so that what is nearer the eye is painted last. */
  readonly front: readonly Spot[];
  /** Round the back of the neck. */
  readonly behind: readonly Spot[];
};

/** Step of the derivative that turns a component into the picture, mm. */
const STEP_MM = 0.05;

/** The whole line unrolled: round one side of the neck, down, up, round the other side. */
export function unrolled(lie: WornLie): Curve {
  const front = hanging(lie.hung, lie.frontMm);
  const radiusMm = lie.spanMm / 2;
  const quarterMm = (Math.PI / 2) * radiusMm;
  const left = front.at(0);
  const right = front.at(lie.frontMm);
  return joined([
    arcInto(left.xMm, left.yMm, left.turnRad, radiusMm, quarterMm),
    front,
    arcOutOf(right.xMm, right.yMm, right.turnRad, radiusMm, quarterMm),
  ]);
}

/** A quarter of the neck's back that arrives at a point in a direction, turning as the front does. */
function arcInto(xMm: number, yMm: number, turnRad: number, radiusMm: number, lengthMm: number): Curve {
  const centreX = xMm + radiusMm * Math.sin(turnRad);
  const centreY = yMm - radiusMm * Math.cos(turnRad);
  const endRad = Math.atan2(yMm - centreY, xMm - centreX);
  const sweepRad = -lengthMm / radiusMm;
  return arc(centreX, centreY, radiusMm, endRad - sweepRad, sweepRad);
}

function arcOutOf(xMm: number, yMm: number, turnRad: number, radiusMm: number, lengthMm: number): Curve {
  const centreX = xMm + radiusMm * Math.sin(turnRad);
  const centreY = yMm - radiusMm * Math.cos(turnRad);
  return arc(centreX, centreY, radiusMm, Math.atan2(yMm - centreY, xMm - centreX), -lengthMm / radiusMm);
}

export type Point = { readonly xMm: number; readonly yMm: number };

/**
 * The picture's place of a point `fromMiddleMm` along the strand's line, right of the middle positive.
 * In front: core's scales of sag to upright drop. Behind: half a circle seen at the slant at which the
 * foot of the neck lies.
 */
export function pictured(lie: WornLie, fromMiddleMm: number): Point {
  const halfMm = lie.frontMm / 2;
  const side = Math.sign(fromMiddleMm);
  const beyondMm = Math.abs(fromMiddleMm) - halfMm;
  const topMm = -lie.sagAtPitMm * lie.abovePit;
  if (beyondMm > 0) {
    const roundRad = beyondMm / (lie.spanMm / 2);
    return {
      xMm: (side * lie.spanMm * Math.cos(roundRad)) / 2,
      // The nape lies as far above these points as the pit lies below them.
      yMm: topMm * (1 + Math.sin(roundRad)),
    };
  }
  const { xMm, yMm } = hanging(lie.hung, lie.frontMm).at(fromMiddleMm + halfMm);
  const pastPitMm = yMm - lie.sagAtPitMm;
  return { xMm, yMm: pastPitMm * (pastPitMm < 0 ? lie.abovePit : lie.belowPit) };
}

/** Lays a strand as worn; its middle is the lowest point. */
export function placeWorn(sequence: readonly Placed[], lie: WornLie): Worn {
  const curve = unrolled(lie);
  const middleMm = curve.lengthMm / 2;
  const laid = placeAlong(toParts(sequence), curve, middleMm);
  const front: Spot[] = [];
  const behind: Spot[] = [];
  for (const [at, spot] of laid.spots.entries()) {
    const fromMiddleMm = (laid.centresMm[at] ?? middleMm) - middleMm;
    // Past the nape; a strand longer than it lies would come round again.
    if (Math.abs(fromMiddleMm) > middleMm) continue;
    const before = pictured(lie, fromMiddleMm - STEP_MM);
    const after = pictured(lie, fromMiddleMm + STEP_MM);
    const turnRad = Math.atan2(after.yMm - before.yMm, after.xMm - before.xMm);
    const shown = { ...spot, ...pictured(lie, fromMiddleMm), turnRad };
    if (Math.abs(fromMiddleMm) <= lie.frontMm / 2) front.push(shown);
    else behind.push(shown);
  }
  return { front: front.toSorted((one, other) => one.yMm - other.yMm), behind };
}
