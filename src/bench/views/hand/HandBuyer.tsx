/** Who it is for, how it came, and where it goes. */
import { CAPS } from '#order/document.ts';
import { LANGS } from '#words/lang.ts';
import { HandInput, HandSelect, HandText, optionsOf, type HandProps } from './HandInput.tsx';

export function HandBuyer(props: HandProps) {
  const { sheet, frame, words } = props;
  const { fields } = sheet.order;
  const ways = [{ value: '', label: words.chooseWay }, ...optionsOf(words.ways)];
  const own = { ...sheet, order: { ...sheet.order, fields: { ...fields, lang: fields.lang || frame.lang } } };
  return (
    <fieldset>
      <legend>{words.theBuyer}</legend>
      <div class="fields">
        <HandInput {...props} name="name" label={words.name} maxLength={CAPS.name} />
        <HandInput {...props} name="email" label={words.email} maxLength={CAPS.email} type="email" />
        <HandInput {...props} name="phone" label={words.phone} maxLength={40} type="tel" />
        <HandSelect {...props} name="way" label={words.way} groups={[{ heading: null, options: ways }]} />
        <HandSelect
          {...props}
          sheet={own}
          name="lang"
          label={words.lang}
          groups={[{ heading: null, options: LANGS.map((lang) => ({ value: lang, label: NAMES[lang] })) }]}
        />
        <HandSelect
          {...props}
          name="delivery"
          label={words.delivery}
          groups={[{ heading: null, options: optionsOf(words.deliveries) }]}
        />
      </div>
      <HandText {...props} name="note" label={words.note} maxLength={CAPS.note} />
      <Address {...props} />
    </fieldset>
  );
}

/** Each language by its own name, alike for every reader. */
const NAMES = { en: 'English', de: 'Deutsch' } as const;

function Address(props: HandProps) {
  const { sheet, words } = props;
  const line = CAPS.addressLine;
  const countries = sheet.countries.map(([value, label]) => ({ value, label }));
  return (
    <fieldset class="fields">
      <legend>{words.address}</legend>
      <HandInput {...props} name="to" label={words.to} maxLength={CAPS.name} />
      <HandInput {...props} name="line1" label={words.line1} maxLength={line} />
      <HandInput {...props} name="line2" label={words.line2} maxLength={line} />
      <HandInput {...props} name="town" label={words.town} maxLength={line} />
      <HandInput {...props} name="region" label={words.region} maxLength={line} />
      <HandInput {...props} name="postcode" label={words.postcode} maxLength={CAPS.postcode} />
      <HandSelect
        {...props}
        name="country"
        label={words.country}
        groups={[{ heading: null, options: [{ value: '', label: words.chooseCountry }, ...countries] }]}
      />
    </fieldset>
  );
}
