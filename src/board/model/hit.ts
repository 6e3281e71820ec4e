/** Which bead is meant by a place on the board. */
import type { BoardStrand } from '#draw/layout/board.ts';
import type { PlacesOfStrand } from './laid.ts';
import type { Place } from './place.ts';

/** `place` is null beside all beads of the strand. `inwards`: on its side towards the middle. */
export type Hit = { readonly strand: number; readonly place: Place | null; readonly inwards: boolean };

/** A finger meets a bead this far beside it too, mm. */
const REACH_MM = 7;

export const sameSection = (one: Place, other: Place): boolean =>
  one.strand === other.strand && one.section === other.section;

/** The bead nearest to a point; null where no strand lies. */
export function nearestPlace(
  strands: readonly BoardStrand[],
  places: readonly PlacesOfStrand[],
  xMm: number,
  yMm: number,
): Hit | null {
  let best: { hit: Hit; apartMm: number } | null = null;
  let nearest: { strand: number; apartMm: number } | null = null;
  for (const [strand, { spots, groove }] of strands.entries()) {
    const alongMm = nearestAlong(groove, xMm, yMm);
    const on = groove.curve.at(alongMm);
    const grooveMm = Math.hypot(on.xMm - xMm, on.yMm - yMm);
    if (nearest === null || grooveMm < nearest.apartMm) nearest = { strand, apartMm: grooveMm };
    for (const [index, spot] of spots.entries()) {
      const place = places[strand]?.[index] ?? null;
      if (place === null) continue;
      const apartMm = Math.hypot(spot.xMm - xMm, spot.yMm - yMm);
      if (apartMm > REACH_MM + spot.component.acrossMm / 2 || (best !== null && apartMm >= best.apartMm))
        continue;
      const ahead = (xMm - spot.xMm) * Math.cos(spot.turnRad) + (yMm - spot.yMm) * Math.sin(spot.turnRad);
      const isLeft = index < spots.length / 2;
      best = { apartMm, hit: { strand, place, inwards: isLeft ? ahead > 0 : ahead < 0 } };
    }
  }
  if (best !== null) return best.hit;
  return nearest === null ? null : { strand: nearest.strand, place: null, inwards: false };
}

/** Where along a groove a point is nearest, to a millimetre. */
function nearestAlong({ curve }: BoardStrand['groove'], xMm: number, yMm: number): number {
  let best = 0;
  let apart = Infinity;
  for (let along = 0; along <= curve.lengthMm; along += 1) {
    const at = curve.at(along);
    const away = (at.xMm - xMm) ** 2 + (at.yMm - yMm) ** 2;
    if (away < apart) [best, apart] = [along, away];
  }
  return best;
}
