/** The week's page: what can't be begun, then week by week what is to be strung. */
import { underBase } from '#ui/site/base.ts';
import { formatDate } from '#words/format.ts';
import type { WeekWords } from '#words/words.ts';
import type { Frame } from '../models/frame.ts';
import type { WeekOrder, WeekPlan, WeekRow } from '../models/week.ts';

type Props = { readonly plan: WeekPlan; readonly frame: Frame; readonly words: WeekWords };

/** More weeks than this nobody plans by; what lies further on is told in a line. */
const WEEKS_SHOWN = 12;

export function WeekView({ plan, frame, words }: Props) {
  const { format } = frame;
  const { orders, weeks, hoursPerWeek, leftOut } = plan;
  const lead =
    orders.length === 0 ? words.nothing : words.lead(orders.length, words.time(plan.totalMinutes, format));
  return (
    <>
      <p>{lead}</p>
      <p class="quiet">{hoursPerWeek === null ? words.noHours : words.hours(hoursPerWeek, format)}</p>
      <p class="row off-paper">
        <a class="button" href={underBase('/bench/gather/')}>
          {words.pickList}
        </a>
        <a class="button" href={underBase('/bench/months/')}>
          {words.months}
        </a>
      </p>
      {leftOut.length > 0 && (
        <p class="warning">
          {words.leftOut}{' '}
          {leftOut.map((number, at) => (
            <>
              {at > 0 && ', '}
              <NumberLink number={number} />
            </>
          ))}
        </p>
      )}
      <Short plan={plan} frame={frame} words={words} />
      <Proposals orders={orders} words={words} />
      {weeks.slice(0, WEEKS_SHOWN).map((week) => (
        <Week week={week} frame={frame} words={words} />
      ))}
      {weeks.length > WEEKS_SHOWN && <p class="quiet">{words.later(weeks.length - WEEKS_SHOWN)}</p>}
      {hoursPerWeek === null && orders.length > 0 && (
        <section aria-labelledby="by-due">
          <h2 id="by-due">{words.byDue}</h2>
          <Table
            rows={orders.map((order) => ({ order, minutes: order.minutes }))}
            label="by-due"
            frame={frame}
            words={words}
          />
        </section>
      )}
      <ToSend plan={plan} frame={frame} words={words} />
    </>
  );
}

function NumberLink({ number }: { readonly number: string }) {
  return (
    <a class="order-number" href={underBase(`/bench/orders/${number}/`)}>
      {number}
    </a>
  );
}

