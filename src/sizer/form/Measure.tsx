/** The measure field joined to the model: its problem, and a slider over what this piece can be made in. */
import { useMemo } from 'preact/hooks';
import { parseLength } from '#core/units/length.ts';
import { formatFor } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { AskingWords, SizedWords } from '#words/words.ts';
import { sizedOf } from '../model/outcome.ts';
import { sliderRange } from '../model/slider.ts';
import type { BuiltPiece, PieceForSizer } from '../model/input.ts';
import { MeasureField } from './MeasureField.tsx';
import type { SizerHandle } from './useSizer.ts';

export type MeasureProps = {
  readonly piece: PieceForSizer;
  readonly built: BuiltPiece;
  readonly words: AskingWords;
  readonly handle: SizerHandle;
  readonly id: string;
  readonly lang: Lang;
};

export function Measure({ piece, built, words, handle, id, lang }: MeasureProps) {
  const { state, outcome, engine, chosen } = handle;
  const format = formatFor(lang, state.unit, piece.rules.currency);
  // An answer carries the limits it was found within: sizing once more would find the same ones.
  const limits = useMemo(
    () =>
      sizedOf(outcome)?.limits ??
      (engine === null ? built.limits : engine.limitsOf(chosen, state.of, state.sit)),
    [engine, chosen, outcome],
  );
  const read = parseLength(state.text, state.unit);
  const slider =
    limits && sliderRange(state.unit, limits.leastAskedMm, limits.mostAskedMm, read.ok ? read.mm : null);
  const other = outcome.kind === 'sized' ? outcome.otherUnit : null;
  return (
    <MeasureField
      words={words}
      label={
        state.of === 'length' && piece.design.lie === 'nested'
          ? words.lengthOfShortest
          : words.fieldLabels[state.of]
      }
      id={id}
      state={state}
      problem={engine && problemOf(engine.words, outcome, format)}
      slider={slider}
      sliderText={read.ok ? format.length(read.mm) : words.slider}
      reach={limits === null ? '' : words.madeFrom(format, limits, state.of)}
      instead={other && engine && engine.words.didYouMean(`${state.text.trim()}\u00a0${words.units[other]}`)}
      onInstead={() => other !== null && handle.changeUnit(other)}
      onWrite={(text) => handle.dispatch({ type: 'write', text })}
      onUnit={handle.changeUnit}
      onSlide={handle.slide}
    />
  );
}

function problemOf(words: SizedWords, outcome: SizerHandle['outcome'], format: ReturnType<typeof formatFor>) {
  if (outcome.kind === 'unread') return sentenceOf(words.unread, outcome.problem, format);
  if (outcome.kind !== 'sized' || outcome.sizing.status !== 'refused') return null;
  return sentenceOf(words.problems, outcome.sizing.problem, format);
}
