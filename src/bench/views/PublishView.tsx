/** Publishing: what will change, how far it is, what came of it, and the way back. */
import { explain, type Problem } from '#catalogue/read/problem.ts';
import { formatDateTime } from '#words/format.ts';
import { underBase } from '#ui/site/base.ts';
import { hostingWords, publishWords } from '#words/words.ts';
import type { Changed } from '#words/publishing.ts';
import { isNothing, type ChangedKind, type Changes } from '#release/changes.ts';
import type { FileStanding } from '../stock/files.ts';
import type { Frame } from '../models/frame.ts';
import { howFar } from '../models/howFar.ts';
import type { Standing } from '../publish/standing.ts';
import { Running } from './Running.tsx';
import { SureForm } from './SureForm.tsx';

type Props = {
  readonly frame: Frame;
  readonly standing: Standing;
  /** Stock that is written out with it. */
  readonly waiting?: FileStanding['toWrite'];
};

export function PublishView({ frame, standing, waiting = [] }: Props) {
  const words = publishWords(frame.lang);
  const hosting = hostingWords(frame.lang);
  const { progress, servedSince, problems, changes, before } = standing;
  if (progress.state === 'running') {
    return <Running far={howFar(progress, words)} words={words} asks="/bench/publish/progress.json" />;
  }
  const when = (iso: string): string => formatDateTime(iso, frame.lang);
  return (
    <>
      <Outcome frame={frame} standing={standing} />
      <p>{words.lead}</p>
      {servedSince !== null && <p>{words.since(when(servedSince))}</p>}
      {problems.length > 0 && (
        <section aria-labelledby="mend">
          <h2 id="mend">{words.mend}</h2>
          <p>{words.mendLead}</p>
          <Problems frame={frame} problems={problems} />
        </section>
      )}
      {changes !== null && (waiting.length === 0 || !isNothing(changes)) && (
        <Changing frame={frame} changes={changes} />
      )}
      <Waiting frame={frame} waiting={waiting} />
      {problems.length === 0 && (
        <form method="post" action={underBase('/bench/publish/begin/')}>
          <button class="main" type="submit">
            {changes !== null && isNothing(changes) && waiting.length === 0 ? words.again : words.button}
          </button>
        </form>
      )}
      {servedSince !== null && (
        <section aria-labelledby="elsewhere">
          <h2 id="elsewhere">{hosting.title}</h2>
          <p>{hosting.lead}</p>
          <p class="row">
            <a href={underBase('/bench/publish/shop.zip')}>{hosting.zip}</a>
            <a href={underBase('/bench/publish/host/')}>{hosting.way}</a>
          </p>
        </section>
      )}
      {before !== null && (
        <section aria-labelledby="back">
          <h2 id="back">{words.back}</h2>
          <p>{words.backLead(when(before))}</p>
          <SureForm
            action={underBase('/bench/publish/back/')}
            sure={words.backSure}
            button={words.backButton}
          />
        </section>
      )}
    </>
  );
}

function Outcome({ frame, standing: { progress } }: Props) {
  const words = publishWords(frame.lang);
  if (progress.state === 'none' || progress.state === 'running') return null;
  const when = formatDateTime(progress.at, frame.lang);
  if (progress.state === 'done') {
    const sentence = {
      made: words.made(when, frame.format.number(progress.seconds, 1)),
      same: words.same(when),
      'taken-back': words.takenBack(when),
    }[progress.outcome];
    return (
      <p class="good" role="status">
        {sentence}
      </p>
    );
  }
  const { problems, said } = progress;
  return (
    <div class="warning" role="alert">
      <p>{words.failed(when)}</p>
      {problems.length === 0 && said === '' && <p>{words.stopped}</p>}
      {problems.length > 0 && <Problems frame={frame} problems={problems} />}
      {said !== '' && (
        <details>
          <summary>{words.said}</summary>
          <pre>{said}</pre>
        </details>
      )}
    </div>
  );
}

function Problems({ frame, problems }: { readonly frame: Frame; readonly problems: readonly Problem[] }) {
  return (
    <ul>
      {problems.map((problem) => {
        const { what, fix } = explain(problem, frame.lang);
        const { file, line, field } = problem;
        return (
          <li>
            <b>{file}</b>, {line}
            {field !== '' && `, ${field}`}: {what} {fix}
          </li>
        );
      })}
    </ul>
  );
}

function Waiting({ frame, waiting }: { readonly frame: Frame } & Required<Pick<Props, 'waiting'>>) {
  const words = publishWords(frame.lang);
  if (waiting.length === 0) return null;
  return (
    <section aria-labelledby="stock">
      <h2 id="stock">{words.stock}</h2>
      <p>{words.stockLead}</p>
      <ul>
        {waiting.map(({ thing, free }) => (
          <li>
            <a href={underBase(`/bench/stock/parts/${thing.id}/`)}>{thing.name}</a>:{' '}
            {frame.format.number(free)}
          </li>
        ))}
      </ul>
    </section>
  );
}

const KINDS = ['pieces', 'components', 'wires', 'guides'] as const satisfies readonly ChangedKind[];

/** Where the bench shows an entry; null for what is gone. */
function placeOf(kind: ChangedKind, { id, how }: Changed): string | null {
  if (how === 'gone') return null;
  const place = {
    pieces: `/bench/pieces/${id}/words/`,
    components: `/bench/trays/${id}/`,
    wires: `/bench/wires/${id}/`,
    // Its language comes with it: `en/care`.
    guides: `/bench/guides/${id}/`,
  } as const;
  return underBase(place[kind]);
}

function Changing({ frame, changes }: { readonly frame: Frame; readonly changes: Changes }) {
  const words = publishWords(frame.lang);
  if (isNothing(changes)) return <p>{words.nothing}</p>;
  return (
    <section aria-labelledby="will">
      <h2 id="will">{words.will}</h2>
      {changes.shop && (
        <p>
          <a href={underBase('/bench/shop/')}>{words.shop}</a>
        </p>
      )}
      {KINDS.filter((kind) => changes[kind].length > 0).map((kind) => (
        <>
          <h3>{words.kinds[kind]}</h3>
          <ul>
            {changes[kind].map((one) => {
              const place = placeOf(kind, one);
              return (
                <li>
                  {place === null ? one.name : <a href={place}>{one.name}</a>}: {words.how[one.how]}
                </li>
              );
            })}
          </ul>
        </>
      ))}
    </section>
  );
}
