/** Which size a measure or a bare number in a query means. */
import { INCH_MM, type ShownUnit } from '#core/units/unit.ts';
import { SPAN_MM, type FITS_OF } from '../marks.ts';
import type { Amount } from './amounts.ts';

type Of = (typeof FITS_OF)[number];

/** Bounds that tell by its figure alone what a measure is of, mm: few wrists are wider, few necklaces shorter. */
const WIDEST_WRIST_MM = 215;
const WIDEST_ANKLE_MM = 290;
/** Below this a measure is a bead's. */
const LARGEST_BEAD_MM = 40;

const UNIT_MM: Readonly<Record<ShownUnit, number>> = { in: INCH_MM, cm: 10 };

export type Measured = {
  readonly of: Of | 'bead';
  readonly leastMm: number;
  readonly mostMm: number;
  readonly unit: ShownUnit | 'mm';
};

function byFigure(mm: number): Of | 'bead' {
  if (mm <= LARGEST_BEAD_MM) return 'bead';
  if (mm <= WIDEST_WRIST_MM) return 'wrist';
  return mm <= WIDEST_ANKLE_MM ? 'ankle' : 'length';
}

const within = (of: Of, mm: number): boolean => mm >= SPAN_MM[of][0] && mm <= SPAN_MM[of][1];

/**
 * @param of what the query says it is a measure of; null where it doesn't
 * @param unit of a bare number, where it makes sense in it
 * @returns null where the number can't be a size
 */
export function measured(amount: Amount, of: Of | null, unit: ShownUnit): Measured | null {
  const { least, most } = amount;
  if (amount.of === 'length') {
    const small = most <= LARGEST_BEAD_MM;
    return {
      of: small ? 'bead' : (of ?? byFigure(most)),
      leastMm: least,
      mostMm: most,
      unit: amount.unit ?? 'mm',
    };
  }
  const units: readonly ShownUnit[] = unit === 'in' ? ['in', 'cm'] : ['cm', 'in'];
  for (const one of units) {
    const mm = most * UNIT_MM[one];
    const meant = of ?? byFigure(mm);
    if (meant !== 'bead' && within(meant, mm))
      return { of: meant, leastMm: least * UNIT_MM[one], mostMm: mm, unit: one };
  }
  return null;
}
