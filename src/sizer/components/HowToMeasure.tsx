/** How to measure, in words and a line drawing. */
import type { Measure } from '#core/sizing/choice.ts';
import type { SizingWords } from '#words/sizing.ts';
import { MeasurePicture } from './MeasurePicture.tsx';

export function HowToMeasure({ words, of }: { readonly words: SizingWords; readonly of: Measure['of'] }) {
  return (
    <details class="sizer-how">
      <summary>{words.howTitle}</summary>
      <div class="sizer-how-body">
        <MeasurePicture of={of} label={words.howPicture[of]} />
        <div>
          <p>{words.how[of]}</p>
          <p>{words.howNoTape}</p>
        </div>
      </div>
    </details>
  );
}
