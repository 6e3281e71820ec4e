/** A row of radio buttons that look like one switch. */
export type ChoicesProps<Value extends string> = {
  readonly name: string;
  readonly legend: string;
  readonly options: readonly { readonly value: Value; readonly label: string; readonly hint?: string }[];
  readonly value: Value;
  readonly onChange: (value: Value) => void;
  /** Says the legend to screen readers only. */
  readonly quiet?: boolean;
};

export function Choices<Value extends string>(props: ChoicesProps<Value>) {
  const { name, legend, options, value, onChange, quiet } = props;
  return (
    <fieldset class="sizer-choices">
      <legend class={quiet ? 'unseen' : undefined}>{legend}</legend>
      <div class="sizer-choices-row">
        {options.map((option) => (
          <label key={option.value} class="sizer-choice">
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span class="sizer-choice-face">
              {option.label}
              {option.hint !== undefined && <small>{option.hint}</small>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
