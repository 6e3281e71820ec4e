/** How the pieces reach the buyer: by post to an address, or collected; and what posting comes to. */
import { ADDRESS_CAPS, type Address } from '#order/document.ts';
import { countriesByName, type Format } from '#words/format.ts';
import type { OrderWords } from '#words/words.ts';
import type { PostForSizer } from '../model/input.ts';
import { Choices } from '../controls/Choices.tsx';
import { Field } from './Field.tsx';
import { codesOf, countryOf, wayOf } from './model/delivery.ts';
import type { FormField, OrderForm } from './model/form.ts';

export type DeliveryFieldsProps = {
  readonly words: OrderWords;
  readonly format: Format;
  readonly post: PostForSizer;
  readonly form: OrderForm;
  readonly change: (part: Partial<OrderForm>) => void;
  readonly problemOf: (field: FormField) => string | null;
  /** What posting comes to, as it is told; '' where nothing is posted. */
  readonly postage: string;
};

/** Each part with its autofill field (HTML, 4.10.18.7.1), in the order in which forms ask for them. */
const PARTS = [
  ['name', 'name'],
  ['line1', 'address-line1'],
  ['line2', 'address-line2'],
  ['town', 'address-level2'],
  ['region', 'address-level1'],
  ['postcode', 'postal-code'],
] as const;
const REQUIRED: readonly (keyof Address)[] = ['line1', 'town'];

export function DeliveryFields(props: DeliveryFieldsProps) {
  const { words, post, form, change, postage } = props;
  const way = wayOf(post, form);
  const both = post.collection !== null && post.rules.groups.length > 0;
  return (
    <div class="sizer-delivery">
      {both ? (
        <Choices
          name="way"
          legend={words.delivery.title}
          options={(['post', 'collection'] as const).map((value) => ({
            value,
            label: words.delivery.ways[value],
          }))}
          value={form.way}
          onChange={(value) => change({ way: value })}
        />
      ) : (
        <h4>{words.delivery.title}</h4>
      )}
      {way === 'post' && <AddressFields {...props} />}
      {way === 'collection' && <p>{words.delivery.collect(post.collection ?? '')}</p>}
      <p class="sizer-postage" role="status">
        {postage}
      </p>
    </div>
  );
}

function AddressFields({ words, format, post, form, change, problemOf }: DeliveryFieldsProps) {
  const { address } = form;
  const { parts } = words.delivery;
  const write = (part: keyof Address, value: string) => change({ address: { ...address, [part]: value } });
  const common = (part: keyof Address, describedBy: string) => ({
    id: `order-to-${part}`,
    name: `to-${part}`,
    class: 'sizer-input',
    'aria-describedby': describedBy,
    'aria-invalid': problemOf(`to-${part}`) !== null,
    required: REQUIRED.includes(part),
  });
  return (
    <>
      {PARTS.map(([part, autofill]) => (
        <Field key={part} id={`order-to-${part}`} label={parts[part]} problem={problemOf(`to-${part}`)}>
          {(ids) => (
            <input
              {...common(part, ids)}
              autocomplete={`shipping ${autofill}`}
              maxLength={ADDRESS_CAPS[part]}
              value={address[part]}
              onInput={(event) => write(part, event.currentTarget.value)}
            />
          )}
        </Field>
      ))}
      <Field id="order-to-country" label={parts.country} problem={problemOf('to-country')}>
        {(ids) => (
          <select
            {...common('country', ids)}
            autocomplete="shipping country"
            value={countryOf(post, form)}
            onChange={(event) => write('country', event.currentTarget.value)}
          >
            {countriesByName(codesOf(post.countries), format.lang).map(([code, name]) => (
              <option key={code} value={code}>
                {name}
              </option>
            ))}
          </select>
        )}
      </Field>
    </>
  );
}
