/** What one button does to a piece on its page of words. */
import type { ContentFormWords } from '#words/words.ts';
import type { EntrySheet } from '../../models/content/editEntry.ts';
import { actionsFor } from '../../models/content/pieceAction.ts';

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
