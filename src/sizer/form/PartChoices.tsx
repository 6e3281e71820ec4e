/** Another clasp, another pendant, where the maker offers them, and what is to be minded with them. */
import { type ChosenParts, INSTEAD_PARTS } from '#core/design/choice.ts';
import type { Format } from '#words/format.ts';
import type { AskingWords } from '#words/words.ts';
import type { PieceForSizer } from '../model/input.ts';
import type { SizerAction } from '../model/sizerState.ts';

export type PartChoicesProps = {
  /** As listed. */
  readonly piece: PieceForSizer;
  readonly parts: ChosenParts;
  readonly words: AskingWords;
  readonly format: Format;
  /** Begins those of the fields. */
  readonly id: string;
  readonly dispatch: (action: SizerAction) => void;
};

export function PartChoices({ piece, parts, words, format, id, dispatch }: PartChoicesProps) {
  const { offers = [], design } = piece;
  const { components, ends, hanging } = design;
  const listed = { clasp: ends.clasp, pendant: hanging?.pendant ?? '' };
  const cautions = offers.filter((one) => parts[one.part] === one.id).flatMap((one) => one.cautions);
  const offered = INSTEAD_PARTS.filter((part) => offers.some((one) => one.part === part));
  if (offered.length === 0) return null;
  return (
    <div class="sizer-parts">
      {offered.map((part) => (
        <div key={part} class="sizer-field">
          <label class="sizer-label" for={`${id}-${part}`}>
            {words.parts[part]}
          </label>
          <select
            id={`${id}-${part}`}
            class="sizer-input"
            value={parts[part]}
            onChange={(event) => dispatch({ type: 'part', part, id: event.currentTarget.value })}
          >
            <option value="">{words.partListed(components[listed[part]]?.name ?? words.noPendant)}</option>
            {offers
              .filter((one) => one.part === part)
              .map((one) => (
                <option key={one.id} value={one.id}>
                  {words.partOffered(format, one.name, one.differenceMinor)}
                </option>
              ))}
          </select>
        </div>
      ))}
      <p class="sizer-hint" role="status">
        {[...new Set(cautions)].join(' ')}
      </p>
    </div>
  );
}
