/** Round the stops of a walk: what must not be overlooked before, and what the script fills in after. */
import { atBoardWords, benchCardWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import type { WalkSheet } from '../../models/steps/sheet.ts';
import { MOST_PIECES } from '../../models/steps/subject.ts';

type Props = { readonly sheet: WalkSheet; readonly frame: Frame };

/** What must not be overlooked: what differs, what was changed since, whose words there are. */
export function Notices({ sheet, frame }: Props) {
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

/** What the script fills in: how it stands with the book, the screen and her clock. */
export function Beside({ sheet, frame }: Props) {
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
