/** Name, e-mail, number of pieces, delivery and note; a summary; and the button that sends. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { CAPS } from '#order/document.ts';
import type { Format } from '#words/format.ts';
import type { OrderWords } from '#words/words.ts';
import type { OrderRow } from '#words/orderFacts.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { PostForSizer, PostTarget } from '../model/input.ts';
import { EMPTY_FORM, type FormField, type FormProblems, type OrderForm } from './model/form.ts';
import { isUntouched } from './model/draft.ts';
import { DeliveryFields } from './DeliveryFields.tsx';
import { Field } from './Field.tsx';
import { Rows } from '../controls/Rows.tsx';

export type OrderFormViewProps = {
  readonly words: OrderWords;
  readonly format: Format;
  /** null: the order is prepared for e-mail. */
  readonly postTo: PostTarget | null;
  /** For the one that lies finished: then there is no number to choose. */
  readonly ready: boolean;
  /** How it can reach the buyer; null: nothing is asked. */
  readonly post: PostForSizer | null;
  /** What posting comes to, as it is told; '' where nothing is posted. */
  readonly postage: (form: OrderForm) => string;
  /** What would be ordered with the form as it stands. */
  readonly summary: (form: OrderForm) => readonly OrderRow[];
  /** Everything that is wrong with it; empty where it can go. */
  readonly check: (form: OrderForm) => FormProblems;
  /** As it was left, or empty. */
  readonly begun: OrderForm;
  /** True where she has just opened it: then it gets the focus. */
  readonly focus: boolean;
  readonly onFocused: () => void;
  /** Called with each change, null where she clears it. */
  readonly onChange: (form: OrderForm | null) => void;
  readonly onOrder: (form: OrderForm) => void;
};

/** In the order in which they stand: the first with a problem gets the focus. */
const FIELDS: readonly FormField[] = [
  ...(['name', 'email', 'quantity'] as const),
  ...(['to-name', 'to-line1', 'to-line2', 'to-town', 'to-region', 'to-postcode', 'to-country'] as const),
  'note',
];

export function OrderFormView(props: OrderFormViewProps) {
  const { words, format, postTo, ready, post, postage, summary, check, begun, onChange, onOrder } = props;
  const [form, setForm] = useState(begun);
  const [problems, setProblems] = useState<FormProblems>({});
  const element = useRef<HTMLFormElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  // It may open far below the button that opened it.
  useEffect(() => {
    if (!props.focus) return;
    title.current?.focus();
    props.onFocused();
  }, [ready]);
  const change = (part: Partial<OrderForm>) => {
    const next = { ...form, ...part };
    setForm(next);
    onChange(next);
  };
  const clear = () => {
    setForm(EMPTY_FORM);
    setProblems({});
    onChange(null);
    title.current?.focus();
  };
  const now = Object.keys(problems).length === 0 ? problems : check(form);
  const problemOf = (field: FormField) => {
    // What was wrong and has been put right since says no more.
    const problem = problems[field] === undefined ? undefined : now[field];
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
  const common = (field: 'name' | 'email' | 'quantity' | 'note', describedBy: string) => ({
    id: `order-${field}`,
    name: field,
    class: 'sizer-input',
    value: form[field],
    'aria-describedby': describedBy,
    'aria-invalid': problemOf(field) !== null,
  });
  return (
    <form ref={element} class="sizer-form" noValidate onSubmit={submit}>
      <h3 ref={title} tabIndex={-1}>
        {words.title}
      </h3>
      <p class="sizer-hint">{words.draftKept}</p>
      {!isUntouched(form) && (
        <button type="button" class="button plain" onClick={clear}>
          {words.clearForm}
        </button>
      )}
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
      {!ready && (
        <Field id="order-quantity" label={words.quantity} problem={problemOf('quantity')}>
          {(ids) => (
            <input
              {...common('quantity', ids)}
              inputMode="numeric"
              onInput={(event) => change({ quantity: event.currentTarget.value })}
            />
          )}
        </Field>
      )}
      {post !== null && (
        <DeliveryFields
          words={words}
          format={format}
          post={post}
          form={form}
          change={change}
          problemOf={problemOf}
          postage={postage(form)}
        />
      )}
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
