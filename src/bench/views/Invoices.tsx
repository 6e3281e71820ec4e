/** An order's invoices and credit notes, and the buttons that issue them. */
import { underBase } from '#ui/site/base.ts';
import { formatDate, formatMoney } from '#words/format.ts';
import { moneyWords } from '#words/words.ts';
import { NOTE_CAP } from '../book/change.ts';
import { standing, type Invoice } from '../book/invoices.ts';
import { isAttempt, typed } from '../models/attempt.ts';
import type { Money } from '../models/money.ts';
import { ChangeForm, type ChangeProps } from './ChangeForm.tsx';

type Props = ChangeProps & { readonly money: Money; readonly invoices: readonly Invoice[] };

export function Invoices({ invoices, ...props }: Props) {
  const { entry, frame, money } = props;
  const words = moneyWords(frame.lang);
  const own = words.invoices;
  const stands = standing(invoices);
  const canIssue = stands === null && entry.erasedAt === null;
  return (
    <section aria-labelledby="invoices">
      <h2 id="invoices">{own.title}</h2>
      {invoices.length > 0 && (
        <ul>
          {invoices.map((one) => (
            <Line invoice={one} frame={frame} />
          ))}
        </ul>
      )}
      {stands !== null && <Standing {...props} money={money} stands={stands} />}
      {canIssue && frame.shop.seller === null && (
        <p class="quiet">{words.problem({ code: 'no-seller' }, frame.format)}</p>
      )}
      {canIssue && frame.shop.seller !== null && (
        <ChangeForm {...props} form={{ kind: 'invoice' }}>
          <button type="submit">{own.issue}</button>
          <p class="quiet">{own.hint}</p>
        </ChangeForm>
      )}
      {frame.shop.seller !== null && <p class="quiet">{own.rules}</p>}
    </section>
  );
}

function Line({ invoice: one, frame }: { readonly invoice: Invoice; readonly frame: Props['frame'] }) {
  const own = moneyWords(frame.lang).invoices;
  const { invoice, kind, corrects, content } = one;
  return (
    <li>
      <a href={underBase(`/bench/invoices/${encodeURIComponent(invoice)}/`)}>
        {own.line(own.names[kind], invoice, formatDate(content.issuedOn, frame.lang))}
      </a>
      {corrects !== null && ` (${own.takesBack(corrects)})`}
    </li>
  );
}

type StandingProps = ChangeProps & { readonly money: Money; readonly stands: Invoice };

function Standing({ money, stands, ...props }: StandingProps) {
  const { attempt, frame } = props;
  const words = moneyWords(frame.lang);
  const own = words.invoices;
  const { totalMinor, currency } = stands.content;
  const { price } = money;
  const form = { kind: 'credit-note' };
  const same = totalMinor === price.minor && currency === price.currency;
  const sum = (minor: number, of: string): string => formatMoney(minor, of, frame.lang);
  return (
    <>
      {!same && (
        <p class="warning" role="note">
          {own.differs(sum(totalMinor, currency), sum(price.minor, price.currency))}
        </p>
      )}
      <details open={isAttempt(attempt, form)}>
        <summary>{own.takeBack}</summary>
        <ChangeForm {...props} form={form}>
          <input type="hidden" name="corrects" value={stands.invoice} />
          <p>{own.takeBackHint}</p>
          <label>
            {words.next.reason}{' '}
            <input name="reason" maxLength={NOTE_CAP} required value={typed(attempt, form, 'reason', '')} />
          </label>
          <button type="submit">{own.takeBackButton}</button>
        </ChangeForm>
      </details>
    </>
  );
}
