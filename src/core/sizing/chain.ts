/** How far an extender chain whose links aren’t known is let out to meet a target. */
import { toNm, type Span } from '../solver/outcome.ts';
import { strandLoop } from '../solver/measure.ts';
import { solveLoop } from '../geometry/loop.ts';
import type { Design } from '../design/design.ts';
import { looseChainMm } from '../solver/measureOf.ts';
import type { Fitted } from '../design/choice.ts';

/** Halvings of the chain: 2⁻³⁰ of any chain is far below a hundredth of a millimetre. */
const MOST_HALVINGS = 30;
/** Less chain than this can't be let out. A link of no length would already part its neighbours by a tenth of a millimetre. */
const LEAST_CHAIN_MM = 0.5;

/**
 * Length of chain used, mm, so that a strand comes as near the target as it can; 0 where a fit may not count on it.
 * @param span what the strand measures with the chain not used and fully used.
 */
export function chainUsedMm(
  design: Design,
  strand: number,
  counts: readonly number[],
  span: Span,
  fitted: Fitted,
  targetMm: number,
): number {
  const chainMm = looseChainMm(design);
  const targetNm = toNm(targetMm);
  if (targetNm <= span.lowNm) return 0;
  if (targetNm >= span.highNm) return chainMm;
  if (fitted === 'length') return letOut((targetNm - span.lowNm) / 1e6);
  let low = 0;
  let high = chainMm;
  for (let round = 0; round < MOST_HALVINGS; round += 1) {
    const middle = (low + high) / 2;
    const girth = solveLoop(strandLoop(design, strand, counts, middle)).insideGirthMm;
    if (girth < targetMm) low = middle;
    else high = middle;
  }
  return letOut((low + high) / 2);
}

const letOut = (usedMm: number): number => (usedMm < LEAST_CHAIN_MM ? 0 : usedMm);
