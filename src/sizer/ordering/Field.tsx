/** One labelled field of the order form with its hint and what is wrong with it. */
import type { ComponentChildren } from 'preact';

export type FieldProps = {
  readonly id: string;
  readonly label: string;
  readonly hint?: string;
  readonly problem: string | null;
  /** Gets the ids that describe the field, for `aria-describedby`. */
  readonly children: (describedBy: string) => ComponentChildren;
};

export function Field({ id, label, hint, problem, children }: FieldProps) {
  return (
    <div class="sizer-field">
      <label class="sizer-label" for={id}>
        {label}
      </label>
      {children(`${id}-hint ${id}-problem`)}
      <p id={`${id}-hint`} class="sizer-hint">
        {hint}
      </p>
      <p id={`${id}-problem`} class="sizer-problem">
        {problem}
      </p>
    </div>
  );
}
