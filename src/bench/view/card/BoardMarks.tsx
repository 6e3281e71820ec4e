/** The marks on the bead board, both ways from zero. */
import type { Board } from '#core/stringing/board.ts';
import type { BenchCardWords } from '#words/benchCard.ts';
import type { Format } from '#words/format.ts';

type Props = {
  readonly board: Board;
  readonly sections: Readonly<Record<string, string>>;
  readonly words: BenchCardWords;
  readonly format: Format;
};

export function BoardMarks({ board, sections, words, format }: Props) {
  return (
    <table class="marks">
      <caption>{words.board}</caption>
      <tbody>
        {(['left', 'right'] as const).map((side) => (
          <tr>
            <th scope="row">
              {words.boardSides[side]}
              {side === board.claspSide && <small> ({words.boardClasp})</small>}
            </th>
            <td>
              {board.marks
                .filter((mark) => mark.side === side)
                .map((mark) => {
                  const section = mark.section === null ? null : (sections[mark.section] ?? mark.section);
                  return `${words.mark(mark, section)} ${format.number(mark.fromZeroMm, 1)}`;
                })
                .join(' · ')}{' '}
              mm
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
