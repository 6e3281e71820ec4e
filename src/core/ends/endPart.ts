/** What stands on the wire between the last bead and the wire loop. */
import type { Design } from '../strand/design.ts';

/**
 * Length that one end's crimp takes on the wire, in mm: its cover's, where one
 * closes over it, for the cover is the longer and stands between bead and loop.
 */
export function endPartMm(design: Design): number {
  const { crimp, cover } = design.ends;
  const crimpMm = design.components[crimp]?.alongMm ?? 0;
  const coverMm = cover === null ? 0 : (design.components[cover]?.alongMm ?? 0);
  return Math.max(crimpMm, coverMm);
}
