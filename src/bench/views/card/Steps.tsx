/** The steps, each at its moment, each with a box to tick. */
import { isCaution } from '#core/instructions/step.ts';
import type { BenchCardWords } from '#words/words.ts';
import type { StepLine } from '../../models/stepList.ts';

type Props = {
  readonly lines: readonly StepLine[];
  readonly several: boolean;
  readonly words: BenchCardWords;
};

export function Steps({ lines, several, words }: Props) {
  return (
    <section class="steps" aria-labelledby="steps">
      <h2 id="steps">{words.steps}</h2>
      <ol>
        {lines.map(({ code, parts }, at) => (
          <li class={isCaution(code) ? 'caution' : undefined}>
            {parts.map(({ text, strands }, part) => (
              <StepPart
                name={`step-${at}-${part}`}
                text={text}
                strands={several ? strands : []}
                words={words}
              />
            ))}
          </li>
        ))}
      </ol>
    </section>
  );
}

type PartProps = {
  readonly name: string;
  readonly text: string;
  readonly strands: readonly number[];
  readonly words: BenchCardWords;
};

function StepPart({ name, text, strands, words }: PartProps) {
  if (strands.length === 0) {
    return (
      <label class="tick">
        <input type="checkbox" name={name} /> {text}
      </label>
    );
  }
  return (
    <div>
      {strands.map((strand) => (
        <label class="tick">
          <input
            type="checkbox"
            name={`${name}-${strand}`}
            aria-label={`${words.strand(strand + 1)}: ${text}`}
          />
          {strand + 1}{' '}
        </label>
      ))}
      {text}
    </div>
  );
}
