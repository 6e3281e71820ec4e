/** The marks on the bead board, both ways from zero; strands with the same marks share them. */
import type { Board } from '#core/instructions/board.ts';
import type { BenchCardWords } from '#words/words.ts';
import type { Format } from '#words/format.ts';

type Props = {
  readonly boards: readonly Board[];
  /** What the maker calls a section of a strand. */
  readonly sectionIn: (strand: number) => (section: string) => string;
  readonly words: BenchCardWords;
  readonly format: Format;
};

export function BoardMarks({ boards, sectionIn, words, format }: Props) {
  const groups = new Map<string, { sides: Sides; strands: string[] }>();
  boards.forEach((board, at) => {
    const sides = sidesOf(board, sectionIn(at), words, format);
    const key = `${sides.left} | ${sides.right}`;
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { sides, strands: [words.strand(at + 1)] });
    else known.strands.push(words.strand(at + 1));
  });
  const claspSide = boards[0]?.claspSide ?? 'left';
  return (
    <table class="marks">
      <caption>{words.board}</caption>
      <tbody>
        {[...groups.values()].map(({ sides, strands }) =>
          (['left', 'right'] as const).map((side) => (
            <tr>
              <th scope="row">
                {groups.size > 1 && <small>{strands.join(', ')} </small>}
                {words.boardSides[side]}
                {side === claspSide && <small> ({words.boardClasp})</small>}
              </th>
              <td>{sides[side]}</td>
            </tr>
          )),
        )}
      </tbody>
    </table>
  );
}

type Sides = { readonly left: string; readonly right: string };

function sidesOf(
  { marks }: Board,
  sectionOf: (section: string) => string,
  words: BenchCardWords,
  format: Format,
): Sides {
  const text = (side: 'left' | 'right'): string =>
    marks
      .filter((mark) => mark.side === side)
      .map((mark) => {
        const section = mark.section === null ? null : sectionOf(mark.section);
        return `${words.mark(mark, section)} ${format.number(mark.fromZeroMm, 1)}`;
      })
      .join(' · ') + ' mm';
  return { left: text('left'), right: text('right') };
}
