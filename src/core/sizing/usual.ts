/** The piece as it stands in the shop. */
import type { Counts, Design } from '../design/design.ts';
import { candidate } from './candidate.ts';
import type { Rules } from '../design/rules.ts';
import type { Candidate } from './sizing.ts';
import { fittedOf } from '../design/choice.ts';

export { usualCounts as usual } from '../design/usualCounts.ts';

/**
 * A piece by its counts, measured as it is and against no target: `errorMm` is
 * 0, an extender chain isn't let out.
 * @param listedMinor price of the piece with its usual counts.
 * @param listed the piece that the listed price is for, where `design` has another clasp or pendant.
 */
export function describe(
  design: Design,
  rules: Rules,
  listedMinor: number,
  counts: Counts,
  listed: Design = design,
): Candidate {
  return candidate(
    design,
    rules,
    { priceMinor: listedMinor, design: listed },
    counts,
    fittedOf(design.kind),
    0,
    null,
  );
}
