/** The marks on the bead board, read as a bead board is: zero in the middle, each figure the length between its two sides. */
import type { Board, BoardMark } from '#core/instructions/board.ts';
import type { BenchCardWords } from '#words/words.ts';
import type { Format } from '#words/format.ts';
import { FactList, type Fact } from '../FactList.tsx';

type Props = {
  readonly board: Board;
  readonly sectionOf: (section: string) => string;
  readonly words: BenchCardWords;
  readonly format: Format;
};

export function BoardMarks({ board, sectionOf, words, format }: Props) {
  const text = (marks: readonly BoardMark[]): string =>
    marks
      .map((mark) => {
        const name = words.mark(mark, mark.section === null ? null : sectionOf(mark.section));
        return `${name} ${format.length(2 * mark.fromZeroMm)}`;
      })
      .join(' · ');
  const { both, left, right } = sidesOf(board);
  const lines: Fact[] = [
    { label: words.boardSides.both, value: text(both) },
    { label: words.boardSides.left, value: text(left) },
    { label: words.boardSides.right, value: text(right) },
  ].filter(({ value }) => value !== '');
  return (
    <div>
      <h3>{words.board}</h3>
      <FactList facts={lines} set="tight" />
      <p class="quiet">{words.boardText}</p>
    </div>
  );
}

type Sides = Readonly<Record<'both' | 'left' | 'right', readonly BoardMark[]>>;

/** What ends at the same place on both sides stands once, as far as the sides are alike from the middle out. */
function sidesOf({ marks }: Board): Sides {
  const left = marks.filter(({ side }) => side === 'left');
  const right = marks.filter(({ side }) => side === 'right');
  const parts = left.findIndex((mark, at) => !alike(mark, right[at]));
  const shared = parts === -1 ? left.length : parts;
  return { both: left.slice(0, shared), left: left.slice(shared), right: right.slice(shared) };
}

/** A hundredth of a millimetre is no difference to a board. */
const SAME_MM = 0.01;

function alike(one: BoardMark, other: BoardMark | undefined): boolean {
  return (
    one.ends === other?.ends &&
    one.section === other.section &&
    Math.abs(one.fromZeroMm - other.fromZeroMm) < SAME_MM
  );
}
