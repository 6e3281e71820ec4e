/** The sizing island: a measure, a sit and a hand in; the piece at that size out. */
import { useMemo } from 'preact/hooks';
import type { Sizing } from '#core/sizing/sizing.ts';
import { parseLength } from '#core/units/length.ts';
import { formatFor } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { SizingWords } from '#words/sizing.ts';
import { browserStore } from '../adapters/browserStore.ts';
import { limitsOf } from '../model/limits.ts';
import { shownOf } from '../model/outcome.ts';
import { sliderRange } from '../model/slider.ts';
import { measuresOf } from '../model/sizerState.ts';
import type { PieceForSizer, ShopForSizer } from '../props.ts';
import { Choices } from './Choices.tsx';
import { HowToMeasure } from './HowToMeasure.tsx';
import { MeasureField } from './MeasureField.tsx';
import { Result } from './Result.tsx';
import { useSizer, type SizerHandle } from './useSizer.ts';
import { Verdict } from './Verdict.tsx';

/** What a page passes in. */
export type SizerProps = { readonly piece: PieceForSizer; readonly shop: ShopForSizer };

/** What each language's entry binds. */
export type SizerLanguage = { readonly lang: Lang; readonly words: SizingWords };

export function Sizer({ piece, shop, lang, words }: SizerProps & SizerLanguage) {
  const handle = useSizer(piece, shop, lang, browserStore);
  const { state, outcome, dispatch } = handle;
  const { design, rules } = piece;
  const format = useMemo(() => formatFor(lang, state.unit, rules.currency), [lang, state.unit, rules]);
  const id = `sizer-${piece.id}`;
  const candidate = shownOf(outcome);
  const sizing = sizedOf(outcome);
  const sits = Object.entries(words.sits) as [typeof state.sit, string][];
  return (
    <section class="sizer" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{words.title}</h2>
      <div class="sizer-body">
        <div class="sizer-wishes">
          {measuresOf(design.kind).length > 1 && (
            <Choices
              name={`${id}-by`}
              legend={words.byLegend}
              value={state.of}
              options={measuresOf(design.kind).map((of) => ({ value: of, label: words.by[of] }))}
              onChange={(of) => dispatch({ type: 'by', of })}
            />
          )}
          <Measure piece={piece} words={words} handle={handle} id={id} lang={lang} />
          <HowToMeasure words={words} of={state.of} />
          {state.of !== 'length' && (
            <>
              <Choices
                name={`${id}-sit`}
                legend={words.sitLegend}
                value={state.sit}
                options={sits.map(([value, label]) => ({
                  value,
                  label,
                  hint: words.sitAdds(format, rules.easeMm[design.kind][value], design.kind),
                }))}
                onChange={(sit) => dispatch({ type: 'sit', sit })}
              />
              <p class="sizer-hint">{words.sitMeans[design.kind][state.sit]}</p>
            </>
          )}
          <Choices
            name={`${id}-hand`}
            legend={words.handLegend}
            value={state.hand}
            options={[
              { value: 'left', label: words.hands.left },
              { value: 'right', label: words.hands.right },
            ]}
            onChange={(hand) => dispatch({ type: 'hand', hand })}
          />
          {sizing !== null && sizing.status !== 'outside' && (
            <p class="sizer-hint">{words.handReasons[sizing.hand.reason](sizing.hand.hand)}</p>
          )}
        </div>
        <div class="sizer-answer">
          {sizing !== null && (
            <Verdict
              words={words}
              format={format}
              id={id}
              design={design}
              sizing={sizing}
              onPick={(pick) => dispatch({ type: 'pick', pick })}
              onTake={handle.take}
            />
          )}
          {candidate !== null && (
            <Result words={words} format={format} design={design} candidate={candidate} sizing={sizing} />
          )}
        </div>
      </div>
    </section>
  );
}

type Shown = Extract<Sizing, { status: 'fits' | 'near' | 'outside' }>;

function sizedOf(outcome: SizerHandle['outcome']): Shown | null {
  return outcome.kind === 'sized' && outcome.sizing.status !== 'refused' ? outcome.sizing : null;
}

type MeasureProps = {
  readonly piece: PieceForSizer;
  readonly words: SizingWords;
  readonly handle: SizerHandle;
  readonly id: string;
  readonly lang: Lang;
};

/** The field with the slider's range: what this piece can be made in. */
function Measure({ piece, words, handle, id, lang }: MeasureProps) {
  const { state, outcome } = handle;
  const format = formatFor(lang, state.unit, piece.rules.currency);
  const limits = useMemo(() => limitsOf(piece, state.of, state.sit), [piece, state.of, state.sit]);
  const read = parseLength(state.text, state.unit);
  const slider =
    limits && sliderRange(state.unit, limits.leastAskedMm, limits.mostAskedMm, read.ok ? read.mm : null);
  const refused = outcome.kind === 'sized' && outcome.sizing.status === 'refused' ? outcome.sizing : null;
  const problem =
    outcome.kind === 'unread'
      ? sentenceOf(words.unread, outcome.problem, format)
      : refused && sentenceOf(words.problems, refused.problem, format);
  return (
    <MeasureField
      words={words}
      id={`${id}-measure`}
      state={state}
      problem={problem}
      slider={slider}
      sliderText={read.ok ? format.length(read.mm) : words.slider}
      onWrite={(text) => handle.dispatch({ type: 'write', text })}
      onUnit={handle.changeUnit}
      onSlide={handle.slide}
    />
  );
}
