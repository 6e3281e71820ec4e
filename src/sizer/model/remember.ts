/** What this device remembers between visits: unit, hand and sit, and each measure as last written. Never sent anywhere. */
import type { Measure } from '#core/design/choice.ts';
import { parseLength } from '#core/units/length.ts';
import { HANDS, MEASURES, SITS } from '#core/design/choice.ts';
import type { Store } from './ports.ts';
import type { SizerState } from './sizerState.ts';

const KEY = 'claspwise.size';
/** As long as the longest measure that is read; a longer one is no measure. */
const MOST_TEXT = 40;

/** The remembered part of a state, empty where nothing sound is stored. */
export function recall(store: Store, measures: readonly Measure['of'][]): Partial<SizerState> {
  const kept = readKept(store);
  const of = measures.find((measure) => measure === kept['of']) ?? measures[0];
  const unit = kept['unit'] === 'in' || kept['unit'] === 'cm' ? kept['unit'] : null;
  const text = of === undefined ? null : textIn(kept[of], unit);
  const sit = SITS.find((one) => one === kept['sit']);
  const hand = HANDS.find((one) => one === kept['hand']);
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
  const kept = Object.fromEntries(MEASURES.map((one) => [one, readKept(store)[one]]));
  store.write(KEY, JSON.stringify({ ...kept, of, unit, sit, hand, [of]: { text, unit } }));
}

/** A measure as it was written. One written in the other unit gets that unit's name, so that it still means the same. */
function textIn(kept: unknown, unit: SizerState['unit'] | null): string | null {
  if (typeof kept !== 'object' || kept === null || !('text' in kept) || !('unit' in kept)) return null;
  const { text, unit: written } = kept;
  if (typeof text !== 'string' || text.length > MOST_TEXT) return null;
  if (written !== 'in' && written !== 'cm') return null;
  const bare = parseLength(text, 'in');
  const other = parseLength(text, 'cm');
  const saysUnit = bare.ok && other.ok && bare.mm === other.mm;
  return written === unit || saysUnit || text === '' ? text : `${text} ${written}`;
}

function readKept(store: Store): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(store.read(KEY) ?? '{}');
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}
