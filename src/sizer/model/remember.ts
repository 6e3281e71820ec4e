/** What the form recalls of an earlier visit, and remembers for a later one. */
import { HANDS, MEASURES_OF_KIND, SITS } from '#core/design/choice.ts';
import { parseLength } from '#core/units/length.ts';
import { isShownUnit } from '#core/units/unit.ts';
import type { PieceForSizer } from './input.ts';
import { keepChoice, keptParts, keptPick } from './keptChoice.ts';
import { keep, kept } from './keptSize.ts';
import type { Store } from './ports.ts';
import type { SizerState } from './sizerState.ts';

/** As long as the longest measure that is read; a longer one is no measure. */
const MOST_TEXT = 40;

/** The state as it was left for a piece; what isn't kept, or isn't sound, stays as it is. */
export function recall(store: Store, piece: PieceForSizer, state: SizerState): SizerState {
  const sized = { ...state, ...recallSize(store, piece), parts: keptParts(store, piece) };
  return { ...sized, pick: keptPick(store, piece, sized) };
}

function recallSize(store: Store, { design }: PieceForSizer): Partial<SizerState> {
  const measures = MEASURES_OF_KIND[design.kind];
  const entry = kept(store);
  const of = measures.find((measure) => measure === entry['of']) ?? measures[0];
  const unit = isShownUnit(entry['unit']) ? entry['unit'] : null;
  const text = textIn(entry[of], unit);
  const sit = SITS.find((one) => one === entry['sit']);
  const hand = HANDS.find((one) => one === entry['hand']);
  return {
    of,
    ...(text !== null && { text }),
    ...(unit !== null && { unit }),
    ...(sit !== undefined && { sit }),
    ...(hand !== undefined && { hand }),
  };
}

/** Remembers a state. Measures of other parts of the body, and what was chosen for other pieces, stay as they were. */
export function remember(store: Store, piece: PieceForSizer, state: SizerState): void {
  const { of, unit, sit, hand, text } = state;
  keep(store, { of, unit, sit, hand, [of]: { text, unit } });
  keepChoice(store, piece, state);
}

/** A measure as it was written. One written in the other unit gets that unit's name, so that it still means the same. */
function textIn(kept: unknown, unit: SizerState['unit'] | null): string | null {
  if (typeof kept !== 'object' || kept === null || !('text' in kept) || !('unit' in kept)) return null;
  const { text, unit: written } = kept;
  if (typeof text !== 'string' || text.length > MOST_TEXT) return null;
  if (!isShownUnit(written)) return null;
  const bare = parseLength(text, 'in');
  const other = parseLength(text, 'cm');
  const saysUnit = bare.ok && other.ok && bare.mm === other.mm;
  return written === unit || saysUnit || text === '' ? text : `${text} ${written}`;
}
