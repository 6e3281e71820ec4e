/** The order book's list: filter, table, pages. */
import { underBase } from '#ui/site/base.ts';
import { moneyWords, orderWords, type BenchWords } from '#words/words.ts';
import { strandLengthsText } from '#words/strandLengths.ts';
import { formatDate, formatMoney } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { ORDER_STATES, type OrderState } from '#words/benchCodes.ts';
import type { Frame } from '../models/frame.ts';
import type { ListRow, OrderList } from '../models/orderList.ts';
import { OPEN_STATES } from '../book/entry.ts';
import { PiecePicture } from './PiecePicture.tsx';

type Props = { readonly list: OrderList; readonly frame: Frame };

export function OrderListView({ list, frame }: Props) {
  const { words } = frame;
  return (
    <>
      {list.clockBack && (
        <p class="warning" role="alert">
          {words.book.clockBack}
        </p>
      )}
      <FilterForm list={list} frame={frame} />
      <p class="quiet" aria-live="polite">
        {words.book.count(list.total)}
      </p>
      <UnreadableOrders list={list} frame={frame} />
      {list.rows.length === 0 ? <p>{emptyText(list, words)}</p> : <Table list={list} frame={frame} />}
      <Pages list={list} words={words} />
    </>
  );
}

function UnreadableOrders({ list: { unreadable }, frame: { words, lang } }: Props) {
  if (unreadable.length === 0) return null;
  return (
    <div class="warning" role="alert">
      <p>{words.book.unreadable}</p>
      <ul>
        {unreadable.map(({ number, receivedAt, state }) => (
          <li>
            <a href={underBase(`/bench/orders/${number}/`)}>{number}</a>, {formatDate(receivedAt, lang)}
            {state !== null && `, ${words.states[state]}`}
          </li>
        ))}
      </ul>
      <p>{words.book.unreadableHint}</p>
    </div>
  );
}

function emptyText({ filter, counts }: OrderList, words: BenchWords): string {
  const none = Object.values(counts).every((count) => count === 0);
  return none && filter.text === '' ? words.book.empty : words.book.none;
}

function FilterForm({ list: { filter, counts }, frame: { words, lang } }: Props) {
  const open = OPEN_STATES.reduce((sum, state) => sum + counts[state], 0);
  const options: [string, string][] = [
    ['open', `${words.book.open} (${open})`],
    ['late', words.book.late],
    ['owing', moneyWords(lang).book.owing],
    ...ORDER_STATES.map((state): [OrderState, string] => [
      state,
      `${words.states[state]} (${counts[state]})`,
    ]),
    ['all', words.book.all],
  ];
  return (
    <form class="filter" method="get" action={underBase('/bench/')} role="search">
      <label>
        {words.book.find}
        <input type="search" name="q" value={filter.text} maxLength={100} placeholder={words.book.findHint} />
      </label>
      <label>
        {words.book.show}
        <select name="state">
          {options.map(([value, label]) => (
            <option value={value} selected={value === filter.state}>
              {label}
            </option>
          ))}
        </select>
      </label>
      <button type="submit">{words.book.apply}</button>
    </form>
  );
}

function Table({ list, frame }: Props) {
  const { columns } = frame.words.book;
  const own = moneyWords(frame.lang).book;
  const names = ['number', 'piece', 'size', 'buyer', 'due', 'received', 'state'] as const;
  const heads = [...names.map((name) => columns[name]), own.open, own.card];
  return (
    <div class="scroll" tabIndex={0} role="region" aria-label={frame.words.book.title}>
      <table class="orders">
        <thead>
          <tr>
            {heads.map((head) => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {list.rows.map((row) => (
            <Row row={row} frame={frame} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Row({ row, frame: { words, format, lang } }: { row: ListRow; frame: Frame }) {
  const { document, receivedAt, dueOn, state, erasedAt } = row.entry;
  const { columns } = words.book;
  const own = moneyWords(lang).book;
  return (
    <tr>
      <th scope="row" data-label={columns.number}>
        <a href={underBase(`/bench/orders/${document.number}/`)}>{document.number}</a>
        {row.damaged && <span class="mark warn">{words.book.damaged}</span>}
        {row.differs && <span class="mark warn">{words.book.differs}</span>}
      </th>
      <td data-label={columns.piece}>
        <span class="pictured">
          {row.pictured !== null && <PiecePicture piece={row.pictured} width={72} />}
          <span>
            {document.quantity > 1 ? `${document.quantity} × ` : ''}
            {row.pieceName}
          </span>
        </span>
      </td>
      <td data-label={columns.size}>
        {strandLengthsText(format, row.lengthsMm)}
        <small class="quiet">
          <bdi>{orderWords(lang).size(format, document)}</bdi>
        </small>
      </td>
      <td data-label={columns.buyer}>
        {erasedAt === null ? <bdi>{document.buyer.name}</bdi> : <i>{words.book.erased}</i>}
      </td>
      <td data-label={columns.due}>
        {dueOn === null ? <span class="quiet">{words.book.noDue}</span> : formatDate(dueOn, lang)}
        {row.late && <span class="mark warn">{words.book.late1}</span>}
      </td>
      <td data-label={columns.received}>{formatDate(receivedAt, lang)}</td>
      <td data-label={columns.state}>
        <span class={`mark state-${state}`}>{words.states[state]}</span>
      </td>
      <td data-label={own.open}>
        <Open row={row} lang={lang} />
      </td>
      <td data-label={own.card}>
        {row.hasCard && <a href={underBase(`/bench/orders/${document.number}/card/`)}>{words.order.card}</a>}
      </td>
    </tr>
  );
}

/** What is still to be paid, or to go back. */
function Open({ row: { money }, lang }: { row: ListRow; lang: Lang }) {
  const own = moneyWords(lang).book;
  if (money === null) return null;
  const { openMinor } = money.ledger;
  const sum = formatMoney(Math.abs(openMinor), money.due.currency, lang);
  if (openMinor === 0) return <span class="quiet">{own.nothing}</span>;
  return openMinor > 0 ? <>{sum}</> : <span class="mark warn">{own.back(sum)}</span>;
}

function Pages({ list: { filter, hasEarlier, hasLater }, words }: { list: OrderList; words: BenchWords }) {
  if (!hasEarlier && !hasLater) return null;
  const to = (page: number): string =>
    underBase(
      `/bench/?${new URLSearchParams({ q: filter.text, state: filter.state, page: String(page) }).toString()}`,
    );
  return (
    <nav class="pages" aria-label={words.book.title}>
      {hasEarlier && (
        <a rel="prev" href={to(filter.page - 1)}>
          {words.book.later}
        </a>
      )}
      {hasLater && (
        <a rel="next" href={to(filter.page + 1)}>
          {words.book.earlier}
        </a>
      )}
    </nav>
  );
}
