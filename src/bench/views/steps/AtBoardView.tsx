/** What waits to be strung, a group a piece: take one up, or tick several and string them side by side. */
import { underBase } from '#ui/site/base.ts';
import { formatDate, formatDateTime } from '#words/format.ts';
import { atBoardWords, orderWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import type { AtBoard, BoardGroup, BoardOrder } from '../../models/steps/atBoard.ts';
import { PiecePicture } from '../PiecePicture.tsx';

type Props = {
  readonly waiting: AtBoard;
  /** On a paired device there are only cards and steps. */
  readonly atBench: boolean;
  readonly frame: Frame;
};

export function AtBoardView({ waiting, atBench, frame }: Props) {
  const { lang } = frame;
  const words = atBoardWords(lang);
  const { groups, batches } = waiting;
  const tablet = atBench && (
    <p>
      <a href={underBase('/bench/tablets/')}>{words.letTabletIn}</a>
    </p>
  );
  if (groups.length === 0) {
    return (
      <>
        <p>{words.nothing}</p>
        {tablet}
      </>
    );
  }
  return (
    <>
      <p>{words.lead}</p>
      {tablet}
      {batches.length > 0 && (
        <section aria-labelledby="batches">
          <h2 id="batches">{words.batches}</h2>
          <ul class="plain">
            {batches.map(({ numbers, address, begun }) => (
              <li>
                <a class="button" href={underBase(address)}>
                  {words.goOn}
                </a>{' '}
                {numbers.join(', ')}{' '}
                <span class="quiet">{words.begun(formatDateTime(begun.at, lang), begun.who)}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {groups.map((group) => (
        <Group {...{ group, atBench, frame }} />
      ))}
    </>
  );
}

type GroupProps = Omit<Props, 'waiting'> & { readonly group: BoardGroup };

function Group({ group: { piece, name, orders }, atBench, frame }: GroupProps) {
  const words = atBoardWords(frame.lang);
  const several = orders.length > 1;
  const id = `group-${piece}`;
  return (
    <form method="get" action={underBase('/bench/steps/batch/')} class="waiting" aria-labelledby={id}>
      <h2 id={id} class="pictured">
        <PiecePicture piece={piece} width={96} /> {name}
      </h2>
      <ul class="plain">
        {orders.map((order) => (
          <Waiting {...{ order, atBench, frame, several }} />
        ))}
      </ul>
      {several && <button type="submit">{words.together}</button>}
    </form>
  );
}

type WaitingProps = Omit<GroupProps, 'group'> & { readonly order: BoardOrder; readonly several: boolean };

function Waiting({ order: { entry, name, begun }, several, atBench, frame }: WaitingProps) {
  const { lang, format } = frame;
  const words = atBoardWords(lang);
  const { document, dueOn, state } = entry;
  const { number, quantity, buyer } = document;
  const here = underBase(`/bench/orders/${number}`);
  return (
    <li class="one-to-string">
      {several && (
        <label class="take">
          <input type="checkbox" name="order" value={number} aria-label={words.choose(number)} />
        </label>
      )}
      <a
        class="button main"
        href={`${here}/steps/`}
        aria-label={`${begun === null ? words.string : words.goOn}: ${number}`}
      >
        {begun === null ? words.string : words.goOn}
      </a>
      <span>
        {atBench ? (
          <a class="order-number" href={`${here}/`}>
            {number}
          </a>
        ) : (
          <b class="order-number">{number}</b>
        )}{' '}
        {quantity > 1 && `${format.number(quantity)} × `}
        {name}, {orderWords(lang).size(format, document)}, <bdi>{buyer.name}</bdi>{' '}
        <span class={`mark state-${state}`}>{frame.words.states[state]}</span>{' '}
        {dueOn !== null && <span>{words.due(formatDate(dueOn, lang))} </span>}
        <a href={`${here}/card/`}>{words.card}</a>
        {begun !== null && (
          <small class="quiet"> {words.begun(formatDateTime(begun.at, lang), begun.who)}</small>
        )}
      </span>
    </li>
  );
}
