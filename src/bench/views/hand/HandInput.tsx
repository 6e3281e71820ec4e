/** A field of the form of an order by hand, with what is wrong in it. */
import type { ComponentChildren } from 'preact';
import type { HandWords } from '#words/words.ts';
import type { HandField } from '../../intake/handForm.ts';
import type { Frame } from '../../models/frame.ts';
import type { HandSheet } from '../../models/handSheet.ts';

export type HandProps = { readonly sheet: HandSheet; readonly frame: Frame; readonly words: HandWords };

type FieldProps = HandProps & { readonly name: HandField; readonly label: string };

/** What every control has: its id, its name, and its problem's id where it has one. */
function attributes({ problems }: HandSheet, name: HandField) {
  const id = `hand-${name}`;
  const wrong = problems[name] !== undefined;
  return { id, name, ...(wrong && { 'aria-invalid': true, 'aria-describedby': `${id}-wrong` }) };
}

function Labelled({
  sheet,
  frame,
  words,
  name,
  label,
  children,
}: FieldProps & { children: ComponentChildren }) {
  const problem = sheet.problems[name];
  return (
    <div class="field">
      <label for={`hand-${name}`}>{label}</label>
      {children}
      {problem !== undefined && (
        <p class="bad" id={`hand-${name}-wrong`}>
          {words.problem(problem, frame.format)}
        </p>
      )}
    </div>
  );
}

type InputProps = FieldProps & {
  readonly maxLength: number;
  readonly type?: 'text' | 'email' | 'tel';
  readonly hint?: string;
  readonly numeric?: boolean;
};

export function HandInput({ maxLength, type = 'text', hint, numeric, ...field }: InputProps) {
  const { sheet, name } = field;
  return (
    <Labelled {...field}>
      <input
        {...attributes(sheet, name)}
        type={type}
        value={sheet.order.fields[name]}
        maxLength={maxLength}
        placeholder={hint}
        inputMode={numeric === true ? 'numeric' : undefined}
        autocomplete="off"
        dir="auto"
      />
    </Labelled>
  );
}

export function HandText({ maxLength, ...field }: FieldProps & { readonly maxLength: number }) {
  const { sheet, name } = field;
  return (
    <Labelled {...field}>
      <textarea {...attributes(sheet, name)} rows={4} maxLength={maxLength} dir="auto">
        {sheet.order.fields[name]}
      </textarea>
    </Labelled>
  );
}

type Option = { readonly value: string; readonly label: string };

type SelectProps = FieldProps & {
  /** Options, under a heading where there are several kinds of them. */
  readonly groups: readonly { readonly heading: string | null; readonly options: readonly Option[] }[];
};

export function HandSelect({ groups, ...field }: SelectProps) {
  const { sheet, name } = field;
  const chosen = sheet.order.fields[name];
  const option = ({ value, label }: Option) => (
    <option value={value} selected={value === chosen}>
      {label}
    </option>
  );
  return (
    <Labelled {...field}>
      <select {...attributes(sheet, name)}>
        {groups.map(({ heading, options }) =>
          heading === null ? options.map(option) : <optgroup label={heading}>{options.map(option)}</optgroup>,
        )}
      </select>
    </Labelled>
  );
}

/** Options out of what each value is called. */
export function optionsOf(said: Readonly<Record<string, string>>): Option[] {
  return Object.entries(said).map(([value, label]) => ({ value, label }));
}
