/** What stands on the wire between the last bead and the wire loop. */
import type { Design } from '../design.ts';

/**
 * Length that one end's crimp takes on the wire, in mm: its cover's where one
 * closes over it, since the cover stands between bead and loop.
 */
export function endPartMm(design: Design): number {
  const { crimp, cover } = design.ends;
  return design.components[cover ?? crimp]?.alongMm ?? 0;
}
