/** A strand's pictures: as it will lie, numbered as its list is, and the clasp's end close up. */
import type { ShownUnit } from '#core/units/unit.ts';
import { drawEnds } from '#draw/drawings/ends.ts';
import { drawStrandPicture, liesStraight } from '#ui/models/strandPicture.ts';
import type { BenchCardWords } from '#words/words.ts';
import type { PieceCard } from '../../models/benchCard.ts';
import type { Group } from '#core/instructions/groups.ts';

type Props = {
  readonly bench: PieceCard;
  readonly strand: number;
  readonly groups: readonly Group[];
  readonly unit: ShownUnit;
  readonly words: BenchCardWords;
};

/** The strand as it will lie; on a narrow screen it is larger than that, and moved under a finger. */
export function StrandPicture(props: Props) {
  const { bench, strand, groups, unit, words } = props;
  const { copy, candidate, card } = bench;
  const { picture, pictureText, pictureRows, pictureRowsText } = words;
  const straight = liesStraight(card, strand);
  const html = drawStrandPicture(copy.design, candidate, card, strand, groups, {
    board: { title: picture, description: pictureText(card.hand.boardSide) },
    rows: { title: pictureRows, description: pictureRowsText },
    idPrefix: `piece-${strand}`,
    unit,
  });
  return (
    <figure
      class={straight ? 'laid' : 'laid rows'}
      tabIndex={0}
      aria-label={straight ? picture : pictureRows}
      dangerouslySetInnerHTML={{ __html: html }}
    />
  );
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
