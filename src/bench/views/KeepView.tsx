/** Safe-keeping: backup and restore, lists for other programs, forgetting buyers. */
import { underBase } from '#ui/site/base.ts';
import { formatKnownDate } from '#words/format.ts';
import { moneyWords } from '#words/words.ts';
import type { Copy } from '../book/copies.ts';
import type { CheckState } from '../context/bench.ts';
import type { Frame } from '../models/frame.ts';
import { CheckView } from './CheckView.tsx';
import { CopiesView } from './CopiesView.tsx';
import { OrderLinks } from './OrderLinks.tsx';
import { RestoreForm } from './RestoreForm.tsx';

type Props = {
  readonly frame: Frame;
  /** What was just done, a sentence each. */
  readonly done: readonly string[];
  /** Numbers past the keeping time. */
  readonly overdue: readonly string[];
  /** Copies of the book that lie beside it. */
  readonly copies: readonly Copy[];
  /** Names of those in which the last erasing could not be done. */
  readonly unreached: readonly string[];
  readonly check: CheckState;
  /** True where other accounts of the machine can look into the book's folder. */
  readonly folderOpen: boolean;
  /** Numbers of invoices that were issued and aren't in the book. */
  readonly missing: readonly string[];
  /** Months in which money went, the newest first: `2026-11`. */
  readonly months: readonly string[];
  /** Numbers of orders that can't be read any more. */
  readonly unreadable: readonly string[];
};

export function KeepView({
  frame,
  done,
  overdue,
  copies,
  unreached,
  check,
  folderOpen,
  missing,
  months,
  unreadable,
}: Props) {
  return (
    <>
      {done.length > 0 && (
        <div class="good" role="status">
          {done.map((sentence) => (
            <p>{sentence}</p>
          ))}
        </div>
      )}
      {folderOpen && <p class="warning">{frame.words.keep.folderOpen}</p>}
      {missing.length > 0 && (
        <p class="warning">{moneyWords(frame.lang).invoices.missing(missing.join(', '))}</p>
      )}
      <div class="columns">
        <Backup frame={frame} />
        <Exports frame={frame} months={months} unreadable={unreadable} />
      </div>
      <Retention frame={frame} overdue={overdue} />
      <CheckView frame={frame} check={check} />
      <CopiesView frame={frame} copies={copies} unreached={unreached} />
    </>
  );
}

function Backup({ frame }: { frame: Frame }) {
  const { keep } = frame.words;
  return (
    <section aria-labelledby="backup">
      <h2 id="backup">{keep.backup}</h2>
      <p>{keep.backupHint}</p>
      <p>
        <a class="button main" href={underBase('/bench/export/backup.sqlite')}>
          {keep.download}
        </a>
      </p>
      <details>
        <summary>{keep.restore}</summary>
        <p>{keep.restoreHint}</p>
        <RestoreForm frame={frame} />
      </details>
    </section>
  );
}

function Exports({
  frame: { words, lang },
  months,
  unreadable,
}: Pick<Props, 'frame' | 'months' | 'unreadable'>) {
  const own = moneyWords(lang).months;
  return (
    <section aria-labelledby="exports">
      <h2 id="exports">{words.keep.exports}</h2>
      <ul>
        <li>
          <a href={underBase('/bench/export/orders.csv')}>{words.keep.csv}</a>
        </li>
        <li>
          <a href={underBase('/bench/export/orders.json')}>{words.keep.json}</a>
        </li>
      </ul>
      {unreadable.length > 0 && (
        <p class="warning">
          {words.keep.exportsLack(unreadable.length)} <OrderLinks numbers={unreadable} />
        </p>
      )}
      {months.length === 0 ? (
        <p class="quiet">{own.none}</p>
      ) : (
        <form class="row" method="get" action={underBase('/bench/export/money.csv')}>
          <label>
            {own.month}{' '}
            <select name="month">
              {months.map((month) => (
                <option value={month}>{formatKnownDate(month, lang)}</option>
              ))}
            </select>
          </label>
          <button type="submit">{own.download}</button>
        </form>
      )}
    </section>
  );
}

function Retention({ frame: { words, shop }, overdue }: Pick<Props, 'frame' | 'overdue'>) {
  const { keep } = words;
  return (
    <section aria-labelledby="retention">
      <h2 id="retention">{keep.retention}</h2>
      <p>{keep.retentionHint(shop.orders.keepMonths)}</p>
      <p>{keep.overdue(overdue.length)}</p>
      {overdue.length > 0 && (
        <form method="post" action={underBase('/bench/keep/erase/')}>
          <ul>
            {overdue.map((number) => (
              <li>
                <a href={underBase(`/bench/orders/${number}/`)}>{number}</a>
              </li>
            ))}
          </ul>
          <input type="hidden" name="numbers" value={overdue.join(' ')} />
          <button type="submit">{keep.eraseAll}</button>
        </form>
      )}
    </section>
  );
}
