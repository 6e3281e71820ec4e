/** An order's page. */
import { underBase } from '#ui/site/base.ts';
import { formatDateTime } from '#words/format.ts';
import { atBoardWords, benchCardWords, handWords, moneyWords, orderWords } from '#words/words.ts';
import type { Difference } from '#words/difference.ts';
import { isOfPage, type Attempt } from '../models/attempt.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';
import { AddressForm } from './AddressForm.tsx';
import { ChangeForm, Refused, type ChangeProps } from './ChangeForm.tsx';
import { Changes } from './Changes.tsx';
import { Figures } from './Figures.tsx';
import { History } from './History.tsx';
import { Invoices } from './Invoices.tsx';
import { Letters } from './Letters.tsx';
import { PiecePicture } from './PiecePicture.tsx';
import { FactList, type Fact } from './FactList.tsx';
import { MoneySection } from './Money.tsx';
import { Next } from './Next.tsx';

type Props = { readonly detail: OrderDetail; readonly frame: Frame };

type PageProps = Props & {
  /** A form that could not be done; null where none was sent. */
  readonly attempt?: Attempt | null;
  /** Name of the message that was just made ready. */
  readonly write?: string | null;
  /** Due day to be taken over; null where it has one, or nothing is planned. */
  readonly proposed?: string | null;
};

export function OrderView({ detail, frame, attempt = null, write = null, proposed = null }: PageProps) {
  const { words, lang } = frame;
  const { entry, now } = detail;
  const change = { entry, attempt, frame };
  const written = detail.drafts.find(({ letter }) => letter === write) ?? null;
  return (
    <>
      {attempt !== null && isOfPage(attempt) && <Refused attempt={attempt} frame={frame} />}
      <p class="quiet">
        {words.order.received(formatDateTime(entry.receivedAt, lang), entry.way)}{' '}
        {words.order.placed(formatDateTime(entry.document.placedAt, lang))}
      </p>
      {entry.damaged && (
        <p class="warning" role="alert">
          {words.order.damaged}
        </p>
      )}
      {detail.altered && (
        <div class="warning" role="alert">
          <p>{words.keep.altered}</p>
          <ChangeForm {...change} form={{ kind: 'looked-over' }}>
            <button type="submit">{words.keep.lookedOver}</button>
          </ChangeForm>
        </div>
      )}
      <Differences all={now.checked.differences} frame={frame} />
      {detail.agreed !== null && <p>{benchCardWords(lang).agreedNote}</p>}
      {detail.standing !== null && entry.state !== 'cancelled' && (
        <p>{words.order.ready(`content/pieces/${entry.document.piece.id}.yaml`)}</p>
      )}
      <Next {...change} detail={detail} written={written} />
      <Sheets detail={detail} frame={frame} />
      <div class="columns">
        <Asked {...change} detail={detail} />
        <div>
          <MoneySection {...change} money={detail.money} />
          <Invoices {...change} money={detail.money} invoices={detail.invoices} />
        </div>
      </div>
      <Changes {...change} proposed={proposed} />
      <Figures detail={detail} frame={frame} />
      <Letters {...change} drafts={detail.drafts} payment={detail.payment} />
      <History detail={detail} frame={frame} />
      <Erase detail={detail} frame={frame} />
    </>
  );
}

function Sheets({ detail, frame: { words, lang } }: Props) {
  const here = underBase(`/bench/orders/${detail.entry.document.number}`);
  const { made } = detail.entry.document;
  const canString = [detail.agreed, detail.now, detail.then].some(
    (one) => (one?.checked.candidate ?? null) !== null,
  );
  return (
    <p class="row">
      {made !== 'ready' && canString && (
        <a class="button main" href={`${here}/card/`}>
          {words.order.card}
        </a>
      )}
      {made !== 'ready' && canString && (
        <a class="button" href={`${here}/steps/`}>
          {atBoardWords(lang).title}
        </a>
      )}
      {made !== 'ready' && detail.now.checked.candidate !== null && (
        <a class="button" href={underBase(`/bench/gather/?for=${detail.entry.document.number}`)}>
          {words.order.gather}
        </a>
      )}
      {detail.entry.erasedAt === null && (
        <a class="button" href={underBase(`/bench/buyers/${detail.entry.document.number}/`)}>
          {handWords(lang).buyers.page}
        </a>
      )}
      <a class="button" href={`${here}/packing/`}>
        {words.order.packing}
      </a>
      {detail.entry.document.delivery.by === 'post' && (
        <a class="button" href={`${here}/label/`}>
          {words.order.label}
        </a>
      )}
      <a class="button" href={`${here}/care/`}>
        {words.order.care}
      </a>
      <a class="button" href={`${here}/order.json`}>
        {words.order.document}
      </a>
    </p>
  );
}

function Erase({ detail: { entry, invoices }, frame: { words, lang, shop } }: Props) {
  const own = moneyWords(lang).invoices;
  const kept = shop.orders.keepInvoicesMonths;
  if (entry.erasedAt !== null) {
    return <p class="quiet">{words.order.erasedOn(formatDateTime(entry.erasedAt, lang))}</p>;
  }
  return (
    <details class="danger">
      <summary>{words.order.erase}</summary>
      <p>{words.order.eraseHint}</p>
      {invoices.length > 0 && <p>{kept === null ? own.eraseHint : own.eraseKept(kept)}</p>}
      <form method="post" action={underBase(`/bench/orders/${entry.document.number}/erase/`)}>
        <button type="submit">{words.order.reallyErase}</button>
      </form>
    </details>
  );
}

/** What the buyer asked for and was shown: the same lines as on her slip and in her e-mail. */
function Asked({ detail, ...change }: ChangeProps & { detail: OrderDetail }) {
  const { frame } = change;
  const { words, lang, format } = frame;
  const { document } = detail.entry;
  // Ids and revisions help nobody here who has the picture.
  const [piece, size, ...rest] = orderWords(lang).rows(format, document, detail.pieceName);
  const lines: Fact[] = [
    ...(piece === undefined ? [] : [{ ...piece, value: detail.pieceName }]),
    ...(size === undefined ? [] : [size]),
    ...(document.made === 'ready'
      ? []
      : [{ label: words.order.pick, value: words.order.picks[document.pick] }]),
    // Among the rows stands that already.
    ...Object.entries(document.choices)
      .filter(([name]) => name !== 'hand')
      .map(([label, value]) => ({ label, value })),
    ...rest,
  ];
  return (
    <section aria-labelledby="asked">
      <h2 id="asked">{words.order.asked}</h2>
      {detail.pictured !== null && <PiecePicture piece={detail.pictured} width={320} />}
      <FactList facts={lines} />
      <AddressForm {...change} />
    </section>
  );
}

/** What differs from what the buyer saw: first on the page, before anything can be strung. */
function Differences({ all, frame }: { all: readonly Difference[]; frame: Frame }) {
  const { words, format } = frame;
  if (all.length === 0) return <p class="good">{words.order.same}</p>;
  return (
    <section class="warning" role="alert" aria-labelledby="differs">
      <h2 id="differs">{words.order.differs}</h2>
      <ul>
        {all.map((one) => (
          <li>
            <bdi>{words.difference(one, format)}</bdi>
          </li>
        ))}
      </ul>
      <p>{words.order.differsHint}</p>
    </section>
  );
}
