/** Pictures of how ordering to size works, drawn from a bracelet of the shop. */
import type { Piece } from '#catalogue/model/catalogue.ts';
import { tally } from '#core/design/tally.ts';
import { adviseHand } from '#core/sizing/hand/hand.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { drawBoard } from '#draw/drawings/board.ts';
import { drawLoop } from '#draw/drawings/loop.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import { cardAlt } from './partsList.ts';

const partCount = ({ design }: Piece): number =>
  [...tally(design, usual(design)).values()].reduce((sum, count) => sum + count, 0);

/** A piece whose clasp side matters shows the third step best; the fewest beads are drawn soonest. */
function example(pieces: readonly Piece[]): Piece | undefined {
  const bracelets = pieces.filter(({ design, status }) => design.kind === 'bracelet' && status !== 'past');
  const sided = bracelets.filter(({ design }) => adviseHand(design, 'left').boardSide !== null);
  return (sided.length > 0 ? sided : bracelets).toSorted((a, b) => partCount(a) - partCount(b))[0];
}

export type StepPictures = { readonly size: string; readonly hand: string };

/** Loop of the piece, and the piece on the board for a left hand; null where there is no bracelet. */
export function stepPictures(pieces: readonly Piece[], rules: Rules, lang: Lang): StepPictures | null {
  const piece = example(pieces);
  if (piece === undefined) return null;
  const { design } = piece;
  const shown: Candidate = describe(design, rules, piece.listedMinor, usual(design));
  const { steps } = pageWords(lang).front;
  const description = cardAlt(piece, lang);
  const size = drawLoop(design, shown.sequences, {
    title: steps.size.title,
    description,
    idPrefix: 'step-size',
  });
  const hand = drawBoard(design, shown.sequences, {
    title: steps.hand.title,
    description,
    idPrefix: 'step-hand',
    unit: lang === 'de' ? 'cm' : 'in',
    claspSide: adviseHand(design, 'left').boardSide,
  });
  return { size, hand };
}
