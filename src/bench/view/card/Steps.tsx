/** The steps, each at its moment, each with a box to tick. */
import type { Step, StepCode } from '#core/stringing/steps.ts';
import type { BenchCardWords } from '#words/benchCard.ts';
import type { Format } from '#words/format.ts';
import type { StringingWords } from '#words/stringing.ts';

/** Steps that guard eyes and hands stand out. */
const GUARDS: ReadonlySet<StepCode> = new Set(['wear-eye-protection', 'cut-away-from-face']);

type Props = {
  readonly steps: readonly Step[];
  readonly several: boolean;
  readonly nameOf: (id: string) => string;
  readonly words: BenchCardWords;
  readonly said: StringingWords;
  readonly format: Format;
};

export function Steps({ steps, several, nameOf, words, said, format }: Props) {
  return (
    <section class="steps" aria-labelledby="steps">
      <h2 id="steps">{words.steps}</h2>
      <ol>
        {steps.map((step, at) => (
          <li class={GUARDS.has(step.code) ? 'caution' : undefined}>
            <label class="tick">
              <input type="checkbox" name={`step-${at}`} />{' '}
              {several && step.strand !== null && <b>{words.strand(step.strand + 1)}: </b>}
              {said.step(step, format, nameOf)}
            </label>
          </li>
        ))}
      </ol>
    </section>
  );
}
