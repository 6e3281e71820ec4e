/** Two versions of one file side by side: what stands there, and what was to stand there again. */
import type { ContentHistoryWords } from '#words/words.ts';
import type { Conflict } from '../../content/entry.ts';
import { lineDifference, type Line } from '../../models/content/lineDifference.ts';

type Props = {
  readonly conflict: Pick<Conflict, 'file' | 'yours' | 'now'>;
  readonly words: ContentHistoryWords['conflict'];
};

function Version(props: {
  title: string;
  id: string;
  lines: readonly Line[];
  none: string | null;
  differs: string;
}) {
  const { title, id, lines, none, differs } = props;
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      {none === null ? (
        <ol class="difference" tabIndex={0} aria-labelledby={id}>
          {lines.map(({ kind, text }) =>
            kind === 'both' ? (
              <li>{text}</li>
            ) : (
              <li class={kind}>
                <span class="unseen">{differs} </span>
                <mark>{text}</mark>
              </li>
            ),
          )}
        </ol>
      ) : (
        <p>{none}</p>
      )}
    </section>
  );
}

export function ConflictView({ conflict, words }: Props) {
  const { file, yours, now } = conflict;
  const lines = lineDifference(now, yours);
  return (
    <section class="conflict" role="alert" aria-labelledby="conflict">
      <h2 id="conflict">{words.title}</h2>
      <p>{words.lead}</p>
      <p class="file">{file}</p>
      <div class="columns">
        <Version
          {...{ title: words.now, id: 'version-now', differs: words.differs }}
          lines={lines.filter(({ kind }) => kind !== 'new')}
          none={now === null ? words.gone : null}
        />
        <Version
          {...{ title: words.yours, id: 'version-yours', differs: words.differs }}
          lines={lines.filter(({ kind }) => kind !== 'old')}
          none={yours === null ? words.none : null}
        />
      </div>
    </section>
  );
}
