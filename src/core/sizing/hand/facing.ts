/**
 * Which way a pendant faces. A ring on the wire hangs square to the wire, and
 * each thing linked to it turns a quarter (common practice, no source; plain
 * geometry of linked rings).
 */
import type { Design } from '../../design/design.ts';

export type Facing = {
  readonly pendant: string;
  readonly rings: number;
  readonly loop: 'in-plane' | 'through';
  readonly faces: 'front' | 'sideways';
  /** Rings to add for it to face front: 0 where it does, else 1. */
  readonly addRings: 0 | 1;
};

/** How the design's pendant will hang; null where it has none, or its loop isn't stated. */
export function facing(design: Design): Facing | null {
  if (design.hanging === null) return null;
  const loop = design.components[design.hanging.pendant]?.loop ?? null;
  if (loop === null) return null;
  const rings = design.hanging.rings.length;
  const odd = rings % 2 === 1;
  const front = loop === 'in-plane' ? odd : !odd;
  return {
    pendant: design.hanging.pendant,
    rings,
    loop,
    faces: front ? 'front' : 'sideways',
    addRings: front ? 0 : 1,
  };
}
