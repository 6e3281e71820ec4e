/** From what the buyer wrote to what she would get. */
import type { Choice } from '#core/sizing/choice.ts';
import { sizeChecked } from '#core/sizing/sizeChecked.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { parseLength, type LengthProblem } from '#core/units/length.ts';
import type { PieceForSizer } from '../props.ts';
import type { BuyerUnit, SizerState } from './sizerState.ts';

export type Outcome =
  /** Nothing written yet: the piece as it is in the shop. */
  | { readonly kind: 'listed'; readonly candidate: Candidate }
  | { readonly kind: 'unread'; readonly problem: LengthProblem }
  /** `otherUnit`: a bare number that fits only in the other unit, as it would be read there. */
  | { readonly kind: 'sized'; readonly sizing: Sizing; readonly otherUnit: BuyerUnit | null };

/** A sizing that came to a piece. */
export type Sized = Extract<Sizing, { status: 'fits' | 'near' | 'outside' }>;

/** The sizing of an outcome, null where there is none. */
export function sizedOf(outcome: Outcome): Sized | null {
  return outcome.kind === 'sized' && outcome.sizing.status !== 'refused' ? outcome.sizing : null;
}

/** The choice that a state stands for, where its measure can be read. */
export function choiceOf(state: SizerState): Choice | LengthProblem {
  const read = parseLength(state.text, state.unit);
  if (!read.ok) return read.problem;
  const { sit, hand, pick } = state;
  return { measure: { of: state.of, mm: read.mm }, sit, hand, pick, quantity: 1 };
}

/** The whole answer to a state. */
export function outcomeOf(piece: PieceForSizer, state: SizerState): Outcome {
  if (state.text.trim() === '') return { kind: 'listed', candidate: listedOf(piece) };
  const choice = choiceOf(state);
  if ('code' in choice) return { kind: 'unread', problem: choice };
  const sizing = sizeChecked(piece.design, piece.rules, piece.listedMinor, choice);
  return { kind: 'sized', sizing, otherUnit: otherUnitOf(piece, state, choice, sizing) };
}

/** The piece at its usual counts. */
export function listedOf(piece: PieceForSizer): Candidate {
  const { design, rules, listedMinor } = piece;
  return describe(design, rules, listedMinor, usual(design));
}

/** The piece that an outcome shows, if any. */
export function shownOf(outcome: Outcome): Candidate | null {
  if (outcome.kind === 'listed') return outcome.candidate;
  if (outcome.kind === 'unread' || outcome.sizing.status === 'refused') return null;
  return outcome.sizing.status === 'outside' ? outcome.sizing.nearest : outcome.sizing.chosen;
}

/** True where the outcome is a piece that the buyer asked for and may order. */
export function canOrder(outcome: Outcome): boolean {
  return outcome.kind === 'sized' && (outcome.sizing.status === 'fits' || outcome.sizing.status === 'near');
}

function otherUnitOf(
  piece: PieceForSizer,
  state: SizerState,
  choice: Choice,
  sizing: Sizing,
): BuyerUnit | null {
  if (sizing.status === 'fits' || sizing.status === 'near') return null;
  const other: BuyerUnit = state.unit === 'in' ? 'cm' : 'in';
  const read = parseLength(state.text, other);
  // Read alike in both: the unit was written out, and she means it.
  if (!read.ok || read.mm === choice.measure.mm) return null;
  const again = sizeChecked(piece.design, piece.rules, piece.listedMinor, {
    ...choice,
    measure: { ...choice.measure, mm: read.mm },
  });
  return again.status === 'fits' || again.status === 'near' ? other : null;
}
