/** Where one order stands, and what the buyer can do with it. */
import { useState } from 'preact/hooks';
import { slipLink } from '#order/mail.ts';
import { formatDateTime, formatFor } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { OrderWords } from '#words/words.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { ShopForSizer } from '../model/input.ts';
import { saveFile } from '../adapters/saveFile.ts';
import type { Entry } from './model/outbox.ts';
import { unitOfOrder, writeMail } from './model/write.ts';
import { Rows } from '../controls/Rows.tsx';
import { CopyButton } from './CopyButton.tsx';

export type OutboxEntryProps = {
  readonly words: OrderWords;
  readonly lang: Lang;
  readonly shop: ShopForSizer;
  readonly entry: Entry;
  readonly sending: boolean;
  /** Address of the field for the size of the entry's piece. */
  readonly sizeField: string;
  readonly onTryNow: () => void;
  readonly onMailed: () => void;
  readonly onRemove: () => void;
};

export function OutboxEntry(props: OutboxEntryProps) {
  const { words, lang, shop, entry, sending, sizeField } = props;
  const { order, state } = entry;
  const [sure, setSure] = useState(false);
  const format = formatFor(lang, unitOfOrder(order), order.shown.currency);
  const rows = words.delivered(format, order);
  const mail = writeMail(order, entry.pieceName, shop, words);
  const done = state === 'received' || state === 'mailed';
  const handed = state === 'handed';
  const gone = state === 'refused' && entry.problem?.code === 'ready-gone';
  const remove = () => (done || handed || sure ? props.onRemove() : setSure(true));
  const leads = mail.long && !(state === 'waiting' || handed);
  const open = (
    <a class={mail.long || state === 'waiting' || handed ? 'button plain' : 'button'} href={mail.link}>
      {words.openMail}
    </a>
  );
  return (
    <li class="sizer-entry" data-state={state}>
      <h4>
        {words.numberIs(order.number)}: {entry.pieceName}
      </h4>
      <p role="status">{sending ? words.states.sending() : standing(props)}</p>
      {rows.length > 0 && <Rows rows={rows} />}
      {!done && mail.long && <p>{words.longMail(shop.email)}</p>}
      <div class="sizer-actions">
        {gone && (
          <a class="button" href={sizeField}>
            {words.inMySize}
          </a>
        )}
        {state === 'waiting' && !sending && (
          <button type="button" class="button" onClick={props.onTryNow}>
            {words.tryNow}
          </button>
        )}
        {!done && (
          <>
            {!mail.long && open}
            <CopyButton
              words={words}
              text={`${mail.subject}\n\n${mail.body}`}
              to={shop.email}
              leads={leads}
            />
            {mail.long && open}
          </>
        )}
        {(state === 'mail' || handed) && (
          <button type="button" class="button plain" onClick={props.onMailed}>
            {words.iSentIt}
          </button>
        )}
        <a class="button plain" href={slipLink(shop.slip, order)}>
          {words.slip}
        </a>
        <button
          type="button"
          class="button plain"
          onClick={() =>
            saveFile(`order-${order.number}.json`, 'application/json', JSON.stringify(order, null, 2))
          }
        >
          {words.download}
        </button>
        <button type="button" class="button plain" onClick={remove}>
          {sure && !done && !handed ? words.reallyRemove : words.remove}
        </button>
      </div>
    </li>
  );
}

/** The sentence that says where an order stands. */
function standing({ words, lang, entry }: OutboxEntryProps): string {
  const { order, state, problem, receivedAt, differs, askedBefore = false } = entry;
  const format = formatFor(lang, unitOfOrder(order), order.shown.currency);
  const why = problem === null ? '' : sentenceOf(words.sendProblems, problem, format);
  if (state === 'waiting') return words.states.waiting(why);
  if (state === 'refused') return problem?.code === 'ready-gone' ? why : words.states.refused(why);
  if (state === 'mail') return problem === null ? words.states.mail() : words.states.silent();
  if (state === 'handed') return words.states.handed();
  if (state === 'mailed') return words.states.mailed();
  const received = words.states.received(receivedAt === null ? '' : formatDateTime(receivedAt, lang));
  return [received, ...(askedBefore ? [words.askedBefore] : []), ...(differs ? [words.differs] : [])].join(
    ' ',
  );
}
