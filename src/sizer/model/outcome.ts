/** What an answer to the buyer is, and what is read off it. The answers themselves come from `answer.ts`. */
import type { Choice } from '#core/design/choice.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import { parseLength, type LengthProblem } from '#core/units/length.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { SizerState } from './sizerState.ts';

export type Outcome =
  /** The computation is still being fetched. */
  | { readonly kind: 'waiting' }
  /** Nothing written yet: the piece as it is in the shop. */
  | { readonly kind: 'listed'; readonly candidate: Candidate }
  | { readonly kind: 'unread'; readonly problem: LengthProblem }
  /** `otherUnit`: a bare number that fits only in the other unit, as it would be read there. */
  | { readonly kind: 'sized'; readonly sizing: Sizing; readonly otherUnit: ShownUnit | null };

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

/** The piece that an outcome shows, if any. */
export function shownOf(outcome: Outcome): Candidate | null {
  if (outcome.kind === 'listed') return outcome.candidate;
  if (outcome.kind !== 'sized' || outcome.sizing.status === 'refused') return null;
  return outcome.sizing.status === 'outside' ? outcome.sizing.nearest : outcome.sizing.chosen;
}

/** True where the outcome is a piece that the buyer asked for and may order. */
export function canOrder(outcome: Outcome): boolean {
  return outcome.kind === 'sized' && (outcome.sizing.status === 'fits' || outcome.sizing.status === 'near');
}
