/** The slip that lies in the parcel. */
import { benchCardWords } from '#words/words.ts';
import { formatDate } from '#words/format.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';

/** In the buyer's language: `frame` is hers. */
export function PackingSheet({ detail, frame }: { detail: OrderDetail; frame: Frame }) {
  const { shop, format, lang, now } = frame;
  const words = benchCardWords(lang).packing;
  const { document } = detail.entry;
  const { candidate } = detail.now.checked;
  const each = candidate?.priceMinor ?? document.shown.priceMinor;
  const cells = [
    detail.pieceName,
    document.measure.text,
    format.number(document.quantity),
    format.money(each),
  ];
  return (
    <article class="slip" lang={lang}>
      <header>
        <p class="shop">{shop.name}</p>
        <p>
          {shop.maker}, {shop.place}
        </p>
      </header>
      <h1>{words.title(document.number)}</h1>
      <p>{formatDate(now, lang)}</p>
      {document.buyer.name !== '' && (
        <p>
          {words.to} <bdi>{document.buyer.name}</bdi>
        </p>
      )}
      <table>
        <caption>{words.what}</caption>
        <thead>
          <tr>
            {Object.values(words.columns).map((name) => (
              <th scope="col">{name}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            {cells.map((cell) => (
              <td>
                <bdi>{cell}</bdi>
              </td>
            ))}
          </tr>
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={3}>
              {words.total}
            </th>
            <td>{format.money(each * document.quantity)}</td>
          </tr>
        </tfoot>
      </table>
      <p>{words.thanks}</p>
      <p>{shop.orders.email}</p>
    </article>
  );
}
