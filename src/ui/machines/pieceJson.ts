/** A piece as other programs may read it. Its fields are a promise: what is added later takes nothing away. */
import type { Piece, Shop } from '#catalogue/model/catalogue.ts';
import { range } from '#core/sizing/range.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { LANGS } from '#words/lang.ts';
import { address } from '../site/addresses.ts';
import { fitsOf } from '../search/fitsOf.ts';
import { partsList } from '../models/partsList.ts';

/** Hundredths: finer than any strand is measured. */
const round = (value: number): number => Math.round(value * 100) / 100;

export function pieceJson(piece: Piece, shop: Shop, site: URL): object {
  const { design, partNumbers } = piece;
  const counts = usual(design);
  const shown = describe(design, shop.rules, piece.listedMinor, counts);
  const sizes = range(design, shop.rules);
  const inEach = (text: (lang: 'en' | 'de') => string | undefined): object =>
    Object.fromEntries(LANGS.flatMap((lang) => (text(lang) === undefined ? [] : [[lang, text(lang)]])));
  const texts = { en: piece, de: piece.de };
  return {
    id: piece.id,
    revision: piece.revision,
    address: inEach((lang) => new URL(address(lang, 'pieces', piece.id), site).href),
    name: inEach((lang) => texts[lang]?.name),
    summary: inEach((lang) => texts[lang]?.summary),
    kind: design.kind,
    status: piece.status,
    made: piece.made,
    price: { amountMinor: piece.listedMinor, currency: shop.rules.currency },
    finishedLengthMm: round(shown.finishedLengthMm),
    insideGirthMm: round(shown.insideGirthMm),
    massG: round(shown.massG),
    fits: fitsOf(design.kind, sizes).map(({ of, stretches }) => ({
      of,
      mm: stretches.map(({ leastMm, mostMm }) => ({ least: round(leastMm), most: round(mostMm) })),
    })),
    parts: partsList(design, counts).map(({ component, count }) => ({
      id: component.id,
      name: component.name,
      ...(partNumbers[component.id] !== undefined && { partNumber: partNumbers[component.id] }),
      kind: component.kind,
      material: component.material,
      shape: component.shape,
      count,
      alongMm: component.alongMm,
      acrossMm: component.acrossMm,
    })),
  };
}
