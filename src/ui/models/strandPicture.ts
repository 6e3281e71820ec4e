/** A strand as it is laid out to be strung, numbered as its list is. */
import type { Design } from '#core/design/design.ts';
import type { Group } from '#core/instructions/groups.ts';
import type { Stringing } from '#core/instructions/stringing.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { drawBoard } from '#draw/drawings/board.ts';
import { drawNumbered } from '#draw/drawings/numbered.ts';
import type { Caption } from '#draw/svg/document.ts';

/** Up to here a strand lies straight on the sheet, as on the board; a longer one is cut into rows. */
const STRAIGHT_BOARD_MM = 260;

type Told = Pick<Caption, 'title' | 'description'>;

type Captions = {
  readonly board: Told;
  readonly rows: Told;
  readonly idPrefix: string;
  readonly unit: ShownUnit;
};

/** On the board from zero both ways, or in rows as wide as paper where it is too long for that. */
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
  if ((card.strands[strand]?.finishedLengthMm ?? 0) > STRAIGHT_BOARD_MM) {
    return drawNumbered(shown, sequence, { ...rows, idPrefix, spans });
  }
  return drawBoard(shown, [sequence], {
    ...board,
    ...{ idPrefix, unit, spans, claspSide: card.hand.boardSide },
  });
}
