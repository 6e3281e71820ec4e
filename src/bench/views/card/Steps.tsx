/** The steps, each at its moment, each with a box to tick. */
import { isCaution, type Step } from '#core/instructions/step.ts';
import type { BenchCardWords } from '#words/words.ts';
import type { Phase } from '#core/instructions/phases.ts';

type Props = {
  /** What they are for, on paper, where they may have come to stand on a sheet of their own. */
  readonly paperHead: readonly (string | undefined)[];
  readonly phases: readonly Phase[];
  readonly say: (step: Step) => string;
  readonly words: BenchCardWords;
};

export function Steps({ paperHead, phases, say, words }: Props) {
  return (
    <div class="steps">
      <p class="only-paper">{paperHead.filter((one) => one !== undefined).join(' · ')}</p>
      <div class="phases">
        {phases.map(({ name, steps }) => (
          <section>
            <h3>{words.phases[name]}</h3>
            <ol start={(steps[0]?.at ?? 0) + 1}>
              {steps.map(({ at, step }) => (
                <li class={isCaution(step.code) ? 'caution' : undefined}>
                  <label class="tick">
                    <input type="checkbox" name={`step-${at}`} /> {say(step)}
                  </label>
                </li>
              ))}
            </ol>
          </section>
        ))}
      </div>
    </div>
  );
}
