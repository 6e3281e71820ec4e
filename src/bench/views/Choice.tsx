/** A choice of a few values, each with what it is called. */
type ChoiceProps<Value extends string> = {
  readonly name: string;
  readonly label: string;
  readonly all: readonly Value[];
  readonly chosen: Value;
  readonly say: Readonly<Record<Value, string>>;
};

export function Choice<Value extends string>({ name, label, all, chosen, say }: ChoiceProps<Value>) {
  return (
    <label>
      {label}
      <select name={name}>
        {all.map((value) => (
          <option value={value} selected={value === chosen}>
            {say[value]}
          </option>
        ))}
      </select>
    </label>
  );
}
