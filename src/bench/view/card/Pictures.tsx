/** The card's pictures: the piece on the board, and the clasp's end close up. */
import { drawBoard } from '#draw/view/board.ts';
import { drawEnds } from '#draw/view/ends.ts';
import type { BenchCardWords } from '#words/benchCard.ts';
import type { BenchCard } from '../../page/benchCard.ts';

type Props = { readonly bench: BenchCard; readonly unit: 'in' | 'cm'; readonly words: BenchCardWords };

export function Pictures({ bench: { copy, candidate, card }, unit, words }: Props) {
  const [sequence = []] = candidate.sequences;
  const board = drawBoard(copy.design, candidate.sequences, {
    title: words.picture,
    description: words.pictureText(card.hand.boardSide),
    idPrefix: 'board',
    unit,
    claspSide: card.hand.boardSide,
  });
  const ends = drawEnds(copy.design, sequence, {
    title: words.ends,
    description: words.endsText,
    idPrefix: 'ends',
    tailMm: card.strands[0]?.tails.clasp.reachMm ?? 0,
    labels: words.endLabels,
  });
  return (
    <div class="pictures">
      <figure dangerouslySetInnerHTML={{ __html: board }} />
      <figure dangerouslySetInnerHTML={{ __html: ends }} />
    </div>
  );
}
