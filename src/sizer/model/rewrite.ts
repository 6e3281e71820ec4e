/** What happens to a written measure when the buyer changes the unit. */
import { sizeChecked } from '#core/sizing/sizeChecked.ts';
import { parseLength } from '#core/units/length.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { formatLengthNumber } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { PieceForSizer } from './input.ts';
import { choiceOf } from './outcome.ts';
import type { SizerState } from './sizerState.ts';

/**
 * The measure's text in a new unit. A measure that this piece can be made in is
 * converted. One that it can't is left as it stands: "16.5" among inches was
 * most likely centimetres all along.
 */
export function rewrite(piece: PieceForSizer, state: SizerState, unit: ShownUnit, lang: Lang): string {
  const choice = choiceOf(state);
  if ('code' in choice) return state.text;
  const { status } = sizeChecked(piece.design, piece.rules, piece.listedMinor, choice, piece.listed);
  const makeable = status === 'fits' || status === 'near';
  const asItStands = parseLength(state.text, unit);
  if (!makeable && asItStands.ok && asItStands.mm !== choice.measure.mm) return state.text;
  return formatLengthNumber(choice.measure.mm, unit, lang);
}
