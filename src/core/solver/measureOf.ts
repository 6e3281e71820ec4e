/** What one strand of a design is measured by. */
import type { Fitted } from '../design/choice.ts';
import type { Design } from '../design/design.ts';
import { girthMeasure } from './girth.ts';
import { lengthMeasure, type Measure } from './measure.ts';
import type { Limits } from './stretches.ts';

/**
 * The extender as far as a fit may let it out by any length, mm: not where its links
 * are known, which are counted as a section is. On several strands it is left to the
 * wearer: let out, it would lengthen all of them alike.
 */
export function looseChainMm({ strands, ends }: Design): number {
  return strands.length === 1 && ends.linkMm === undefined ? ends.extenderMm : 0;
}

/**
 * A strand's measure. It remembers what it has measured, and doesn't depend on the stock.
 * @param limits what counts may be asked about; the maker's where it isn't given.
 */
export function measureOf(design: Design, strand: number, fitted: Fitted, limits?: Limits): Measure {
  const chainMm = looseChainMm(design);
  return fitted === 'length'
    ? lengthMeasure(design, strand, chainMm)
    : girthMeasure(design, strand, chainMm, limits);
}
