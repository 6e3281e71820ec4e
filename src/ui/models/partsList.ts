/** What a piece is made of at its usual size, in the order a reader looks for it. */
import type { Component, ComponentKind } from '#core/design/component.ts';
import { massOf } from '#core/design/mass/mass.ts';
import { tally } from '#core/design/tally.ts';
import type { Counts, Design } from '#core/design/design.ts';
import { usual } from '#core/sizing/usual.ts';
import { designIn, textsOf, type Piece } from '#catalogue/model/catalogue.ts';
import { formatList, formatNumber } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';

export type PartRow = { readonly component: Component; readonly count: number; readonly massG: number };

/** Seen first, named first. */
const ORDER: readonly ComponentKind[] = [
  'pendant',
  'bead',
  'cap',
  'spacer',
  'clasp',
  'ring',
  'cover',
  'crimp',
];

const place = (row: PartRow): number => ORDER.indexOf(row.component.kind);
/** Area seen from the front, mm², all of a kind together. */
const shownMm2 = ({ component, count }: PartRow): number => component.alongMm * component.acrossMm * count;

/** Every component with its count and the mass of one, showiest first. */
export function partsList(design: Design, counts: Counts): PartRow[] {
  const rows = [...tally(design, counts)].flatMap(([id, count]) => {
    const component = design.components[id];
    return component === undefined ? [] : [{ component, count, massG: massOf(component).massG }];
  });
  return rows.sort((a, b) => place(a) - place(b) || shownMm2(b) - shownMm2(a));
}

/** The few that make the piece what it is: its pendant and the beads that show most. */
export function mainParts(design: Design, counts: Counts, most = 3): Component[] {
  return partsList(design, counts)
    .map(({ component }) => component)
    .filter(({ kind }) => kind === 'pendant' || kind === 'bead')
    .slice(0, most);
}

/** What a person who doesn't see a piece's drawing should know of it. */
export function cardAlt(piece: Piece, lang: Lang): string {
  const words = pageWords(lang);
  const parts = mainParts(designIn(piece, lang), usual(piece.design)).map(({ name }) => name);
  return words.piece.pictureAlt(
    textsOf(piece, lang).name,
    words.kinds[piece.design.kind],
    formatList(parts, lang),
  );
}

/** Differences below this are one size to the eye, mm. */
const SAME_MM = 0.05;

export function measureText(component: Component, lang: Lang): string {
  const { acrossMm } = component;
  // What hangs takes next to nothing of the wire: its length is how far it hangs.
  const longMm = component.kind === 'pendant' ? component.hangMm : component.alongMm;
  const long = formatNumber(longMm, lang, 1);
  const across = formatNumber(acrossMm, lang, 1);
  return Math.abs(longMm - acrossMm) < SAME_MM ? `${long}\u00a0mm` : `${long}\u00a0×\u00a0${across}\u00a0mm`;
}
