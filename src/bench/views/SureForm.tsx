/** A form that does what can't be taken back: it asks whether she is sure. */
import type { ComponentChildren } from 'preact';

type Props = {
  readonly action: string;
  /** What she agrees to. */
  readonly sure: string;
  readonly button: string;
  /** True where a file goes with it. */
  readonly upload?: boolean;
  /** Fields before the question. */
  readonly children?: ComponentChildren;
};

export function SureForm({ action, sure, button, upload = false, children }: Props) {
  return (
    <form method="post" action={action} encType={upload ? 'multipart/form-data' : undefined}>
      {children}
      <label>
        <input type="checkbox" name="sure" value="yes" required /> {sure}
      </label>
      <button type="submit">{button}</button>
    </form>
  );
}
