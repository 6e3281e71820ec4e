/** Every save of the content, with its lines and a button that takes it back. */
import { underBase } from '#ui/site/base.ts';
import { formatDateTime } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { ContentHistoryWords } from '#words/words.ts';
import type { HistoryItem, HistoryPage } from '../../models/content/history.ts';
import type { Shown } from '../../models/content/lineDifference.ts';

type Props = {
  readonly page: HistoryPage;
  /** Not the newest. */
  readonly isOlder: boolean;
  readonly words: ContentHistoryWords;
  readonly lang: Lang;
};

function Difference({ lines, words }: { lines: readonly Shown[]; words: ContentHistoryWords }) {
  return (
    <ol class="difference" tabIndex={0} aria-label={words.see}>
      {lines.map((line) => {
        if (line.kind === 'left') return <li class="left">{words.left(line.count)}</li>;
        if (line.kind === 'both') return <li>{line.text}</li>;
        const [Mark, said] =
          line.kind === 'old' ? (['del', words.old] as const) : (['ins', words.new] as const);
        return (
          <li class={line.kind}>
            <span class="unseen">{said} </span>
            <Mark>{line.text}</Mark>
          </li>
        );
      })}
    </ol>
  );
}

function Save({ item, words, lang }: { item: HistoryItem; words: ContentHistoryWords; lang: Lang }) {
  return (
    <li>
      <h2>
        <bdi>{item.name}</bdi>, {words.action(item.action)}
      </h2>
      <p>
        <time dateTime={item.at}>{formatDateTime(item.at, lang)}</time> ·{' '}
        <span class="file">{item.file}</span>
      </p>
      {item.fields.length > 0 && <p>{words.fields(item.fields)}</p>}
      <details>
        <summary>{words.see}</summary>
        <Difference lines={item.lines} words={words} />
      </details>
      {item.undone ? (
        <p>{words.undone}</p>
      ) : (
        <form method="post" action={underBase('/bench/history/')}>
          <input type="hidden" name="save" value={String(item.id)} />
          <button type="submit" aria-label={words.undo(item.name)}>
            {words.undoShort}
          </button>
        </form>
      )}
    </li>
  );
}

export function HistoryView({ page, isOlder, words, lang }: Props) {
  return (
    <>
      <p>{words.lead}</p>
      {page.items.length === 0 && <p>{words.none}</p>}
      <ol class="saves">
        {page.items.map((item) => (
          <Save item={item} words={words} lang={lang} />
        ))}
      </ol>
      <p class="row">
        {isOlder && <a href={underBase('/bench/history/')}>{words.newest}</a>}
        {page.older !== null && <a href={underBase(`/bench/history/?before=${page.older}`)}>{words.older}</a>}
      </p>
    </>
  );
}