function Short({ plan: { orders }, frame: { format }, words }: Props) {
  const short = orders.filter((order) => order.short.length > 0);
  if (short.length === 0) return null;
  return (
    <section class="warning" aria-labelledby="short">
      <h2 id="short">{words.short}</h2>
      <p>{words.shortHint}</p>
      <ul>
        {short.map(({ entry, pieceName, short: lacks }) => (
          <li>
            <NumberLink number={entry.document.number} /> {pieceName}:{' '}
            {format.list(lacks.map(({ missing, name, need }) => words.shortOf(missing, name, need, format)))}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** One button for all days that are proposed; one for each stands in its row. */
function Proposals({ orders, words }: { readonly orders: readonly WeekOrder[]; readonly words: WeekWords }) {
  const proposed = orders.filter((order) => order.proposed !== null);
  if (proposed.length === 0) return null;
  return (
    <form method="post" action={underBase('/bench/week/due/')} class="off-paper">
      <p class="quiet">{words.proposalHint}</p>
      {proposed.map((order) => (
        <input type="hidden" name="take" value={takeValue(order)} />
      ))}
      {proposed.length > 1 && <button type="submit">{words.takeAll(proposed.length)}</button>}
    </form>
  );
}

/** What `intake/takeDue.ts` reads: number, version seen, day. */
const takeValue = ({ entry, proposed }: WeekOrder): string =>
  `${entry.document.number} ${entry.version} ${proposed ?? ''}`;

type WeekProps = { readonly week: WeekRow; readonly frame: Frame; readonly words: WeekWords };

function Week({ week, frame, words }: WeekProps) {
  const { monday, hasMinutes, takesMinutes, parts } = week;
  const id = `week-${monday}`;
  const time = (minutes: number): string => words.time(minutes, frame.format);
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>
        {words.weekOf(monday, frame.format)}{' '}
        <small class="quiet">{words.taken(time(takesMinutes), time(hasMinutes))}</small>
      </h2>
      <meter
        class="fill"
        min={0}
        max={hasMinutes}
        value={takesMinutes}
        aria-label={words.taken(time(takesMinutes), time(hasMinutes))}
      ></meter>
      <Table rows={parts} label={id} frame={frame} words={words} />
    </section>
  );
}

type TableProps = {
  readonly rows: WeekRow['parts'];
  /** Id of the heading that names it. */
  readonly label: string;
  readonly frame: Frame;
  readonly words: WeekWords;
};

function Table({ rows, label, frame, words }: TableProps) {
  const names = ['order', 'piece', 'buyer', 'time', 'due'] as const;
  return (
    <div class="scroll" tabIndex={0} role="group" aria-labelledby={label}>
      <table class="orders">
        <thead>
          <tr>
            {names.map((name) => (
              <th scope="col">{words.columns[name]}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ order, minutes }) => (
            <Row order={order} minutes={minutes} frame={frame} words={words} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

type RowProps = {
  readonly order: WeekOrder;
  readonly minutes: number;
  readonly frame: Frame;
  readonly words: WeekWords;
};

function Row({ order, minutes, frame, words }: RowProps) {
  const { entry, pieceName, late, short } = order;
  const { document, state } = entry;
  const { columns } = words;
  const time = (all: number): string => words.time(all, frame.format);
  const whole = order.minutes - minutes < 1;
  return (
    <tr>
      <th scope="row" data-label={columns.order}>
        <NumberLink number={document.number} />
        {short.length > 0 && <span class="mark warn">{words.wants}</span>}
      </th>
      <td data-label={columns.piece}>
        <span>
          {document.quantity > 1 ? `${document.quantity} × ` : ''}
          {pieceName} <span class={`mark state-${state}`}>{frame.words.states[state]}</span>
        </span>
      </td>
      <td data-label={columns.buyer}>
        <bdi>{document.buyer.name}</bdi>
      </td>
      <td data-label={columns.time}>
        {whole ? time(minutes) : words.part(time(minutes), time(order.minutes))}
      </td>
      <td data-label={columns.due}>
        <div>
          <Due order={order} frame={frame} words={words} />
          {late && <span class="mark warn">{words.late}</span>}
        </div>
      </td>
    </tr>
  );
}

function Due({ order, frame: { lang, words: bench }, words }: Omit<RowProps, 'minutes'>) {
  const { entry, proposed } = order;
  if (entry.dueOn !== null) return <>{formatDate(entry.dueOn, lang)} </>;
  if (proposed === null) return <span class="quiet">{bench.book.noDue}</span>;
  const day = formatDate(proposed, lang);
  return (
    <form class="inline" method="post" action={underBase('/bench/week/due/')}>
      <span>{words.proposed(day)}</span>{' '}
      <button
        type="submit"
        name="take"
        value={takeValue(order)}
        aria-label={words.takeFor(entry.document.number, day)}
      >
        {words.take}
      </button>
    </form>
  );
}

function ToSend({ plan: { toSend }, frame: { lang }, words }: Props) {
  if (toSend.length === 0) return null;
  return (
    <section aria-labelledby="to-send">
      <h2 id="to-send">{words.toSend}</h2>
      <ul>
        {toSend.map(({ entry, pieceName }) => (
          <li>
            <NumberLink number={entry.document.number} /> {pieceName}, <bdi>{entry.document.buyer.name}</bdi>
            {entry.dueOn !== null && `, ${formatDate(entry.dueOn, lang)}`}
          </li>
        ))}
      </ul>
    </section>
  );
}
