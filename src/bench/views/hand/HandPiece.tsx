/** The piece and its size. */
import { INSTEAD_PARTS, MEASURES, SITS } from '#core/design/choice.ts';
import { MOST_LENGTH_TEXT } from '#core/units/length.ts';
import { sizingWords } from '#words/words.ts';
import type { HandOffers } from '../../models/handSheet.ts';
import { HandInput, HandSelect, optionsOf, type HandProps } from './HandInput.tsx';

export function HandPiece(props: HandProps) {
  const { sheet, frame, words } = props;
  const sizing = sizingWords(frame.lang);
  const only = (said: Readonly<Record<string, string>>) => [{ heading: null, options: optionsOf(said) }];
  const pieces = (past: boolean) =>
    sheet.pieces.filter((piece) => piece.past === past).map(({ id, name }) => ({ value: id, label: name }));
  const measures = Object.fromEntries(MEASURES.map((of) => [of, sizing.by[of]]));
  const sits = Object.fromEntries(SITS.map((sit) => [sit, sizing.sits[sit]]));
  return (
    <fieldset>
      <legend>{words.thePiece}</legend>
      <HandSelect
        {...props}
        name="piece"
        label={words.piece}
        groups={[
          { heading: null, options: [{ value: '', label: words.choosePiece }] },
          { heading: words.made, options: pieces(false) },
          ...(pieces(true).length > 0 ? [{ heading: words.past, options: pieces(true) }] : []),
        ]}
      />
      {sheet.offers !== null && <HandOffered {...props} offers={sheet.offers} />}
      <div class="fields">
        <HandInput
          {...props}
          name="size"
          label={words.size}
          maxLength={MOST_LENGTH_TEXT}
          hint={frame.shop.unit === 'in' ? '6 1/2' : '16,5'}
        />
        <HandSelect
          {...props}
          name="of"
          label={words.of}
          groups={[{ heading: null, options: [{ value: '', label: words.usualOf }, ...optionsOf(measures)] }]}
        />
        <HandSelect {...props} name="sit" label={sizing.sitLegend} groups={only(sits)} />
        <HandSelect {...props} name="hand" label={sizing.handLegend} groups={only(sizing.hands)} />
        <HandSelect {...props} name="pick" label={words.pick} groups={only(frame.words.order.picks)} />
        <HandInput {...props} name="quantity" label={words.quantity} maxLength={3} numeric />
      </div>
      <button type="submit" name="do" value="size">
        {sheet.order.sized === null ? words.sizeIt : words.sizeAgain}
      </button>
    </fieldset>
  );
}

/** As it lies there, and other parts: only what the piece that is chosen offers. */
function HandOffered({ offers, ...props }: HandProps & { readonly offers: HandOffers }) {
  const { words, sheet } = props;
  const asked = sheet.order.fields;
  const parts = INSTEAD_PARTS.filter((part) => offers.parts[part].length > 0 || asked[part] !== '');
  const made = offers.ready || asked.made === 'ready';
  if (!made && parts.length === 0) return null;
  return (
    <div class="fields">
      {made && (
        <HandSelect
          {...props}
          name="made"
          label={words.how}
          groups={[{ heading: null, options: optionsOf(words.mades) }]}
        />
      )}
      {parts.map((part) => {
        const [listed, ...others] = offers.parts[part];
        const first = { value: '', label: words.asListed(listed?.name ?? '') };
        const options = [first, ...others.map(({ id, name }) => ({ value: id, label: name }))];
        return (
          <HandSelect
            {...props}
            name={part}
            label={words.parts[part]}
            groups={[{ heading: null, options }]}
          />
        );
      })}
    </div>
  );
}
