/** By what results may be put in order. The index compares numbers as numbers. */
import type { Piece, Shop } from '#catalogue/model/catalogue.ts';
import { describe, usual } from '#core/sizing/usual.ts';

/** Days since 1970 of the first day that it may have been made on. */
function madeDay(made: string): number {
  return Math.floor(Date.parse(made) / 86_400_000);
}

export function findSorts(piece: Piece, shop: Shop): Readonly<Record<'made' | 'price' | 'length', number>> {
  const { design, listedMinor, made } = piece;
  const shown = describe(design, shop.rules, listedMinor, usual(design));
  return { made: madeDay(made), price: listedMinor, length: Math.round(shown.finishedLengthMm) };
}
