/** Every piece there is, past ones too, to find one made years ago and string it again: found as in the shop. */
import { textsOf, type Catalogue, type Piece } from '#catalogue/model/catalogue.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { matcher } from '#ui/search/match.ts';
import { openVocabulary } from '#ui/search/reading/open.ts';
import { readQuery } from '#ui/search/reading/read.ts';
import { without } from '#ui/search/reading/reading.ts';
import { buildVocabulary } from '#ui/search/vocabulary/build.ts';
import type { Lang } from '#words/lang.ts';
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

export type PieceList = {
  readonly rows: readonly PieceRow[];
  /** Where nothing was found: what comes nearest. */
  readonly near: readonly PieceRow[];
  /** What the words were understood as, each with the words that are left without it. */
  readonly marks: readonly { readonly label: string; readonly without: string }[];
  /** What was put right, left out or not known. */
  readonly said: readonly string[];
};

type Search = {
  readonly opened: ReturnType<typeof openVocabulary>;
  readonly find: ReturnType<typeof matcher>;
};

/** One search a catalogue and language: making it goes through every piece. */
const searches = new WeakMap<Catalogue['pieces'], Partial<Record<Lang, Search>>>();

function searchOf(catalogue: Catalogue, lang: Lang): Search {
  const made = searches.get(catalogue.pieces) ?? {};
  const search = (made[lang] ??= {
    opened: openVocabulary(buildVocabulary(catalogue, lang, 'bench')),
    find: matcher(catalogue, lang, 'bench'),
  });
  searches.set(catalogue.pieces, made);
  return search;
}

/** Pieces that the words ask for, as the shop's search understands them; all of them for none. Newest first. */
export function pieceList(catalogue: Catalogue, text: string, { lang }: Frame): PieceList {
  const { pieces, shop } = catalogue;
  const rows = (some: readonly Piece[]): PieceRow[] =>
    some.map((piece) => {
      const { id, design, listedMinor, status, made } = piece;
      const { name, summary } = textsOf(piece, lang);
      const lengthMm = describe(design, shop.rules, listedMinor, usual(design)).finishedLengthMm;
      return { id, name, summary, kind: design.kind, status, made, lengthMm };
    });
  if (text.trim() === '') return { rows: rows(pieces), near: [], marks: [], said: [] };
  const { opened, find } = searchOf(catalogue, lang);
  const reading = readQuery(text, opened, { unit: shop.unit });
  const found = find(reading);
  return {
    rows: rows(found.pieces),
    near: rows(found.near),
    marks: reading.parts.flatMap(({ label, at }) =>
      label === null ? [] : [{ label, without: without(text, at) }],
    ),
    said: reading.said.map((one) => one.text),
  };
}
