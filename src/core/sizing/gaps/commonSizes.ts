/** Sizes that a shop is asked for day by day. */
import type { Measure, Sit } from '../../design/choice.ts';
import type { PieceKind } from '../../design/design.ts';
import { INCH_MM } from '../../units/unit.ts';

/** The sit that a buyer finds chosen. */
export const USUAL_SIT: Sit = 'easy';

const SIXTEEN_TO_TWENTY_FOUR = Array.from({ length: 9 }, (_, inch) => (16 + inch) * INCH_MM);
const HALF_PAST_FIVE_TO_EIGHT = Array.from({ length: 11 }, (_, quarter) => (5.5 + quarter / 4) * INCH_MM);

type CommonSizes = { readonly of: Measure['of']; readonly mm: readonly number[] };

/**
 * Wrists from 5½ to 8 in by the quarter, necklaces from 16 to 24 in by the
 * inch (common practice, no source); null for kinds without such a list.
 */
export const COMMON_SIZES: Readonly<Record<PieceKind, CommonSizes | null>> = {
  bracelet: { of: 'wrist', mm: HALF_PAST_FIVE_TO_EIGHT },
  necklace: { of: 'length', mm: SIXTEEN_TO_TWENTY_FOUR },
  anklet: null,
  collar: null,
};
