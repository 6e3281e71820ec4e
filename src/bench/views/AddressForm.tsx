/** Where an order goes, written down or put right after the buyer has answered. */
import { COUNTRIES } from '#core/post/countries.ts';
import { ADDRESS_CAPS, ADDRESS_PARTS, type Address } from '#order/document.ts';
import { countriesByName } from '#words/format.ts';
import { handWords } from '#words/words.ts';
import { isAttempt, typed } from '../models/attempt.ts';
import { ChangeForm, type ChangeProps } from './ChangeForm.tsx';

const FORM = { kind: 'address' };
const REQUIRED: readonly (keyof Address)[] = ['name', 'line1'];
const LABELS = { name: 'to', line1: 'line1', line2: 'line2', town: 'town', region: 'region' } as const;

export function AddressForm(props: ChangeProps) {
  const { entry, attempt, frame } = props;
  const words = handWords(frame.lang);
  const { delivery, buyer } = entry.document;
  if (entry.erasedAt !== null) return null;
  const usual = (part: keyof Address): string =>
    delivery.by === 'post' ? delivery.to[part] : part === 'name' ? buyer.name : '';
  const value = (part: keyof Address): string => typed(attempt, FORM, `to-${part}`, usual(part));
  return (
    <>
      {delivery.by === 'unsaid' && <p class="warning">{words.later.missing}</p>}
      <details open={isAttempt(attempt, FORM)}>
        <summary>{words.later.summary}</summary>
        <ChangeForm {...props} form={FORM}>
          <div class="fields">
            {ADDRESS_PARTS.filter((part) => part !== 'country').map((part) => (
              <div class="field">
                <label for={`to-${part}`}>{part === 'postcode' ? words.postcode : words[LABELS[part]]}</label>
                <input
                  id={`to-${part}`}
                  name={`to-${part}`}
                  value={value(part)}
                  maxLength={ADDRESS_CAPS[part]}
                  required={REQUIRED.includes(part)}
                  autocomplete="off"
                  dir="auto"
                />
              </div>
            ))}
            <div class="field">
              <label for="to-country">{words.country}</label>
              <select id="to-country" name="to-country" required>
                <option value="">{words.chooseCountry}</option>
                {countriesByName(COUNTRIES, frame.lang).map(([code, name]) => (
                  <option value={code} selected={code === value('country')}>
                    {name}
                  </option>
                ))}
              </select>
            </div>
          </div>
          <p class="row">
            <button type="submit" name="by" value="post">
              {words.later.post}
            </button>
            <button type="submit" name="by" value="collection" formNoValidate>
              {words.later.collect}
            </button>
          </p>
        </ChangeForm>
      </details>
    </>
  );
}
