/** The few things that a new piece is asked for. */
import { underBase } from '#ui/site/base.ts';
import { PIECE_KINDS } from '#core/design/design.ts';
import type { ContentFormWords } from '#words/words.ts';
import type { NewPiece } from '../../models/content/newPiece.ts';

type Props = NewPiece & { readonly words: ContentFormWords };

export function NewPieceView({ copied, name, kind, problems, words }: Props) {
  const said = words.pieces;
  const wrong = problems.length > 0;
  return (
    <form class="hand content" method="post" action={underBase('/bench/pieces/new/')} noValidate>
      {copied === null && <p>{said.newLead}</p>}
      <input type="hidden" name="copy" value={copied?.id ?? ''} />
      <div class="fields">
        <div class="field">
          <label for="new-name">{words.labels.name}</label>
          <input
            id="new-name"
            name="name"
            value={name}
            maxLength={60}
            autocomplete="off"
            aria-invalid={wrong ? true : undefined}
            aria-describedby={wrong ? 'new-wrong' : undefined}
          />
          {wrong && (
            <div class="bad" id="new-wrong" role="alert">
              {problems.map(({ what, fix }) => (
                <p>
                  {what} {fix}
                </p>
              ))}
            </div>
          )}
        </div>
        {copied === null && (
          <div class="field">
            <label for="new-kind">{words.labels['piece.kind']}</label>
            <select id="new-kind" name="kind">
              {PIECE_KINDS.map((one) => (
                <option value={one} selected={one === kind}>
                  {words.options[`piece.kind.${one}`] ?? one}
                </option>
              ))}
            </select>
          </div>
        )}
      </div>
      <button type="submit" class="main">
        {copied === null ? said.begin : words.save}
      </button>
    </form>
  );
}
