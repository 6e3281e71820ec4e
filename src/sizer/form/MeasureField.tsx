/** Where the measure is written, with its unit, a slider, and what is wrong with it. */
import type { AskingWords } from '#words/words.ts';
import type { SliderRange } from '../model/slider.ts';
import type { SizerState } from '../model/sizerState.ts';
import { Choices } from '../controls/Choices.tsx';

export type MeasureFieldProps = {
  readonly words: AskingWords;
  /** What is to be measured. */
  readonly label: string;
  readonly id: string;
  readonly state: SizerState;
  /** Why the measure can't be taken, null where it can. */
  readonly problem: string | null;
  readonly slider: SliderRange | null;
  readonly sliderText: string;
  /** What this piece can be made in. */
  readonly reach: string;
  /** What the buyer may have meant, null where there is nothing to offer. */
  readonly instead: string | null;
  readonly onInstead: () => void;
  readonly onWrite: (text: string) => void;
  readonly onUnit: (unit: SizerState['unit']) => void;
  readonly onSlide: (step: number) => void;
};

export function MeasureField(props: MeasureFieldProps) {
  const { words, label, id, state, problem, slider } = props;
  const hintId = `${id}-hint`;
  const problemId = `${id}-problem`;
  return (
    <div class="sizer-measure">
      <label class="sizer-label" for={id}>
        {label}
      </label>
      <div class="sizer-measure-row">
        <input
          id={id}
          class="sizer-input"
          type="text"
          autocomplete="off"
          spellcheck={false}
          maxLength={60}
          value={state.text}
          aria-describedby={`${hintId} ${problemId}`}
          aria-invalid={problem !== null}
          onInput={(event) => props.onWrite(event.currentTarget.value)}
        />
        <Choices
          name={`${id}-unit`}
          legend={words.unitLegend}
          quiet
          value={state.unit}
          options={[
            { value: 'in', label: words.units.in },
            { value: 'cm', label: words.units.cm },
          ]}
          onChange={props.onUnit}
        />
      </div>
      <p id={hintId} class="sizer-hint">
        {words.fieldHint(state.unit, state.of)}
      </p>
      <p id={problemId} class="sizer-problem" role="alert">
        {problem}
      </p>
      {props.instead !== null && (
        <button type="button" class="button plain" onClick={props.onInstead}>
          {props.instead}
        </button>
      )}
      {slider !== null && (
        <input
          id={`${id}-slider`}
          class="sizer-slider"
          type="range"
          aria-label={words.slider}
          aria-valuetext={props.sliderText}
          min={slider.least}
          max={slider.most}
          step={1}
          value={slider.value}
          onInput={(event) => props.onSlide(event.currentTarget.valueAsNumber)}
        />
      )}
      <p class="sizer-hint">{props.reach}</p>
    </div>
  );
}
