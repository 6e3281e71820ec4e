/** A form that changes an order. It says which version of the order she saw, and what was wrong the last time. */
import { underBase } from '#ui/site/base.ts';
import type { ComponentChildren } from 'preact';
import { moneyWords } from '#words/words.ts';
import type { Entry } from '../book/entry.ts';
import { isAttempt, isOfPage, type Attempt, type FormName } from '../models/attempt.ts';
import type { Frame } from '../models/frame.ts';

export type ChangeProps = {
  readonly entry: Entry;
  readonly attempt: Attempt | null;
  readonly frame: Frame;
};

type Props = ChangeProps & {
  readonly form: FormName;
  readonly class?: string;
  readonly children: ComponentChildren;
};

export function ChangeForm({ entry, attempt, frame, form, class: look, children }: Props) {
  return (
    <form class={look} method="post" action={underBase(`/bench/orders/${entry.document.number}/change/`)}>
      {isAttempt(attempt, form) && !isOfPage(attempt) && <Refused attempt={attempt} frame={frame} />}
      <input type="hidden" name="version" value={entry.version} />
      <input type="hidden" name="kind" value={form.kind} />
      {form.id !== undefined && <input type="hidden" name="id" value={form.id} />}
      {children}
    </form>
  );
}

/** What was wrong, where the eye and the keyboard are then. */
export function Refused({ attempt, frame }: { readonly attempt: Attempt; readonly frame: Frame }) {
  return (
    <p class="warning" role="alert" tabIndex={-1} autofocus>
      {moneyWords(frame.lang).problem(attempt.problem, frame.format)}
    </p>
  );
}
