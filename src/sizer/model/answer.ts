/** From what the buyer wrote to what she would get. */
import type { Choice } from '#core/design/choice.ts';
import { sizeChecked } from '#core/sizing/sizeChecked.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { parseLength } from '#core/units/length.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { PieceForSizer } from './input.ts';
import { choiceOf, type Outcome } from './outcome.ts';
import type { SizerState } from './sizerState.ts';

/** The whole answer to a state. */
export function outcomeOf(piece: PieceForSizer, state: SizerState): Outcome {
  if (state.text.trim() === '') return { kind: 'listed', candidate: listedOf(piece) };
  const choice = choiceOf(state);
  if ('code' in choice) return { kind: 'unread', problem: choice };
  const sizing = sizeChecked(piece.design, piece.rules, piece.listedMinor, choice, piece.listed);
  return { kind: 'sized', sizing, otherUnit: otherUnitOf(piece, state, choice, sizing) };
}

/** The piece at its usual counts. */
export function listedOf(piece: PieceForSizer): Candidate {
  const { design, rules, listedMinor, listed } = piece;
  return describe(design, rules, listedMinor, usual(design), listed);
}

function otherUnitOf(
  piece: PieceForSizer,
  state: SizerState,
  choice: Choice,
  sizing: Sizing,
): ShownUnit | null {
  if (sizing.status === 'fits' || sizing.status === 'near') return null;
  const other: ShownUnit = state.unit === 'in' ? 'cm' : 'in';
  const read = parseLength(state.text, other);
  // Read alike in both: the unit was written out, and she means it.
  if (!read.ok || read.mm === choice.measure.mm) return null;
  const again = sizeChecked(piece.design, piece.rules, piece.listedMinor, {
    ...choice,
    measure: { ...choice.measure, mm: read.mm },
  });
  return again.status === 'fits' || again.status === 'near' ? other : null;
}
