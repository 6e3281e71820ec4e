/** What may be chosen instead of a piece's clasp and pendant, with what it adds to the price and what is to be minded. */
import { AS_DESIGNED, type ChosenParts } from '#core/design/choice.ts';
import { cautionsOf } from '#catalogue/facts/cautions.ts';
import { alternativesIn, designIn, type Piece, type Shop } from '#catalogue/model/catalogue.ts';
import { designWith } from '#core/design/alternatives.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import type { PartOffer } from '#sizer/model/input.ts';
import type { Lang } from '#words/lang.ts';
import { goodsWords } from '#words/words.ts';

/** Clasps first, then pendants, each in the maker's own order. */
export function offersOf(piece: Piece, { rules }: Pick<Shop, 'rules'>, lang: Lang): readonly PartOffer[] {
  const alternatives = alternativesIn(piece, lang);
  const listed = designIn(piece, lang);
  const known = new Set(cautionsOf(listed));
  const words = goodsWords(lang).cautions;
  const offer = (part: keyof ChosenParts, id: string, name: string): PartOffer[] => {
    const design = designWith(listed, alternatives, { ...AS_DESIGNED, [part]: id });
    if (design === null) return [];
    const { priceMinor } = describe(design, rules, piece.listedMinor, usual(design), listed);
    const more = cautionsOf(design).filter((caution) => !known.has(caution));
    const cautions = more.map((caution) => `${words[caution].title}. ${words[caution].text}`);
    return [{ part, id, name, differenceMinor: priceMinor - piece.listedMinor, cautions }];
  };
  return [
    ...alternatives.clasps.flatMap(({ clasp }) => offer('clasp', clasp.id, clasp.name)),
    ...alternatives.pendants.flatMap(({ id, name }) => offer('pendant', id, name)),
  ];
}
