/** What happened to an order, and when, by the maker's clock. */
import { formatDateTime } from '#words/format.ts';
import type { Event } from '../book/entry.ts';
import type { Frame } from '../page/frame.ts';

export function History({ events, frame: { words, lang } }: { events: readonly Event[]; frame: Frame }) {
  return (
    <section aria-labelledby="history">
      <h2 id="history">{words.order.history}</h2>
      <ol class="history">
        {events.map(({ at, kind, text }) => (
          <li>
            <time dateTime={at}>{formatDateTime(at, lang)}</time>{' '}
            <bdi class="note">{words.order.events[kind](text)}</bdi>
          </li>
        ))}
      </ol>
    </section>
  );
}
