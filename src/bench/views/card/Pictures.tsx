/** The card's pictures: the piece as it will lie, and the clasp's end close up. */
import type { ShownUnit } from '#core/units/unit.ts';
import { drawBoard } from '#draw/drawings/board.ts';
import { drawEnds } from '#draw/drawings/ends.ts';
import { drawNumbered } from '#draw/drawings/numbered.ts';
import { drawStraight } from '#draw/drawings/straight.ts';
import type { BenchCardWords } from '#words/words.ts';
import type { PieceCard } from '../../models/benchCard.ts';

type Props = { readonly bench: PieceCard; readonly unit: ShownUnit; readonly words: BenchCardWords };

/** Up to here a board lies straight on the sheet; a longer one bends and becomes too small to read. */
const STRAIGHT_BOARD_MM = 260;

export function Pictures({ bench, unit, words }: Props) {
  const { copy, candidate, card } = bench;
  const [sequence = []] = candidate.sequences;
  const ends = drawEnds(copy.design, sequence, {
    title: words.ends,
    description: words.endsText,
    idPrefix: 'ends',
    tailMm: card.strands[0]?.tails.clasp.reachMm ?? 0,
    labels: words.endLabels,
  });
  return (
    <div class="pictures">
      <figure dangerouslySetInnerHTML={{ __html: drawPiece({ bench, unit, words }) }} />
      <figure dangerouslySetInnerHTML={{ __html: ends }} />
    </div>
  );
}

function drawPiece({ bench: { copy, candidate, card }, unit, words }: Props): string {
  const { design } = copy;
  const { sequences } = candidate;
  const [sequence = []] = sequences;
  const side = card.hand.boardSide;
  if (card.finishedLengthMm <= STRAIGHT_BOARD_MM) {
    const caption = { title: words.picture, description: words.pictureText(side), idPrefix: 'piece' };
    return drawBoard(design, sequences, { ...caption, unit, claspSide: side });
  }
  const caption = { title: words.pictureRows, description: words.pictureRowsText, idPrefix: 'piece' };
  if (sequences.length === 1) return drawNumbered(design, sequence, caption);
  return drawStraight(design, sequences, { ...caption, unit, claspSide: side ?? 'left' });
}
