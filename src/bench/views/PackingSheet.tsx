/** The slip that lies in the parcel. */
import { benchCardWords, orderWords } from '#words/words.ts';
import { addressLines } from '#words/address.ts';
import { formatDate, formatMoney } from '#words/format.ts';
import { measuredOf } from '../check/lengths.ts';
import { sumParts } from '../models/sumParts.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';

/** In the buyer's language: `frame` is hers. */
export function PackingSheet({ detail, frame }: { detail: OrderDetail; frame: Frame }) {
  const { shop, format, lang, now } = frame;
  const words = benchCardWords(lang).packing;
  const said = orderWords(lang);
  const { document } = detail.entry;
  const { quantity, delivery } = document;
  const { copy, candidate } = detail.now.checked;
  const [length] = said.measured(
    format,
    copy === null || candidate === null ? document.shown : measuredOf(copy.design, candidate),
  );
  const { price } = detail.money;
  const parts = sumParts(detail);
  const money = (minor: number): string => formatMoney(minor, price.currency, lang);
  const cells = [
    detail.pieceName,
    said.size(format, document),
    format.number(quantity),
    parts === null ? '' : money(parts.priceMinor),
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
      {delivery.by === 'post' ? (
        <address>
          {addressLines(delivery.to, format.country(delivery.to.country)).map((line) => (
            <bdi>{line}</bdi>
          ))}
        </address>
      ) : (
        <p>
          {document.buyer.name !== '' && (
            <>
              {words.to} <bdi>{document.buyer.name}</bdi>
            </>
          )}
          {delivery.by === 'collection' && `. ${words.collected}`}
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
          {delivery.by === 'post' && parts !== null && (
            <tr>
              <th scope="row" colSpan={3}>
                {words.postage}
              </th>
              <td>{parts.postageMinor === 0 ? words.free : money(parts.postageMinor)}</td>
            </tr>
          )}
          <tr>
            <th scope="row" colSpan={3}>
              {words.total}
            </th>
            <td>{money(price.minor)}</td>
          </tr>
        </tfoot>
      </table>
      {length !== undefined && (
        <p>
          {length.label}: {length.value}
        </p>
      )}
      <p>{words.thanks}</p>
      <p>{shop.orders.email}</p>
    </article>
  );
}
