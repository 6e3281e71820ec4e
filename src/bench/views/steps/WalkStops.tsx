/** The stops of a walk, each a section of its own: the sentence large, what there is to tick below it. */
import { underBase } from '#ui/site/base.ts';
import { isCaution } from '#core/instructions/step.ts';
import { atBoardWords, type AtBoardWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import type { WalkSheet } from '../../models/steps/sheet.ts';
import type { WalkStop } from '../../models/steps/walk.ts';
import type { StopText } from './stopText.ts';

type StopProps = {
  readonly stop: WalkStop;
  readonly text: StopText;
  readonly label: string;
  readonly place: number;
  readonly hidden: boolean;
  readonly words: AtBoardWords;
};

export function StopSection({ stop, text, label, place, hidden, words }: StopProps) {
  const { from, ticks } = stop;
  const done = Math.min(ticks.length, Math.max(0, place - from));
  const [first] = ticks;
  const warns = first !== undefined && isCaution(first.step.code);
  const counted = ticks.length > 1 || text.ticks.some((one) => one !== '');
  return (
    <section data-stop hidden={hidden}>
      <p class="where">{[label, ...text.where].join(' · ')}</p>
      <h2 class={warns ? 'say caution' : 'say'}>{text.say}</h2>
      {counted && (
        <>
          <p class="counted" data-count>
            {words.count(String(done), String(ticks.length))}
          </p>
          <ol class="runs-to-tick">
            {text.ticks.map((one, index) => (
              <li>
                <button
                  type="submit"
                  name="place"
                  value={index < done ? from + index : from + index + 1}
                  aria-pressed={index < done}
                  aria-current={index === done ? 'step' : undefined}
                  data-tick={from + index}
                >
                  {one}
                </button>
              </li>
            ))}
          </ol>
        </>
      )}
    </section>
  );
}

type FinishedProps = {
  readonly sheet: WalkSheet;
  readonly atBench: boolean;
  readonly frame: Frame;
  readonly hidden: boolean;
};

/** What comes after the last tick. */
export function Finished({ sheet, atBench, frame, hidden }: FinishedProps) {
  const words = atBoardWords(frame.lang);
  return (
    <section data-stop hidden={hidden}>
      <h2 class="say">{words.done}</h2>
      <p>{sheet.details.length === 0 ? words.donePiece : words.doneText}</p>
      {atBench &&
        sheet.details.map(({ entry: { document } }) => (
          <p>
            <a class="button" href={underBase(`/bench/orders/${document.number}/`)}>
              {frame.words.order.title(document.number)}
            </a>
          </p>
        ))}
      <p>
        <button type="submit" name="place" value="0" data-go="0">
          {words.again}
        </button>
      </p>
    </section>
  );
}
