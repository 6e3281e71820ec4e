/** Who will wear it, as far as the buyer cares to say. */
import type { BodyWords, SizingWords } from '#words/words.ts';
import type { Format } from '#words/format.ts';
import { sentenceOf } from '#words/sentence.ts';
import { Choices } from '../controls/Choices.tsx';
import type { WearerField, WearerForm, WearerProblem } from './model/wearerForm.ts';

export type WearerFieldsProps = {
  readonly words: BodyWords;
  readonly sizingWords: SizingWords;
  readonly format: Format;
  readonly id: string;
  readonly form: WearerForm;
  readonly problem: WearerProblem | null;
  readonly onChange: (form: WearerForm) => void;
};

export function WearerFields(props: WearerFieldsProps) {
  const { words, id, form, onChange } = props;
  const who = Object.entries(words.who) as [WearerForm['who'], string][];
  const fields: readonly WearerField[] = form.who === 'child' ? ['age', 'neck'] : ['neck', 'height'];
  return (
    <div class="chart-wearer">
      <Choices
        name={`${id}-who`}
        legend={words.whoLegend}
        value={form.who}
        options={who.map(([value, label]) => ({ value, label }))}
        onChange={(value) => onChange({ ...form, who: value })}
      />
      <div class="chart-fields">
        {fields.map((field) => (
          <WearerInput key={field} {...props} field={field} />
        ))}
      </div>
    </div>
  );
}

function WearerInput({ field, ...props }: WearerFieldsProps & { readonly field: WearerField }) {
  const { words, id, form, problem, onChange } = props;
  const wrong = problem !== null && problem.field === field ? sentence(props, problem) : null;
  const inputId = `${id}-${field}`;
  return (
    <div class="sizer-field">
      <label class="sizer-label" for={inputId}>
        {words[field]}
      </label>
      <input
        id={inputId}
        class="sizer-input"
        autocomplete="off"
        maxLength={60}
        placeholder={field === 'age' ? '' : words.optional}
        value={form[field]}
        aria-invalid={wrong !== null}
        aria-describedby={`${inputId}-problem`}
        onInput={(event) => onChange({ ...form, [field]: event.currentTarget.value })}
      />
      <p id={`${inputId}-problem`} class="sizer-problem">
        {wrong}
      </p>
    </div>
  );
}

function sentence({ words, sizingWords, format }: WearerFieldsProps, problem: WearerProblem): string {
  if (problem.of === 'age') return words.ageWrong;
  if (problem.of === 'length') return sentenceOf(sizingWords.unread, problem.problem, format);
  return sentenceOf(words.problems, problem.problem, format);
}
