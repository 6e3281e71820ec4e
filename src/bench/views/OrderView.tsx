/** An order's page. */
import { formatDateTime } from '#words/format.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';
import { Asked } from './Asked.tsx';
import { Changes } from './Changes.tsx';
import { Differences } from './Differences.tsx';
import { Figures } from './Figures.tsx';
import { History } from './History.tsx';
import { Letters } from './Letters.tsx';

type Props = { readonly detail: OrderDetail; readonly frame: Frame };

export function OrderView({ detail, frame }: Props) {
  const { words, lang } = frame;
  const { entry, now } = detail;
  return (
    <>
      <p class="quiet">
        {words.order.received(formatDateTime(entry.receivedAt, lang), entry.way)}{' '}
        {words.order.placed(formatDateTime(entry.document.placedAt, lang))}
      </p>
      <Differences all={now.checked.differences} frame={frame} />
      <Sheets detail={detail} frame={frame} />
      <div class="columns">
        <Asked detail={detail} frame={frame} />
        <Changes entry={entry} words={words} />
      </div>
      <Figures detail={detail} frame={frame} />
      <Letters entry={entry} drafts={detail.drafts} payment={detail.payment} words={words} />
      <History events={detail.events} frame={frame} />
      <Erase detail={detail} frame={frame} />
    </>
  );
}

function Sheets({ detail, frame: { words } }: Props) {
  const base = `/bench/orders/${detail.entry.document.number}`;
  const canString = [detail.now, detail.then].some((one) => (one?.checked.candidate ?? null) !== null);
  return (
    <p class="row">
      {canString && (
        <a class="button main" href={`${base}/card/`}>
          {words.order.card}
        </a>
      )}
      {detail.now.checked.candidate !== null && (
        <a class="button" href={`/bench/gather/?for=${detail.entry.document.number}`}>
          {words.order.gather}
        </a>
      )}
      <a class="button" href={`${base}/packing/`}>
        {words.order.packing}
      </a>
      <a class="button" href={`${base}/care/`}>
        {words.order.care}
      </a>
      <a class="button" href={`${base}/order.json`}>
        {words.order.document}
      </a>
    </p>
  );
}

function Erase({ detail: { entry }, frame: { words, lang } }: Props) {
  if (entry.erasedAt !== null) {
    return <p class="quiet">{words.order.erasedOn(formatDateTime(entry.erasedAt, lang))}</p>;
  }
  return (
    <details class="danger">
      <summary>{words.order.erase}</summary>
      <p>{words.order.eraseHint}</p>
      <form method="post" action={`/bench/orders/${entry.document.number}/erase/`}>
        <button type="submit">{words.order.reallyErase}</button>
      </form>
    </details>
  );
}
