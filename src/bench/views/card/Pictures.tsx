/** A strand's pictures: as it will lie, numbered as its list is, and the clasp's end close up. */
import type { ShownUnit } from '#core/units/unit.ts';
import { drawBoard } from '#draw/drawings/board.ts';
import { drawEnds } from '#draw/drawings/ends.ts';
import { drawNumbered } from '#draw/drawings/numbered.ts';
import type { BenchCardWords } from '#words/words.ts';
import type { PieceCard } from '../../models/benchCard.ts';
import type { Group } from '../../models/groups.ts';

type Props = {
  readonly bench: PieceCard;
  readonly strand: number;
  readonly groups: readonly Group[];
  readonly unit: ShownUnit;
  readonly words: BenchCardWords;
};

/** Up to here a strand lies straight on the sheet, as on the board; a longer one is cut into rows. */
const STRAIGHT_BOARD_MM = 260;

/** The strand as it will lie; on a narrow screen it is larger than that, and moved under a finger. */
export function StrandPicture(props: Props) {
  const html = drawStrand(props);
  const label = props.words.picture;
  return <figure class="laid" tabIndex={0} aria-label={label} dangerouslySetInnerHTML={{ __html: html }} />;
}

/** The clasp's end close up. */
export function EndPicture({ bench, strand, words }: Omit<Props, 'groups' | 'unit'>) {
  const { copy, candidate, card } = bench;
  const ends = drawEnds(copy.design, candidate.sequences[strand] ?? [], {
    title: words.ends,
    description: words.endsText,
    idPrefix: `ends-${strand}`,
    tailMm: card.strands[strand]?.tails.clasp.reachMm ?? 0,
    labels: words.endLabels,
  });
  return <figure class="end" dangerouslySetInnerHTML={{ __html: ends }} />;
}

function drawStrand({ bench, strand, groups, unit, words }: Props): string {
  const { copy, candidate, card } = bench;
  // What hangs hangs from the first strand.
  const design = strand === 0 ? copy.design : { ...copy.design, hanging: null };
  const sequence = candidate.sequences[strand] ?? [];
  const spans = groups.flatMap(({ numbers }) => numbers ?? []);
  const side = card.hand.boardSide;
  const idPrefix = `piece-${strand}`;
  if ((card.strands[strand]?.finishedLengthMm ?? 0) > STRAIGHT_BOARD_MM) {
    const caption = { title: words.pictureRows, description: words.pictureRowsText };
    return drawNumbered(design, sequence, { ...caption, idPrefix, spans });
  }
  const caption = { title: words.picture, description: words.pictureText(side) };
  return drawBoard(design, [sequence], { ...caption, idPrefix, unit, claspSide: side, spans });
}
