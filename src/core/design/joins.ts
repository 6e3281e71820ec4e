/** How what hangs is joined: which ring is opened, and what it then takes. */
import type { Joint } from './component.ts';
import type { Design } from './design.ts';

/** One ring opened, what belongs on it put on, and closed again. */
export type Join = {
  readonly ring: string;
  /** Its place from the wire down, 0 for the one on the wire. */
  readonly place: number;
  readonly joint: Exclude<Joint, 'closed'>;
  /** The ring above that it takes; null where that is joined already, or the wire is. */
  readonly above: string | null;
  /** The ring or pendant below that it takes; null where that was opened for it. */
  readonly below: string | null;
};

/** Two neighbours neither of which opens. */
export type Unjoined = { readonly place: number; readonly ring: string; readonly hangs: string };

/**
 * The joins of a design's pendant and its rings, from the pendant up. A
 * pendant's own loop is closed, so the ring that holds it opens; of two rings
 * the lower is opened, since it often has to be anyway. A ring whose joint
 * isn't stated is taken to open: it hangs there.
 */
export function joinsOf({ hanging, components }: Design): {
  readonly joins: readonly Join[];
  readonly unjoined: readonly Unjoined[];
} {
  const joins: Join[] = [];
  const unjoined: Unjoined[] = [];
  const rings = hanging?.rings ?? [];
  const jointOf = (place: number): Joint => components[rings[place] ?? '']?.joint ?? 'open';
  let below = hanging?.pendant ?? null;
  for (let place = rings.length - 1; place >= 0; place -= 1) {
    const ring = rings[place] ?? '';
    const joint = jointOf(place);
    if (joint === 'closed') {
      if (below !== null) unjoined.push({ place, ring, hangs: below });
      below = ring;
      continue;
    }
    const above = place > 0 ? (rings[place - 1] ?? null) : null;
    if (below !== null || above !== null) joins.push({ ring, place, joint, above, below });
    // It has taken the ring above, which then needn't be opened for it.
    below = null;
  }
  return { joins, unjoined };
}
