/** What the form recalls of an earlier visit, and remembers for a later one. */
import { HANDS, SITS, type Measure } from '#core/design/choice.ts';
import { parseLength } from '#core/units/length.ts';
import { isShownUnit } from '#core/units/unit.ts';
import { keep, kept } from './keptSize.ts';
import type { Store } from './ports.ts';
import type { SizerState } from './sizerState.ts';

/** As long as the longest measure that is read; a longer one is no measure. */
const MOST_TEXT = 40;

/** The remembered part of a state, empty where nothing sound is stored. */
export function recall(store: Store, measures: readonly Measure['of'][]): Partial<SizerState> {
  const entry = kept(store);
  const of = measures.find((measure) => measure === entry['of']) ?? measures[0];
  const unit = isShownUnit(entry['unit']) ? entry['unit'] : null;
  const text = of === undefined ? null : textIn(entry[of], unit);
  const sit = SITS.find((one) => one === entry['sit']);
  const hand = HANDS.find((one) => one === entry['hand']);
  return {
    ...(of !== undefined && { of }),
    ...(text !== null && { text }),
    ...(unit !== null && { unit }),
    ...(sit !== undefined && { sit }),
    ...(hand !== undefined && { hand }),
  };
}

/** Remembers a state. Measures of other parts of the body stay as they were. */
export function remember(store: Store, state: SizerState): void {
  const { of, unit, sit, hand, text } = state;
  keep(store, { of, unit, sit, hand, [of]: { text, unit } });
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
