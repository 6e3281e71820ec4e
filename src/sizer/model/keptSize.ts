/**
 * What this device keeps of sizes: unit, hand and sit, and each measure as last
 * written, in one entry. Never sent anywhere. Read by every page, so without
 * the reading of lengths; `remember.ts` says what the form makes of it.
 */
import { isShownUnit, type ShownUnit } from '#core/units/unit.ts';
import type { Store } from './ports.ts';

export type KeptMeasure = { readonly of: string; readonly text: string };

export const SIZE_KEY = 'claspwise.size';
/** A number and nothing that names its unit. */
const BARE = /^[\d\s.,/½¼¾⅛⅜⅝⅞]+$/;

/** The whole entry; empty where nothing sound is kept. */
export function kept(store: Store): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(store.read(SIZE_KEY) ?? '{}');
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

/** Keeps these fields and leaves the rest of the entry as it is. */
export function keep(store: Store, fields: Readonly<Record<string, unknown>>): void {
  store.write(SIZE_KEY, JSON.stringify({ ...kept(store), ...fields }));
}

/** The unit kept on this device, null where none is. */
export function keptUnit(store: Store): ShownUnit | null {
  const unit = kept(store)['unit'];
  return isShownUnit(unit) ? unit : null;
}

/** Keeps the unit and leaves the rest of the entry as it is. */
export function keepUnit(store: Store, unit: ShownUnit): void {
  keep(store, { unit });
}

/** The last measure of that part of the body, or of the part measured last, with its unit written out. */
export function keptMeasure(store: Store, of?: string): KeptMeasure | null {
  const entry = kept(store);
  const which = of ?? entry['of'];
  const measure = typeof which === 'string' ? entry[which] : null;
  if (typeof which !== 'string' || typeof measure !== 'object' || measure === null) return null;
  const { text, unit } = measure as Readonly<Record<string, unknown>>;
  if (typeof text !== 'string' || text === '' || !isShownUnit(unit)) return null;
  return { of: which, text: BARE.test(text) ? `${text} ${unit}` : text };
}

/** Keeps a measure as it was written. */
export function keepMeasure(store: Store, { of, text }: KeptMeasure, unit: ShownUnit): void {
  keep(store, { of, unit, [of]: { text, unit } });
}
