/** All that a buyer says: what she goes by, the measure, how it should sit, and her clasp hand. */
import { MEASURES_OF_KIND } from '#core/design/choice.ts';
import type { HandAdvice } from '#core/sizing/hand/hand.ts';
import type { Format } from '#words/format.ts';
import { measureId } from '../model/elements.ts';
import { type SizerState } from '../model/sizerState.ts';
import { Choices } from '../controls/Choices.tsx';
import { PartChoices } from './PartChoices.tsx';
import { Measure, type MeasureProps } from './Measure.tsx';

export type SizeFormProps = MeasureProps & {
  readonly format: Format;
  /** For the piece shown: the hand is asked only where it matters. */
  readonly advice: HandAdvice;
  /** How to measure, from the page as it was built: HTML. */
  readonly how: string;
};

export function SizeForm({ piece, built, words, handle, id, lang, format, advice, how }: SizeFormProps) {
  const { state, dispatch } = handle;
  const { kind } = piece.design;
  const measures = MEASURES_OF_KIND[kind];
  const sits = Object.entries(words.sits) as [SizerState['sit'], string][];
  const hands = Object.entries(words.hands) as [SizerState['hand'], string][];
  return (
    <div class="sizer-size">
      {measures.length > 1 && (
        <Choices
          name={`${id}-by`}
          legend={words.byLegend}
          quiet
          value={state.of}
          options={measures.map((of) => ({ value: of, label: words.by[of] }))}
          onChange={(of) => dispatch({ type: 'by', of })}
        />
      )}
      <Measure piece={piece} built={built} words={words} handle={handle} id={measureId(id)} lang={lang} />
      <details class="sizer-how" dangerouslySetInnerHTML={{ __html: how }} />
      {state.of !== 'length' && (
        <div>
          <Choices
            name={`${id}-sit`}
            legend={words.sitLegend}
            value={state.sit}
            options={sits.map(([value, label]) => ({ value, label }))}
            onChange={(sit) => dispatch({ type: 'sit', sit })}
          />
          <p class="sizer-hint">
            {words.sitMeans[kind][state.sit]}{' '}
            {words.sitAdds(format, piece.rules.easeMm[kind][state.sit], kind)}
          </p>
        </div>
      )}
      <div>
        {advice.boardSide !== null && (
          <Choices
            name={`${id}-hand`}
            legend={words.handLegend}
            value={state.hand}
            options={hands.map(([value, label]) => ({ value, label }))}
            onChange={(hand) => dispatch({ type: 'hand', hand })}
          />
        )}
        <p class="sizer-hint">{words.handReasons[advice.reason](state.hand)}</p>
      </div>
      <PartChoices {...{ piece, words, format, id, dispatch }} parts={state.parts} />
    </div>
  );
}
