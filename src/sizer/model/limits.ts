/** The measures a piece can be made in, as the buyer measures them. */
import type { Measure, Sit } from '#core/design/choice.ts';
import { sizeChecked } from '#core/sizing/sizeChecked.ts';
import type { Limits } from '#core/sizing/sizing.ts';
import type { PieceForSizer } from './input.ts';

/** A measure of each kind that nobody would call absurd: about the middle of grown people's, or of trade lengths. */
const PLAIN_MM: Readonly<Record<Measure['of'], number>> = { wrist: 165, ankle: 230, neck: 350, length: 450 };

/** Limits for one measure and sit; null where the piece can't be sized at all. */
export function limitsOf(piece: PieceForSizer, of: Measure['of'], sit: Sit): Limits | null {
  const { design, rules, listedMinor } = piece;
  const measure = { of, mm: PLAIN_MM[of] };
  const sizing = sizeChecked(design, rules, listedMinor, {
    measure,
    sit,
    hand: 'right',
    pick: 'best',
    quantity: 1,
  });
  return sizing.status === 'refused' ? null : sizing.limits;
}
