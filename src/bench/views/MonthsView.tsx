/** The months' page: one table, what it stands on, and the other years. */
import { underBase } from '#ui/site/base.ts';
import { formatMonth } from '#words/format.ts';
import type { WeekWords } from '#words/words.ts';
import type { Frame } from '../models/frame.ts';
import type { Month, Months } from '../models/months.ts';

type Props = { readonly months: Months; readonly frame: Frame; readonly words: WeekWords };

export function MonthsView({ months: { year, years, months, all, unknown }, frame, words }: Props) {
  const said = words.earned;
  return (
    <>
      <p>{said.lead}</p>
      {months.length === 0 ? (
        <p>{said.none(year)}</p>
      ) : (
        <div class="scroll" tabIndex={0} role="region" aria-label={said.title(year)}>
          <table class="orders months">
            <thead>
              <tr>
                {HEADS.map((name) => (
                  <th scope="col" class={name === 'month' ? undefined : 'number'}>
                    {said.columns[name]}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {months.map((month) => (
                <Row month={month} name={formatMonth(month.month, frame.lang)} frame={frame} words={words} />
              ))}
            </tbody>
            <tfoot>
              <Row month={all} name={said.wholeYear} frame={frame} words={words} />
            </tfoot>
          </table>
        </div>
      )}
      <p class="quiet">{said.estimate}</p>
      {unknown.length > 0 && <p class="warning">{said.unknown(unknown.length)}</p>}
      {years.length > 0 && (
        <nav class="pages" aria-label={said.otherYears}>
          {years.map((one) => (
            <a href={underBase(`/bench/months/?year=${one}`)}>{one}</a>
          ))}
        </nav>
      )}
    </>
  );
}

const HEADS = ['month', 'received', 'receivedFor', 'sent', 'sentFor', 'left', 'time', 'perHour'] as const;

type RowProps = {
  readonly month: Month;
  readonly name: string;
  readonly frame: Frame;
  readonly words: WeekWords;
};

function Row({ month, name, frame: { format }, words }: RowProps) {
  const { received, cancelled, sent, perHourMinor } = month;
  const said = words.earned;
  const cells: Record<Exclude<(typeof HEADS)[number], 'month'>, string> = {
    received: said.count(received.orders, received.pieces, format),
    receivedFor: format.money(received.priceMinor),
    sent: said.count(sent.orders, sent.pieces, format),
    sentFor: format.money(sent.priceMinor),
    left: format.money(sent.leftMinor),
    time: words.time(sent.minutes, format),
    perHour: perHourMinor === null ? '–' : format.money(perHourMinor),
  };
  return (
    <tr>
      <th scope="row" data-label={said.columns.month}>
        {name}
      </th>
      {Object.entries(cells).map(([key, value]) => (
        <td class="number" data-label={said.columns[key as keyof typeof cells]}>
          {value}
          {key === 'time' && sent.timed.orders > 0 && (
            <small class="quiet">
              {' '}
              {said.timed(
                words.time(sent.timed.seconds / 60, format),
                sent.timed.orders,
                words.time(sent.timed.ruleMinutes, format),
              )}
            </small>
          )}
          {key === 'received' && cancelled > 0 && <small class="quiet"> {said.cancelled(cancelled)}</small>}
        </td>
      ))}
    </tr>
  );
}
