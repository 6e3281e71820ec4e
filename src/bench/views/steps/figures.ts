/** The drawings of a walk: every strand of every card, each part of it by itself so that what is at hand can be lit. */
import { drawNumbered } from '#draw/drawings/numbered.ts';
import { ALL_LIT, isAllLit, type Lit } from '#draw/drawings/lit.ts';
import { atBoardWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import type { WalkSheet } from '../../models/steps/sheet.ts';
import type { Tick } from '../../models/steps/walk.ts';

export type Figure = { readonly name: string; readonly svg: string };

const nameOf = (card: number, strand: number): string => `f${card}-${strand}`;

/** Which drawings a tick is seen in: its strand's; of what is for the whole piece, all strands'. */
export function figuresOf({ cards, pieces }: WalkSheet, { piece, step, lit }: Tick): string[] {
  const card = pieces[piece]?.card ?? 0;
  const strands = cards[card]?.strands.length ?? 1;
  if (step.strand !== null || !isAllLit(lit)) return [nameOf(card, step.strand ?? 0)];
  return Array.from({ length: strands }, (_, strand) => nameOf(card, strand));
}

/** On a tablet a bracelet lies in one row, mm. */
const MOST_ROW_MM = 230;

/** @param at the tick that is at hand; null for none */
export function drawFigures(sheet: WalkSheet, at: Tick | null, { lang }: Frame): Figure[] {
  const words = atBoardWords(lang);
  const lit = at === null ? [] : figuresOf(sheet, at);
  return sheet.cards.flatMap(({ copy, candidate, strands }, card) =>
    candidate.sequences.map((sequence, strand): Figure => {
      const name = nameOf(card, strand);
      // What hangs hangs from the first strand.
      const design = strand === 0 ? copy.design : { ...copy.design, hanging: null };
      const own: Lit = at !== null && lit.includes(name) ? at.lit : ALL_LIT;
      const svg = drawNumbered(design, sequence, {
        title: words.picture(strands.length === 1 ? '' : words.strand(strand + 1, strands.length)),
        description: words.pictureText,
        idPrefix: name,
        spans: (strands[strand] ?? []).flatMap(({ numbers }) => numbers ?? []),
        lit: own,
        mostRowMm: MOST_ROW_MM,
      });
      return { name, svg };
    }),
  );
}
