/** The sheet itself: the same for buyer and maker, on screen and on paper. */
import { useState } from 'preact/hooks';
import type { OrderDocument } from '#order/document.ts';
import { encode } from '#order/text.ts';
import { formatDateTime, formatFor } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { OrderWords, SlipWords } from '#words/words.ts';
import { saveFile } from '../adapters/saveFile.ts';
import { Rows } from '../controls/Rows.tsx';
import { unitOfOrder } from '../ordering/model/write.ts';
import { QrCode } from './QrCode.tsx';

export type SlipLanguage = {
  readonly lang: Lang;
  readonly words: SlipWords;
  readonly orderWords: OrderWords;
};

export type SlipSheetProps = SlipLanguage & {
  readonly order: OrderDocument;
  readonly address: string;
  readonly pieceName: string;
  readonly pieceAddress: string;
};

export function SlipSheet({
  lang,
  words,
  orderWords,
  order,
  address,
  pieceName,
  pieceAddress,
}: SlipSheetProps) {
  const [copied, setCopied] = useState(false);
  const format = formatFor(lang, unitOfOrder(order), order.shown.currency);
  const copy = () => {
    navigator.clipboard.writeText(address).then(
      () => setCopied(true),
      () => setCopied(false),
    );
  };
  const save = () =>
    saveFile(`order-${order.number}.json`, 'application/json', JSON.stringify(order, null, 2));
  return (
    <article class="slip">
      <h2>{words.numberIs(order.number)}</h2>
      <p class="quiet">{words.placed(formatDateTime(order.placedAt, lang))}</p>
      <Rows rows={orderWords.rows(format, order, pieceName)} />
      <QrCode words={words} text={address} />
      <div class="sizer-actions slip-screen">
        <button type="button" class="button" onClick={() => print()}>
          {words.print}
        </button>
        <button type="button" class="button plain" onClick={copy}>
          {words.copyLink}
        </button>
        <button type="button" class="button plain" onClick={save}>
          {words.download}
        </button>
        <a class="button plain" href={pieceAddress}>
          {words.seePiece}
        </a>
        <span role="status">{copied && words.copied}</span>
      </div>
      <p class="slip-screen">{words.inAddress}</p>
      <p class="slip-screen">{words.offline}</p>
      <p>{words.forMaker}</p>
      <details class="slip-screen">
        <summary>{words.compact}</summary>
        <p class="slip-compact">{encode(order)}</p>
      </details>
    </article>
  );
}
