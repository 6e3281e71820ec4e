/** Buyers: found by name or address. */
import { underBase } from '#ui/site/base.ts';
import { formatDate } from '#words/format.ts';
import type { HandWords } from '#words/words.ts';
import type { BuyerList, BuyerRow } from '../models/buyers.ts';
import type { Frame } from '../models/frame.ts';

type Props = {
  readonly list: BuyerList;
  /** Orders just erased; null for none. */
  readonly erased: number | null;
  readonly frame: Frame;
  readonly words: HandWords;
};

export function BuyersView({ list: { rows, total, text }, erased, frame, words: { buyers: said } }: Props) {
  return (
    <>
      {erased !== null && (
        <p class="good" role="status">
          {said.erased(erased)}
        </p>
      )}
      <form class="filter" method="get" action={underBase('/bench/buyers/')} role="search">
        <label>
          {said.find}
          <input type="search" name="q" value={text} maxLength={100} placeholder={said.findHint} />
        </label>
        <button type="submit">{said.apply}</button>
      </form>
      <p class="quiet" aria-live="polite">
        {said.count(total)}
      </p>
      {rows.length === 0 ? (
        <p>{text === '' ? said.empty : said.none}</p>
      ) : (
        <div class="scroll" tabIndex={0} role="region" aria-label={said.title}>
          <table class="orders">
            <thead>
              <tr>
                <th scope="col">{said.columns.name}</th>
                <th scope="col">{said.columns.email}</th>
                <th scope="col">{said.columns.orders}</th>
                <th scope="col">{said.columns.last}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <Row row={row} frame={frame} said={said} />
              ))}
            </tbody>
          </table>
        </div>
      )}
      {total > rows.length && <p class="quiet">{said.more(total - rows.length)}</p>}
    </>
  );
}

type RowProps = { readonly row: BuyerRow; readonly frame: Frame; readonly said: HandWords['buyers'] };

function Row({ row: { number, name, email, orders, lastAt }, frame, said }: RowProps) {
  return (
    <tr>
      <th scope="row" data-label={said.columns.name}>
        <a class="plain" href={underBase(`/bench/buyers/${number}/`)}>
          <bdi>{name}</bdi>
        </a>
      </th>
      <td data-label={said.columns.email}>
        {email === '' ? <span class="quiet">{said.noEmail}</span> : <bdi>{email}</bdi>}
      </td>
      <td data-label={said.columns.orders}>{frame.format.number(orders)}</td>
      <td data-label={said.columns.last}>{formatDate(lastAt, frame.lang)}</td>
    </tr>
  );
}
