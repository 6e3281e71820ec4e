/** The address for a parcel, as large as a usual label (common practice, no source). */
import { addressLines } from '#words/address.ts';
import { countryName } from '#words/format.ts';
import { benchCardWords } from '#words/words.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';

/** In the maker's language and with the country in capitals: the post of her own country reads it first. */
export function LabelSheet({ detail, frame }: { detail: OrderDetail; frame: Frame }) {
  const { shop, lang } = frame;
  const words = benchCardWords(lang).label;
  const { number, delivery } = detail.entry.document;
  if (delivery.by !== 'post') {
    return <p>{delivery.by === 'collection' ? words.collected : words.missing}</p>;
  }
  const country = countryName(delivery.to.country, lang).toLocaleUpperCase(lang);
  return (
    <>
      <p class="off-paper quiet">{words.hint}</p>
      <article class="label">
        <p class="sender">
          {words.from} {shop.post?.returnTo ?? `${shop.name}, ${shop.place}`}
        </p>
        <address lang="">
          {addressLines(delivery.to, country).map((line) => (
            <bdi>{line}</bdi>
          ))}
        </address>
        <p class="sender">{number}</p>
      </article>
    </>
  );
}
