/** The length at which something that grows with it is reached. */

/** Steps of the search; regula falsi (Illinois) needs about ten. */
const MOST_STEPS = 100;
/** A length is found when it is known to this, far below any bead. */
const STILL_MM = 1e-9;

/**
 * Where a rising function is 0, or jumps over it, between two lengths that it
 * changes sign on: regula falsi with the Illinois halving, so that neither end
 * is stuck.
 */
export function root(rising: (lengthMm: number) => number, leastMm: number, mostMm: number): number {
  let low = leastMm;
  let high = mostMm;
  let below = rising(low);
  let above = rising(high);
  let side = 0;
  for (let n = 0; n < MOST_STEPS && high - low > STILL_MM; n += 1) {
    const between = low + (high - low) * (below / (below - above));
    const value = rising(between);
    if (value === 0) return between;
    if (value < 0) {
      low = between;
      below = value;
      if (side < 0) above /= 2;
      side = -1;
    } else {
      high = between;
      above = value;
      if (side > 0) below /= 2;
      side = 1;
    }
  }
  return (low + high) / 2;
}
