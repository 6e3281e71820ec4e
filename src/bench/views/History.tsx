/** What happened to an order, and when, by the maker's clock. */
import { formatDate, formatDateTime, formatMoney } from '#words/format.ts';
import { atBoardWords, moneyWords } from '#words/words.ts';
import type { Event } from '../book/entry.ts';
import type { Payment } from '../book/payments.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';

export function History({ detail, frame }: { detail: OrderDetail; frame: Frame }) {
  const { words, lang } = frame;
  return (
    <section aria-labelledby="history">
      <h2 id="history">{words.order.history}</h2>
      <ol class="history">
        {detail.events.map((event) => (
          <li>
            <time dateTime={event.at}>{formatDateTime(event.at, lang)}</time>{' '}
            <bdi class="note">{eventSentence(event, detail, frame)}</bdi>
          </li>
        ))}
      </ol>
      {detail.boardTime.length > 0 && (
        <ul class="history">
          {detail.boardTime.map(({ day, seconds }) => (
            <li>
              {atBoardWords(lang).timeOn(
                formatDate(day, lang),
                Math.max(1, Math.round(seconds / 60)),
                frame.format,
              )}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** Ways, states, days, names of letters and ids of payments are kept as codes. */
function eventSentence(event: Event, { money, parcels }: OrderDetail, { words, lang }: Frame): string {
  const { events, letterNames } = words.order;
  const letters: Readonly<Record<string, string>> = letterNames;
  switch (event.kind) {
    case 'received':
      return events.received(event.text);
    case 'state':
      return events.state(event.text);
    case 'due':
      return events.due(event.text === '' ? '' : formatDate(event.text, lang));
    case 'message':
      return events.message(letters[event.text] ?? event.text);
    case 'note':
      return events.note(event.text);
    case 'reason':
      return moneyWords(lang).next.reasonGiven(event.text);
    case 'erased':
      return events.erased();
    case 'looked-over':
      return events.lookedOver;
    case 'invoice':
      return moneyWords(lang).events.invoice(event.text);
    case 'address':
      return moneyWords(lang).events.address;
    case 'parcel': {
      const parcel = parcels.find(({ id }) => String(id) === event.text);
      const day = parcel === undefined ? '' : formatDate(parcel.sentOn, lang);
      return moneyWords(lang).events.parcel(day, parcel?.carrier ?? '');
    }
    case 'payment':
    case 'struck':
      return paymentSentence(
        event.kind,
        money.payments.find(({ id }) => String(id) === event.text),
        lang,
      );
  }
}

function paymentSentence(
  kind: 'payment' | 'struck',
  payment: Payment | undefined,
  lang: Frame['lang'],
): string {
  if (payment === undefined) return '';
  const { events } = moneyWords(lang);
  const sum = formatMoney(payment.minor, payment.currency, lang);
  if (kind === 'struck') return events.struck(sum);
  return events.payment(payment.kind, sum, payment.way, formatDate(payment.day, lang));
}
