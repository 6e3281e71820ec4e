/** A strand as it is laid out to be strung, numbered as its list is. */
import type { Design } from '#core/design/design.ts';
import type { Group } from '#core/instructions/groups.ts';
import type { Stringing } from '#core/instructions/stringing.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { drawBoard } from '#draw/drawings/board.ts';
import { drawNumbered } from '#draw/drawings/numbered.ts';
import { STRAIGHT_MOST_MM } from '#draw/layout/board.ts';
import type { Caption } from '#draw/svg/document.ts';

/** A row's length where a strand is too long to lie straight on the board: beads in it are still told apart on paper, and two rows hold most necklaces, mm. */
const MOST_ROW_MM = 260;

type Told = Pick<Caption, 'title' | 'description'>;

type Captions = {
  readonly board: Told;
  readonly rows: Told;
  readonly idPrefix: string;
  readonly unit: ShownUnit;
};

/** Whether it fits on the sheet in one line, as it lies on the board; a longer one is shown in rows. */
export const liesStraight = (card: Stringing, strand: number): boolean =>
  (card.strands[strand]?.finishedLengthMm ?? 0) <= STRAIGHT_MOST_MM;

/** On the board from zero both ways, or in rows where it is too long for that. */
export function drawStrandPicture(
  design: Design,
  { sequences }: Candidate,
  card: Stringing,
  strand: number,
  groups: readonly Group[],
  { board, rows, idPrefix, unit }: Captions,
): string {
  // What hangs hangs from the first strand.
  const shown = strand === 0 ? design : { ...design, hanging: null };
  const sequence = sequences[strand] ?? [];
  const spans = groups.flatMap(({ numbers }) => numbers ?? []);
  if (!liesStraight(card, strand)) {
    return drawNumbered(shown, sequence, { ...rows, idPrefix, spans, mostRowMm: MOST_ROW_MM });
  }
  return drawBoard(shown, [sequence], {
    ...board,
    ...{ idPrefix, unit, spans, claspSide: card.hand.boardSide },
  });
}
