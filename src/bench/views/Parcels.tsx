/** Parcels of an order, each with the page where it is followed, and the fields for one more. */
import { dayOf } from '#words/day.ts';
import { formatDate } from '#words/format.ts';
import { moneyWords } from '#words/words.ts';
import { PARCEL_CAPS, type Parcel } from '../book/parcels.ts';
import { parcelFacts } from '../letters/letters.ts';
import { isAttempt, typed, type FormName } from '../models/attempt.ts';
import { ChangeForm, type ChangeProps } from './ChangeForm.tsx';

type Props = ChangeProps & { readonly parcels: readonly Parcel[] };

/** What was sent, and the form for a number that came later. */
export function Parcels({ parcels, ...props }: Props) {
  const { frame, attempt } = props;
  const { next } = moneyWords(frame.lang);
  const form = { kind: 'parcel' };
  return (
    <>
      {parcels.length > 0 && (
        <>
          <h3>{next.parcels}</h3>
          <ul>
            {parcels.map((parcel) => (
              <ParcelLine parcel={parcel} frame={frame} />
            ))}
          </ul>
        </>
      )}
      <details open={isAttempt(attempt, form)}>
        <summary>{next.parcelLater}</summary>
        <ChangeForm {...props} form={form}>
          <ParcelFields {...props} form={form} />
          <button type="submit">{next.parcelButton}</button>
        </ChangeForm>
      </details>
    </>
  );
}

function ParcelLine({ parcel, frame }: { readonly parcel: Parcel; readonly frame: Props['frame'] }) {
  const { next } = moneyWords(frame.lang);
  const { link } = parcelFacts(parcel, frame.shop.orders.carriers);
  return (
    <li>
      <bdi>{next.parcelLine(formatDate(parcel.sentOn, frame.lang), parcel.carrier, parcel.tracking)}</bdi>
      {link !== null && (
        <>
          {': '}
          <a href={link} rel="noreferrer">
            {next.follow}
          </a>
        </>
      )}
    </li>
  );
}

/** Carrier, number and day. Any carrier can be typed; those of the shop are offered. */
export function ParcelFields({ entry, attempt, frame, form }: ChangeProps & { readonly form: FormName }) {
  const { next } = moneyWords(frame.lang);
  const { carriers } = frame.shop.orders;
  const id = `carriers-${form.kind}`;
  const usual = entry.document.delivery.by === 'collection' ? '' : (carriers[0]?.name ?? '');
  const value = (field: string, usual: string): string => typed(attempt, form, field, usual);
  return (
    <>
      <div class="row">
        <label>
          {next.carrier}{' '}
          <input
            name="carrier"
            list={id}
            maxLength={PARCEL_CAPS.carrier}
            autocomplete="off"
            value={value('carrier', usual)}
          />
        </label>
        <datalist id={id}>
          {carriers.map(({ name }) => (
            <option value={name} />
          ))}
        </datalist>
        <label>
          {next.tracking}{' '}
          <input
            name="tracking"
            maxLength={PARCEL_CAPS.tracking}
            autocomplete="off"
            value={value('tracking', '')}
          />
        </label>
        <label>
          {next.sentOn}{' '}
          <input type="date" name="sent-on" required value={value('sent-on', dayOf(frame.now))} />
        </label>
      </div>
      <p class="quiet">{next.parcelHint}</p>
    </>
  );
}
