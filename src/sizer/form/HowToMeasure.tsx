/** How to measure, in words and a line drawing, for each measure a piece can be sized by. Built into the page, where it opens. */
import type { Measure } from '#core/design/choice.ts';
import type { MeasuringWords } from '#words/words.ts';
import { MeasurePicture } from './MeasurePicture.tsx';

export type HowToMeasureProps = {
  readonly words: MeasuringWords;
  readonly measures: readonly Measure['of'][];
  /** Where a paper tape can be printed. */
  readonly stripAddress: string;
};

export function HowToMeasure({ words, measures, stripAddress }: HowToMeasureProps) {
  return (
    <>
      <summary>{words.title}</summary>
      {measures.map((of) => (
        <div key={of} class="sizer-how-body" data-how={of}>
          <MeasurePicture of={of} label={words.picture[of]} />
          <div>
            <p>{words.how[of]}</p>
            <p>
              {words.noTape} <a href={stripAddress}>{words.strip}</a>.
            </p>
          </div>
        </div>
      ))}
    </>
  );
}
