/** What the buyer has set so far, and how each of her actions changes it. Pure: no browser, no computation of sizes. */
import {
  AS_DESIGNED,
  type ChosenParts,
  type Hand,
  MEASURES_OF_KIND,
  type Measure,
  type Pick,
  type Sit,
} from '#core/design/choice.ts';
import type { PieceKind } from '#core/design/design.ts';
import { parseLength } from '#core/units/length.ts';
import type { ShownUnit } from '#core/units/unit.ts';

export type SizerState = {
  readonly of: Measure['of'];
  /** The measure as written; empty before anything is. */
  readonly text: string;
  readonly unit: ShownUnit;
  readonly sit: Sit;
  readonly hand: Hand;
  /** Which of the nearest pieces, where none meets the tolerance. */
  readonly pick: Pick;
  /** Clasp and pendant instead of the listed ones. */
  readonly parts: ChosenParts;
};

export type SizerAction =
  | { readonly type: 'by'; readonly of: Measure['of'] }
  | { readonly type: 'write'; readonly text: string }
  /** A finished length from elsewhere: the body chart. */
  | { readonly type: 'length'; readonly text: string }
  /** `text` is the measure in the new unit. */
  | { readonly type: 'unit'; readonly unit: ShownUnit; readonly text: string }
  | { readonly type: 'sit'; readonly sit: Sit }
  | { readonly type: 'hand'; readonly hand: Hand }
  | { readonly type: 'pick'; readonly pick: Pick }
  | { readonly type: 'part'; readonly part: keyof ChosenParts; readonly id: string }
  | { readonly type: 'restore'; readonly state: Partial<SizerState> };

/** Before the buyer has done anything; also what the page is built with. */
export function startOf(kind: PieceKind, unit: ShownUnit): SizerState {
  return {
    of: MEASURES_OF_KIND[kind][0],
    text: '',
    unit,
    sit: 'easy',
    hand: 'right',
    pick: 'best',
    parts: AS_DESIGNED,
  };
}

/** The state after an action. A new size or part forgets the pick, which belonged to the old one. */
export function reduce(state: SizerState, action: SizerAction): SizerState {
  switch (action.type) {
    case 'by':
      // A girth is no length: what was written means nothing for the other measure.
      return { ...state, of: action.of, text: '', pick: 'best' };
    case 'write':
      return { ...state, text: action.text, unit: unitOf(action.text, state.unit), pick: 'best' };
    case 'length':
      return { ...state, of: 'length', text: action.text, pick: 'best' };
    case 'unit':
      return { ...state, unit: action.unit, text: action.text };
    case 'sit':
      return { ...state, sit: action.sit, pick: 'best' };
    case 'hand':
      return { ...state, hand: action.hand };
    case 'pick':
      return { ...state, pick: action.pick };
    case 'part':
      return { ...state, parts: { ...state.parts, [action.part]: action.id }, pick: 'best' };
    case 'restore':
      return { ...state, ...action.state };
  }
}

/** "16.5 cm" in a field of inches means that she measures in centimetres. */
function unitOf(text: string, unit: ShownUnit): ShownUnit {
  const read = parseLength(text, unit);
  if (!read.ok) return unit;
  return read.unit === 'in' ? 'in' : 'cm';
}
