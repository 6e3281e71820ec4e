/** The steps at the board, one at a time and large. Every button is a form's, so that it works without a script too. */
import { underBase } from '#ui/site/base.ts';
import { atBoardWords, benchCardWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import type { WalkSheet } from '../../models/steps/sheet.ts';
import { stepsAddress, subjectText } from '../../models/steps/subject.ts';
import { stopAt } from '../../models/steps/walk.ts';
import { drawFigures, figuresOf, type Figure } from './figures.ts';
import { stopText } from './stopText.ts';
import { walkData } from './walkData.ts';
import { Beside, Notices } from './WalkNotices.tsx';
import { Finished, StopSection } from './WalkStops.tsx';

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

function Drawn({ figure, hidden }: { readonly figure: Figure; readonly hidden: boolean }) {
  return (
    <figure data-figure={figure.name} hidden={hidden} dangerouslySetInnerHTML={{ __html: figure.svg }} />
  );
}
