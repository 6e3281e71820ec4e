/** How many CSS pixels a millimetre of this screen has, as the buyer measured it with a bank card. */
import { INCH_MM } from '#core/units/unit.ts';
import type { Store } from '../../model/ports.ts';

/** ISO/IEC 7810, ID-1: the width and height of a bank card. */
export const CARD_MM = { width: 85.6, height: 53.98 } as const;

/** A CSS inch is 96 pixels (CSS Values and Units, absolute lengths): the guess before it is measured. */
export const NOMINAL_PX_PER_MM = 96 / INCH_MM;

/** From a television across the room to the finest telephone, with room to spare. */
export const LEAST_PX_PER_MM = 1;
export const MOST_PX_PER_MM = 16;

const KEY = 'claspwise.screen';

/** The remembered measure, null where the screen has not been measured. */
export function recallPixels(store: Store): number | null {
  const kept = Number(store.read(KEY) ?? Number.NaN);
  return kept >= LEAST_PX_PER_MM && kept <= MOST_PX_PER_MM ? kept : null;
}

export function rememberPixels(store: Store, pxPerMm: number): void {
  store.write(KEY, String(pxPerMm));
}

/** Pixels that a drawing asks for at life size, from its view box in millimetres; null where it has none. */
export function lifeWidthPx(viewBox: string | null, pxPerMm: number): number | null {
  const widthMm = Number(viewBox?.trim().split(/[\s,]+/)[2]);
  return widthMm > 0 && Number.isFinite(widthMm) ? widthMm * pxPerMm : null;
}
