/** Measures the screen: an outline of a bank card, brought to the width of a real one. */
import { useState } from 'preact/hooks';
import type { ScreenWords } from '#words/words.ts';
import { CARD_MM, LEAST_PX_PER_MM, MOST_PX_PER_MM, NOMINAL_PX_PER_MM } from './model/pixels.ts';

export type ScreenRulerProps = {
  readonly id: string;
  /** As measured before, null where never. */
  readonly pxPerMm: number | null;
  readonly onMeasured: (pxPerMm: number) => void;
  readonly words: ScreenWords;
};

/** A hundredth of a pixel a millimetre: under a pixel over the whole card. */
const STEP_PX_PER_MM = 0.01;

export function ScreenRuler({ id, pxPerMm, onMeasured, words }: ScreenRulerProps) {
  const [now, setNow] = useState(pxPerMm ?? NOMINAL_PX_PER_MM);
  const size = { width: `${CARD_MM.width * now}px`, height: `${CARD_MM.height * now}px` };
  return (
    <div class="screen-ruler" role="group" aria-labelledby={`${id}-ruler`}>
      <h4 id={`${id}-ruler`}>{words.title}</h4>
      <p>{words.how}</p>
      <input
        class="sizer-slider"
        type="range"
        aria-label={words.slider}
        aria-valuetext={words.sliderText(now)}
        min={LEAST_PX_PER_MM}
        max={MOST_PX_PER_MM}
        step={STEP_PX_PER_MM}
        value={now}
        onInput={(event) => setNow(event.currentTarget.valueAsNumber)}
      />
      <div class="screen-card-room">
        <div class="screen-card" style={size} />
      </div>
      <button type="button" class="button" onClick={() => onMeasured(now)}>
        {words.done}
      </button>
    </div>
  );
}
