/** What belongs to a piece's page of words: the ways to its other pages, and what one button does to it. */
import { underBase } from '#ui/site/base.ts';
import type { ContentFormWords } from '#words/words.ts';
import type { EntrySheet } from '../../models/content/editEntry.ts';
import { actionsFor } from '../../models/content/pieceAction.ts';

export function PieceLinks({ id, words }: { readonly id: string; readonly words: ContentFormWords }) {
  return (
    <p class="row">
      <a href={underBase(`/bench/pieces/${id}/board/`)}>{words.pieces.board}</a>
      <a href={underBase(`/bench/pieces/${id}/`)}>{words.pieces.card}</a>
      <a href={underBase(`/bench/pieces/new/?copy=${id}`)}>{words.pieces.copy}</a>
    </p>
  );
}

/** Buttons of the form itself, so that whatever else is typed is saved along. */
export function PieceActions({
  sheet,
  words,
}: {
  readonly sheet: EntrySheet;
  readonly words: ContentFormWords;
}) {
  return (
    <p class="row">
      {actionsFor(sheet.nodes).map((action) => (
        <button type="submit" name="do" value={action}>
          {words.pieces[action]}
        </button>
      ))}
    </p>
  );
}
