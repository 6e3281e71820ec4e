/**
 * The reader's unit and last measure, in the one entry that the sizer keeps on
 * this device too (`sizer/model/remember.ts`). Never sent anywhere.
 */
import type { Store } from '#sizer/model/ports.ts';

export type Unit = 'in' | 'cm';
export type KeptMeasure = { readonly of: string; readonly text: string };

const KEY = 'claspwise.size';
/** A number and nothing that names its unit. */
const BARE = /^[\d\s.,/½¼¾⅛⅜⅝⅞]+$/;

export function isUnit(value: unknown): value is Unit {
  return value === 'in' || value === 'cm';
}

/** The unit kept on this device, null where none is. */
export function keptUnit(store: Store): Unit | null {
  const unit = kept(store)['unit'];
  return isUnit(unit) ? unit : null;
}

/** Keeps the unit and leaves the rest of the entry as it is. */
export function keepUnit(store: Store, unit: Unit): void {
  store.write(KEY, JSON.stringify({ ...kept(store), unit }));
}

/** The last measure of that part of the body, or of the part measured last, with its unit written out. */
export function keptMeasure(store: Store, of?: string): KeptMeasure | null {
  const entry = kept(store);
  const which = of ?? entry['of'];
  const measure = typeof which === 'string' ? entry[which] : null;
  if (typeof which !== 'string' || typeof measure !== 'object' || measure === null) return null;
  const { text, unit } = measure as Readonly<Record<string, unknown>>;
  if (typeof text !== 'string' || text === '' || !isUnit(unit)) return null;
  return { of: which, text: BARE.test(text) ? `${text} ${unit}` : text };
}

/** Keeps a measure as it was written. */
export function keepMeasure(store: Store, { of, text }: KeptMeasure, unit: Unit): void {
  store.write(KEY, JSON.stringify({ ...kept(store), of, unit, [of]: { text, unit } }));
}

function kept(store: Store): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(store.read(KEY) ?? '{}');
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}
