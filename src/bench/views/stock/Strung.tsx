/** Beside the card of a piece: that it was strung without an order, which takes it out of the trays. */
import { underBase } from '#ui/site/base.ts';
import { stockWords, type StockWords } from '#words/words.ts';
import type { PieceSheet } from '../../models/pieceSheet.ts';
import type { Frame } from '../../models/frame.ts';

type Props = {
  readonly sheet: PieceSheet;
  /** Of the page's address: which size. */
  readonly query: string;
  /** What the address says of what was entered just now; null for nothing. */
  readonly said: string | null;
  readonly frame: Frame;
};

export function Strung({ sheet, query, said, frame }: Props) {
  const words = stockWords(frame.lang).strung;
  const action = `/bench/pieces/${sheet.piece.id}/strung/${query === '' ? '' : `?${query}`}` as const;
  return (
    <div class="off-paper">
      <Said said={said} words={words} />
      {/* What was strung just now may have been the last that there was enough for. */}
      {sheet.card !== null && (
        <details>
          <summary>{words.title}</summary>
          <form method="post" action={underBase(action)}>
            <p>{words.lead}</p>
            <p class="row">
              <label>
                {words.many}{' '}
                <input name="many" value="1" inputMode="numeric" size={3} maxLength={2} required />
              </label>
              <button type="submit">{words.button}</button>
            </p>
          </form>
        </details>
      )}
    </div>
  );
}

function Said({ said, words }: { readonly said: string | null; readonly words: StockWords['strung'] }) {
  if (said === 'wrong') {
    return (
      <p class="warning" role="alert">
        {words.wrong}
      </p>
    );
  }
  const many = Number(said ?? '');
  const done = said !== null && Number.isInteger(many) && many > 0 && many < 100;
  if (!done && said !== 'nothing') return null;
  return (
    <p class={done ? 'good' : undefined} role="status">
      {done ? words.done(many) : words.nothing}
    </p>
  );
}
