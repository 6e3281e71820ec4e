/** Every piece there is, past ones too, to find one made years ago and string it again. */
import { textsOf, type Catalogue, type Piece } from '#catalogue/model/catalogue.ts';
import { componentsOf } from '#core/design/alternatives.ts';
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
      const german = lang === 'de' ? ownOf(piece, piece.germanNames) : [];
      const numbers = ownOf(piece, piece.partNumbers);
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

/** Labels of what the piece is listed with; what may be chosen instead is not in it. */
function ownOf({ design, alternatives }: Piece, labels: Readonly<Record<string, string>>): string[] {
  const others = componentsOf(alternatives).filter(({ id }) => !(id in design.components));
  const ids = new Set(others.map(({ id }) => id));
  return Object.entries(labels).flatMap(([id, label]) => (ids.has(id) ? [] : [label]));
}
