/** The piece as it stands in the shop. */
import type { Counts, Design } from './design.ts';

/** The usual count of every section, which the listed price is for. */
export function usualCounts(design: Design): Counts {
  return design.strands.map((strand) => strand.sections.map((section) => section.usual));
}
