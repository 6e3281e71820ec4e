/** An order's money: what it comes to, what came and went, what is open, and the forms to write more down. */
import { dayOf } from '#words/day.ts';
import { formatDate, formatMoney, majorAmount } from '#words/format.ts';
import { PAYMENT_WAYS, type PaymentKind } from '#words/benchCodes.ts';
import { moneyWords } from '#words/words.ts';
import { counts, type Payment } from '../book/payments.ts';
import { NOTE_CAP } from '../book/change.ts';
import { isAttempt, typed } from '../models/attempt.ts';
import type { Money } from '../models/money.ts';
import { ChangeForm, type ChangeProps } from './ChangeForm.tsx';
import { FactList, type Fact } from './FactList.tsx';

type Props = ChangeProps & { readonly money: Money };

export function MoneySection(props: Props) {
  const { money, attempt, frame } = props;
  const words = moneyWords(frame.lang);
  const open = money.kept && money.ledger.openMinor > 0;
  const more = money.payments.length > 0 ? words.recordMore : words.record;
  return (
    <section aria-labelledby="money">
      <h2 id="money">
        {words.title}
        {money.kept && (
          <>
            :{' '}
            <span class={`mark money-${money.ledger.standing}`}>{words.standing[money.ledger.standing]}</span>
          </>
        )}
      </h2>
      {money.kept ? <FactList facts={factsOf(props)} /> : <p class="quiet">{words.notKept}</p>}
      <Payments {...props} />
      <details open={open || isAttempt(attempt, { kind: 'paid' })}>
        <summary>{more}</summary>
        <MovementForm {...props} kind="paid" usualMinor={open ? money.ledger.openMinor : 0} />
      </details>
      {money.ledger.paidMinor > 0 && (
        <details open={money.ledger.standing === 'to-pay-back' || isAttempt(attempt, { kind: 'refunded' })}>
          <summary>{words.recordRefund}</summary>
          <MovementForm {...props} kind="refunded" usualMinor={Math.max(0, -money.ledger.openMinor)} />
        </details>
      )}
    </section>
  );
}

function factsOf({ entry, money, frame: { lang } }: Props): Fact[] {
  const words = moneyWords(lang);
  const { due, price, ledger, basis } = money;
  const sum = (minor: number): string => formatMoney(minor, due.currency, lang);
  const settled = entry.state === 'cancelled' || entry.state === 'sent';
  const total = `${sum(price.minor)}, ${words.totalBasis[basis]}`;
  return [
    { label: words.total, value: entry.state === 'cancelled' ? words.nothingDue : total },
    { label: words.paid, value: sum(ledger.paidMinor) },
    ...(ledger.refundedMinor > 0 ? [{ label: words.refunded, value: sum(ledger.refundedMinor) }] : []),
    ledger.openMinor < 0
      ? { label: words.toPayBack, value: sum(-ledger.openMinor), bad: true }
      : { label: words.open, value: sum(ledger.openMinor), bad: settled && ledger.openMinor > 0 },
  ];
}

function Payments(props: Props) {
  const { money, frame } = props;
  const words = moneyWords(frame.lang);
  if (money.payments.length === 0) return null;
  return (
    <>
      <h3>{words.list}</h3>
      <ol class="payments">
        {money.payments.map((payment) => (
          <PaymentLine {...props} payment={payment} />
        ))}
      </ol>
    </>
  );
}

function PaymentLine({ payment, ...props }: Props & { readonly payment: Payment }) {
  const { money, attempt, frame } = props;
  const words = moneyWords(frame.lang);
  const { id, kind, way, day, minor, currency, struckAt } = payment;
  const form = { kind: 'strike', id };
  const line = `${formatDate(day, frame.lang)}: ${words.line(kind, way)}, ${formatMoney(minor, currency, frame.lang)}`;
  if (struckAt !== null) {
    return (
      <li class="quiet">
        <s>{line}</s> ({words.struck})
      </li>
    );
  }
  return (
    <li>
      {line}
      {!counts(payment, money.due) && <span class="quiet"> ({words.otherCurrency})</span>}
      <details open={isAttempt(attempt, form)}>
        <summary>{words.strike}</summary>
        <ChangeForm {...props} form={form} class="row">
          <label>
            {words.next.reason}{' '}
            <input name="reason" maxLength={NOTE_CAP} required value={typed(attempt, form, 'reason', '')} />
          </label>
          <button type="submit">{words.strikeButton}</button>
        </ChangeForm>
      </details>
    </li>
  );
}

type FormProps = Props & { readonly kind: PaymentKind; readonly usualMinor: number };

/** `usualMinor`: what is most likely; 0 for nothing to go by. */
function MovementForm({ kind, usualMinor, ...props }: FormProps) {
  const { money, attempt, frame } = props;
  const words = moneyWords(frame.lang);
  const form = { kind };
  const usual = usualMinor === 0 ? '' : majorAmount(usualMinor, money.due.currency);
  const way = typed(attempt, form, 'way', PAYMENT_WAYS[0]);
  const tooMuch = isAttempt(attempt, form) && attempt.problem.code === 'more-than-open';
  return (
    <ChangeForm {...props} form={form}>
      <div class="row">
        <label>
          {words.sum} ({money.due.currency}){' '}
          <input
            name="sum"
            inputMode="decimal"
            size={10}
            required
            autocomplete="off"
            value={typed(attempt, form, 'sum', usual)}
          />
        </label>
        <label>
          {words.day}{' '}
          <input type="date" name="day" required value={typed(attempt, form, 'day', dayOf(frame.now))} />
        </label>
        <label>
          {words.way}{' '}
          <select name="way">
            {PAYMENT_WAYS.map((one) => (
              <option value={one} selected={one === way}>
                {words.ways[one]}
              </option>
            ))}
          </select>
        </label>
      </div>
      {tooMuch && (
        <label>
          <input type="checkbox" name="really" value="yes" /> {words.really}
        </label>
      )}
      <button type="submit">{kind === 'paid' ? words.recordButton : words.refundButton}</button>
    </ChangeForm>
  );
}
