/** What happened to an order, and when, by the maker's clock. */
import type { BenchWords } from '#words/words.ts';
import { formatDate, formatDateTime } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { Event } from '../book/entry.ts';
import type { Frame } from '../models/frame.ts';

export function History({ events, frame: { words, lang } }: { events: readonly Event[]; frame: Frame }) {
  return (
    <section aria-labelledby="history">
      <h2 id="history">{words.order.history}</h2>
      <ol class="history">
        {events.map((event) => (
          <li>
            <time dateTime={event.at}>{formatDateTime(event.at, lang)}</time>{' '}
            <bdi class="note">{eventSentence(event, words, lang)}</bdi>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Ways, states, days and names of letters are kept as codes. */
function eventSentence(event: Event, { order }: BenchWords, lang: Lang): string {
  const { events, letterNames } = order;
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
    case 'erased':
      return events.erased();
  }
}
