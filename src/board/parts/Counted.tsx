/** A whole number: typed, or one up or down at a tap. */
type Props = {
  readonly label: string;
  /** The label stands beside it already and is only spoken. */
  readonly hidden?: boolean;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** What the buttons are called. */
  readonly fewer: string;
  readonly more: string;
  readonly onChange: (value: number) => void;
};

export function Counted({ label, hidden = false, value, least, most, fewer, more, onChange }: Props) {
  const set = (next: number): void => {
    if (Number.isInteger(next) && next >= least && next <= most && next !== value) onChange(next);
  };
  return (
    <span class="counted" role="group" aria-label={label}>
      {!hidden && <span class="counted-name">{label}</span>}
      <button type="button" aria-label={fewer} onClick={() => set(value - 1)}>
        −
      </button>
      <input
        type="text"
        inputMode="numeric"
        aria-label={label}
        size={3}
        value={value}
        onFocus={(event) => event.currentTarget.select()}
        onChange={(event) => {
          set(Number(event.currentTarget.value));
          event.currentTarget.value = String(value);
        }}
      />
      <button type="button" aria-label={more} onClick={() => set(value + 1)}>
        +
      </button>
    </span>
  );
}
