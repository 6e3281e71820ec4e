/** Name, e-mail, note and number of pieces; a summary; and the button that sends. */
import { useRef, useState } from 'preact/hooks';
import { CAPS } from '#order/document.ts';
import type { Format } from '#words/format.ts';
import type { OrderWords } from '#words/words.ts';
import type { OrderRow } from '#words/orderFacts.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { PostTarget } from '../model/input.ts';
import { EMPTY_FORM, type FormProblems, type OrderForm } from './model/form.ts';
import { Field } from './Field.tsx';
import { Rows } from '../controls/Rows.tsx';

export type OrderFormViewProps = {
  readonly words: OrderWords;
  readonly format: Format;
  /** null: the order is prepared for e-mail. */
  readonly postTo: PostTarget | null;
  /** What would be ordered with the form as it stands. */
  readonly summary: (form: OrderForm) => readonly OrderRow[];
  /** Everything that is wrong with it; empty where it can go. */
  readonly check: (form: OrderForm) => FormProblems;
  readonly onOrder: (form: OrderForm) => void;
};

const FIELDS = ['name', 'email', 'quantity', 'note'] as const;

export function OrderFormView({ words, format, postTo, summary, check, onOrder }: OrderFormViewProps) {
  const [form, setForm] = useState(EMPTY_FORM);
  const [problems, setProblems] = useState<FormProblems>({});
  const element = useRef<HTMLFormElement>(null);
  const change = (part: Partial<OrderForm>) => setForm({ ...form, ...part });
  const problemOf = (field: (typeof FIELDS)[number]) => {
    const problem = problems[field];
    return problem === undefined ? null : sentenceOf(words.formProblems, problem, format);
  };
  const submit = (event: Event) => {
    event.preventDefault();
    const found = check(form);
    setProblems(found);
    const first = FIELDS.find((field) => found[field] !== undefined);
    if (first === undefined) onOrder(form);
    else element.current?.querySelector<HTMLElement>(`[name="${first}"]`)?.focus();
  };
  const common = (field: (typeof FIELDS)[number], describedBy: string) => ({
    id: `order-${field}`,
    name: field,
    class: 'sizer-input',
    value: form[field],
    'aria-describedby': describedBy,
    'aria-invalid': problems[field] !== undefined,
  });
  return (
    <form ref={element} class="sizer-form" noValidate onSubmit={submit}>
      <h3 tabIndex={-1}>{words.title}</h3>
      <Field id="order-name" label={words.name} problem={problemOf('name')}>
        {(ids) => (
          <input
            {...common('name', ids)}
            autocomplete="name"
            maxLength={CAPS.name}
            required
            onInput={(event) => change({ name: event.currentTarget.value })}
          />
        )}
      </Field>
      <Field id="order-email" label={words.email} problem={problemOf('email')}>
        {(ids) => (
          <input
            {...common('email', ids)}
            type="email"
            autocomplete="email"
            required
            onInput={(event) => change({ email: event.currentTarget.value })}
          />
        )}
      </Field>
      <Field id="order-quantity" label={words.quantity} problem={problemOf('quantity')}>
        {(ids) => (
          <input
            {...common('quantity', ids)}
            inputMode="numeric"
            onInput={(event) => change({ quantity: event.currentTarget.value })}
          />
        )}
      </Field>
      <Field id="order-note" label={words.note} hint={words.noteHint} problem={problemOf('note')}>
        {(ids) => (
          <textarea
            {...common('note', ids)}
            rows={3}
            onInput={(event) => change({ note: event.currentTarget.value })}
          />
        )}
      </Field>
      <div class="sizer-trap" aria-hidden="true">
        <label for="order-website">{words.trap}</label>
        <input
          id="order-website"
          name="website"
          tabIndex={-1}
          autocomplete="off"
          value={form.trap}
          onInput={(event) => change({ trap: event.currentTarget.value })}
        />
      </div>
      <h4>{words.summary}</h4>
      <Rows rows={summary(form)} />
      <p class="sizer-hint">
        {words.sendHint}{' '}
        {postTo?.kind === 'form' ? words.privacyForm(new URL(postTo.address).host) : words.privacy}
      </p>
      <button type="submit" class="button">
        {postTo !== null ? words.send : words.prepare}
      </button>
    </form>
  );
}
