/** Every piece there is, past ones too, to find one made years ago and string it again. */
import { textsOf, type Catalogue, type Piece } from '#catalogue/model/catalogue.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { fold } from '../book/open.ts';
import type { Frame } from './frame.ts';

export type PieceRow = {
  readonly id: string;
  readonly name: string;
  readonly summary: string;
  readonly kind: Piece['design']['kind'];
  readonly status: Piece['status'];
  readonly made: string;
  /** Finished length as listed. */
  readonly lengthMm: number;
};

/** Pieces that hold every word of `text` in their name, summary, year, beads or part numbers; newest first. */
export function pieceList({ pieces, shop }: Catalogue, text: string, { lang }: Frame): PieceRow[] {
  const words = fold(text).split(/\s+/).filter(Boolean);
  return pieces
    .filter((piece) => {
      const { name, summary } = textsOf(piece, lang);
      const beads = Object.values(piece.design.components).map((component) => component.name);
      const german = lang === 'de' ? Object.values(piece.germanNames) : [];
      const numbers = Object.values(piece.partNumbers);
      const all = fold(
        [piece.id, name, summary, piece.made, piece.design.kind, ...beads, ...german, ...numbers].join(' '),
      );
      return words.every((word) => all.includes(word));
    })
    .map((piece) => {
      const { id, design, listedMinor, status, made } = piece;
      const { name, summary } = textsOf(piece, lang);
      const lengthMm = describe(design, shop.rules, listedMinor, usual(design)).finishedLengthMm;
      return { id, name, summary, kind: design.kind, status, made, lengthMm };
    });
}
