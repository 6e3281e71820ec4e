/** The steps at the board, one at a time and large. Every button is a form's, so that it works without a script too. */
import { underBase } from '#ui/site/base.ts';
import { isCaution } from '#core/instructions/step.ts';
import { atBoardWords, benchCardWords, type AtBoardWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import type { WalkSheet } from '../../models/steps/sheet.ts';
import { MOST_PIECES, stepsAddress, subjectText } from '../../models/steps/subject.ts';
import { stopAt, type WalkStop } from '../../models/steps/walk.ts';
import { drawFigures, figuresOf, type Figure } from './figures.ts';
import { stopText, type StopText } from './stopText.ts';
import { walkData } from './walkData.ts';

type Props = {
  readonly sheet: WalkSheet;
  /** Ticks done, as this page shows it. */
  readonly place: number;
  /** At the bench itself other pages are a click away; on a paired device there are only cards and steps. */
  readonly atBench: boolean;
  readonly frame: Frame;
};

export function WalkView(props: Props) {
  const { sheet, place, frame } = props;
  const { walk } = sheet;
  const words = atBoardWords(frame.lang);
  const shown = place >= walk.total ? walk.stops.length : stopAt(walk, place);
  const texts = walk.stops.map((stop) => stopText(sheet, stop, frame));
  const at = walk.stops[shown]?.ticks[place - (walk.stops[shown]?.from ?? 0)] ?? null;
  const lit = at === null ? [] : figuresOf(sheet, at);
  return (
    <article class="walk" data-place={place}>
      <Head {...props} />
      <Notices {...props} />
      <div class="board" data-figures>
        {drawFigures(sheet, at, frame).map((figure) => (
          <Drawn figure={figure} hidden={at !== null && !lit.includes(figure.name)} />
        ))}
      </div>
      <form method="post" action={underBase('/bench/steps/keep/')} class="at-hand" data-walk>
        <input type="hidden" name="subject" value={subjectText(sheet.subject)} />
        <input type="hidden" name="digest" value={walk.digest} />
        <input type="hidden" name="version" value={sheet.kept?.version ?? 0} />
        {walk.stops.map((stop, index) => (
          <StopSection
            key={index}
            {...{ stop, words, place }}
            text={texts[index] ?? { say: '', where: [], ticks: [] }}
            label={words.where(index + 1, walk.stops.length)}
            hidden={index !== shown}
          />
        ))}
        <Finished {...props} hidden={shown < walk.stops.length} />
        <p class="onward">
          <button type="submit" name="place" value={Math.max(0, place - 1)} disabled={place === 0} data-back>
            {words.back}
          </button>
          <button
            type="submit"
            name="place"
            value={Math.min(walk.total, place + 1)}
            class="main"
            disabled={place >= walk.total}
            data-next
          >
            {words.next}
          </button>
        </p>
      </form>
      <Beside {...props} />
      <details>
        <summary>{words.all}</summary>
        <ol class="all-steps">
          {texts.map(({ say, where }, index) => (
            <li>
              <a
                href={underBase(stepsAddress(sheet.subject, index))}
                data-stop-link={index}
                aria-current={index === shown ? 'step' : undefined}
              >
                {say}
              </a>{' '}
              <span class="quiet">{where.slice(1).join(', ')}</span>
            </li>
          ))}
        </ol>
      </details>
      <script
        type="application/json"
        id="walk-data"
        // Within a script element nothing is markup but its end.
        dangerouslySetInnerHTML={{
          __html: JSON.stringify(walkData(sheet, frame)).replaceAll('<', '\\u003c'),
        }}
      />
    </article>
  );
}

function Head({ sheet, atBench, frame }: Props) {
  const { details, name, sizes } = sheet;
  const { lang } = frame;
  const words = atBoardWords(lang);
  const [detail] = details;
  const single = details.length === 1 && detail !== undefined ? detail.entry.document : null;
  return (
    <header>
      <h1>
        {name}{' '}
        <small>
          {single !== null && <span class="order-number">{single.number}</span>}
          {details.length > 1 && words.batch(details.length)}{' '}
          {single !== null && single.buyer.name !== '' && (
            <bdi>{benchCardWords(lang).for(single.buyer.name)}</bdi>
          )}
        </small>
      </h1>
      <p class="ways">
        {details.length <= 1 && <span>{sizes[0]}</span>}
        {details.map(({ entry: { document } }, at) => (
          <span>
            {details.length > 1 && `${document.number}, ${sizes[at] ?? ''}: `}
            <a href={underBase(`/bench/orders/${document.number}/card/`)}>{words.card}</a>{' '}
            {atBench && <a href={underBase(`/bench/orders/${document.number}/`)}>{words.order}</a>}
          </span>
        ))}
        {sheet.subject.kind === 'piece' && atBench && (
          <a href={underBase(`/bench/pieces/${sheet.subject.id}/?${sheet.subject.query}`)}>{words.card}</a>
        )}
        <a href={underBase('/bench/steps/')}>{words.title}</a>
      </p>
    </header>
  );
}

/** What must not be overlooked: what differs, what was changed since, whose words there are. */
function Notices({ sheet, frame }: Props) {
  const { details, kept, walk, pieces } = sheet;
  const { lang, now } = frame;
  const words = atBoardWords(lang);
  const notes = benchCardWords(lang).notes;
  const [detail] = details;
  const many = pieces.length < (detail?.entry.document.quantity ?? 1);
  return (
    <>
      {details
        .filter((one) => one.now.checked.differences.length > 0)
        .map(({ entry }) => (
          <p class="warning">{words.differs(entry.document.number)}</p>
        ))}
      {many && <p class="warning">{words.tooMany(MOST_PIECES)}</p>}
      {kept !== null && kept.at > now && <p class="warning">{words.clockBack}</p>}
      {kept !== null && kept.digest !== walk.digest && (
        <p class="warning" role="alert">
          {words.changed}
        </p>
      )}
      {details.flatMap(({ entry, events }) => [
        ...said('buyer', entry.document.number, entry.document.buyer.note),
        ...events
          .filter(({ kind }) => kind === 'note')
          .flatMap(({ text }) => said('maker', entry.document.number, text)),
      ])}
    </>
  );

  function said(by: 'buyer' | 'maker', number: string, text: string) {
    if (text.trim() === '') return [];
    return [
      <p class="noted">
        <b>
          {details.length > 1 && `${number} `}
          {notes[by]}
        </b>{' '}
        <bdi>{text}</bdi>
      </p>,
    ];
  }
}

function Drawn({ figure, hidden }: { readonly figure: Figure; readonly hidden: boolean }) {
  return (
    <figure data-figure={figure.name} hidden={hidden} dangerouslySetInnerHTML={{ __html: figure.svg }} />
  );
}

type StopProps = {
  readonly stop: WalkStop;
  readonly text: StopText;
  readonly label: string;
  readonly place: number;
  readonly hidden: boolean;
  readonly words: AtBoardWords;
};

function StopSection({ stop, text, label, place, hidden, words }: StopProps) {
  const { from, ticks } = stop;
  const done = Math.min(ticks.length, Math.max(0, place - from));
  const [first] = ticks;
  const warns = first !== undefined && isCaution(first.step.code);
  const counted = ticks.length > 1 || text.ticks.some((one) => one !== '');
  return (
    <section data-stop hidden={hidden}>
      <p class="where">{[label, ...text.where].join(' · ')}</p>
      <h2 class={warns ? 'say caution' : 'say'}>{text.say}</h2>
      {counted && (
        <>
          <p class="counted" data-count>
            {words.count(String(done), String(ticks.length))}
          </p>
          <ol class="runs-to-tick">
            {text.ticks.map((one, index) => (
              <li>
                <button
                  type="submit"
                  name="place"
                  value={index < done ? from + index : from + index + 1}
                  aria-pressed={index < done}
                  aria-current={index === done ? 'step' : undefined}
                  data-tick={from + index}
                >
                  {one}
                </button>
              </li>
            ))}
          </ol>
        </>
      )}
    </section>
  );
}

function Finished({ sheet, atBench, frame, hidden }: Props & { readonly hidden: boolean }) {
  const words = atBoardWords(frame.lang);
  return (
    <section data-stop hidden={hidden}>
      <h2 class="say">{words.done}</h2>
      <p>{sheet.details.length === 0 ? words.donePiece : words.doneText}</p>
      {atBench &&
        sheet.details.map(({ entry: { document } }) => (
          <p>
            <a class="button" href={underBase(`/bench/orders/${document.number}/`)}>
              {frame.words.order.title(document.number)}
            </a>
          </p>
        ))}
      <p>
        <button type="submit" name="place" value="0" data-go="0">
          {words.again}
        </button>
      </p>
    </section>
  );
}

/** What the script fills in: how it stands with the book, the screen and her clock. */
function Beside({ sheet, frame }: Props) {
  const words = atBoardWords(frame.lang);
  return (
    <>
      <noscript>
        <p class="quiet">{words.noScript}</p>
      </noscript>
      <div data-standing hidden>
        <p role="status" data-line></p>
        <p class="warning" role="alert" data-elsewhere hidden>
          <span data-elsewhere-text></span>{' '}
          <button type="button" data-theirs>
            {words.takeTheirs}
          </button>{' '}
          <button type="button" data-mine>
            {words.keepMine}
          </button>
        </p>
        <p class="warning" role="alert" data-refused hidden>
          <span data-refused-text></span> <a href="">{words.loadAnew}</a>
        </p>
        {sheet.details.length > 0 && (
          <p class="clock">
            <button type="button" data-clock aria-pressed="false">
              {words.start}
            </button>{' '}
            <span>
              {words.clock}: <span data-minutes></span>
            </span>{' '}
            <span class="quiet">{words.clockHint}</span>
          </p>
        )}
        <p class="quiet">
          {words.hint} <span data-awake></span>
        </p>
      </div>
      <p class="unseen" aria-live="polite" data-aloud></p>
    </>
  );
}
