/** What hangs at the middle: rings, facing, and the two components that it hangs between. */
import { facing } from '../sizing/hand/facing.ts';
import type { Facing } from '../sizing/hand/facing.ts';
import type { Design } from '../design/design.ts';
import { joinsOf } from '../design/joins.ts';
import type { Join } from '../design/joins.ts';
import type { Placed } from '../design/expand.ts';
import { pendantGap } from '../design/pendantGap.ts';

export type HungPendant = {
  readonly pendant: string;
  /** Rings from the wire down. */
  readonly rings: readonly string[];
  /** null where the pendant's loop isn't stated. */
  readonly facing: Facing | null;
  /** The rings to open for it, from the pendant up. */
  readonly joins: readonly Join[];
  /** Components of strand 0 that are strung before it. */
  readonly after: number;
  /** Neighbours on the wire, by id; null where it would hang at an end. */
  readonly left: string | null;
  readonly right: string | null;
  /** True between two equal components, so that it centres and swings free (common practice, no source). */
  readonly centred: boolean;
  /** Place of the gap that it hangs in, from the middle of what is strung; 0 or the half of a bead in the way. */
  readonly offMiddleMm: number;
};

/** How the design's pendant hangs on strand 0 as expanded; null where it hangs none. */
export function hungPendant(design: Design, sequence: readonly Placed[]): HungPendant | null {
  if (design.hanging === null) return null;
  const gap = pendantGap(sequence);
  const left = gap.left?.component.id ?? null;
  const right = gap.right?.component.id ?? null;
  return {
    pendant: design.hanging.pendant,
    rings: design.hanging.rings,
    joins: joinsOf(design).joins,
    after: gap.after,
    facing: facing(design),
    left,
    right,
    centred: left !== null && left === right,
    offMiddleMm: gap.offMiddleMm,
  };
}
