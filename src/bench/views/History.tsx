/** What happened to an order, and when, by the maker's clock. */
import type { BenchWords } from '#words/bench.ts';
import { formatDate, formatDateTime } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { Event } from '../book/entry.ts';
import type { Frame } from '../models/frame.ts';

export function History({ events, frame: { words, lang } }: { events: readonly Event[]; frame: Frame }) {
  return (
    <section aria-labelledby="history">
      <h2 id="history">{words.order.history}</h2>
      <ol class="history">
        {events.map(({ at, kind, text }) => (
          <li>
            <time dateTime={at}>{formatDateTime(at, lang)}</time>{' '}
            <bdi class="note">{words.order.events[kind](spoken(kind, text, words, lang))}</bdi>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Days and names of letters are kept as codes. */
function spoken(kind: Event['kind'], text: string, words: BenchWords, lang: Lang): string {
  if (kind === 'due' && text !== '') return formatDate(text, lang);
  const names: Readonly<Record<string, string>> = words.order.letterNames;
  return kind === 'message' ? (names[text] ?? text) : text;
}
