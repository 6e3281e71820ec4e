/** An invoice or a credit note, as it was issued, in its buyer's language. */
import { formatDate, formatMoney, formatNumber } from '#words/format.ts';
import { invoiceWords } from '#words/words.ts';
import type { Invoice } from '../book/invoices.ts';

type Props = {
  readonly paper: Invoice;
  /** Number of the credit note that takes it back; null for none. */
  readonly takenBack: string | null;
};

export function InvoiceSheet({ paper, takenBack }: Props) {
  const { invoice, number, kind, corrects, content, erasedAt } = paper;
  const { lang, seller, buyer } = content;
  const words = invoiceWords(lang);
  const paid = content.openMinor === 0;
  return (
    <article class="slip invoice" lang={lang}>
      <header>
        <p class="shop">{seller.shop}</p>
      </header>
      <div class="parties">
        <Party label={words.seller} name={seller.name} lines={seller.address} />
        {erasedAt === null ? (
          <Party label={words.buyer} name={buyer.name} lines={buyer.address} />
        ) : (
          <Party label={words.buyer} name={words.erased} lines={[]} />
        )}
      </div>
      <h1>{words.title(kind, invoice, paid)}</h1>
      {corrects !== null && <p>{words.takesBack(corrects)}</p>}
      {takenBack !== null && <p class="warning">{words.takenBack(takenBack)}</p>}
      <Facts paper={paper} number={number} />
      <Items paper={paper} />
      <p>{content.tax.hundredths === null ? content.tax.text : ''}</p>
      {kind === 'invoice' && <Paid paper={paper} />}
    </article>
  );
}

type PartyProps = { readonly label: string; readonly name: string; readonly lines: readonly string[] };

function Party({ label, name, lines }: PartyProps) {
  return (
    <div>
      <p class="quiet">{label}</p>
      <p>
        {[name, ...lines].map((line) => (
          <span class="line">
            <bdi>{line}</bdi>
          </span>
        ))}
      </p>
    </div>
  );
}

function Facts({ paper, number }: { readonly paper: Invoice; readonly number: string }) {
  const { lang, issuedOn, orderedOn, seller } = paper.content;
  const { facts } = invoiceWords(lang);
  const rows: [string, string][] = [
    [facts.number, paper.invoice],
    [facts.issued, formatDate(issuedOn, lang)],
    [facts.order, number],
    [facts.ordered, formatDate(orderedOn, lang)],
    ...(seller.taxNumber === null ? [] : [[facts.taxNumber, seller.taxNumber] as [string, string]]),
  ];
  return (
    <dl class="facts inline">
      {rows.map(([label, value]) => (
        <div>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

function Items({ paper: { kind, content } }: { readonly paper: Invoice }) {
  const { lang, currency, items, totalMinor, tax } = content;
  const words = invoiceWords(lang);
  // What a credit note takes back is less than nothing.
  const sign = kind === 'credit-note' ? -1 : 1;
  const sum = (minor: number): string => formatMoney(sign * minor, currency, lang);
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{words.columns.what}</th>
          <th scope="col" class="number">
            {words.columns.quantity}
          </th>
          <th scope="col" class="number">
            {words.columns.each}
          </th>
          <th scope="col" class="number">
            {words.columns.sum}
          </th>
        </tr>
      </thead>
      <tbody>
        {items.map(({ text, quantity, eachMinor, sumMinor }) => (
          <tr>
            <td>
              <bdi>{text}</bdi>
            </td>
            <td class="number" data-label={words.columns.quantity}>
              {quantity === null ? '' : formatNumber(quantity, lang)}
            </td>
            <td class="number" data-label={words.columns.each}>
              {eachMinor === null ? '' : formatMoney(eachMinor, currency, lang)}
            </td>
            <td class="number">{sum(sumMinor)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        {tax.minor !== null && (
          <>
            <Foot label={words.net} value={sum(totalMinor - tax.minor)} />
            <Foot label={tax.text} value={sum(tax.minor)} />
          </>
        )}
        <Foot label={words.total} value={sum(totalMinor)} strong />
      </tfoot>
    </table>
  );
}

function Foot({ label, value, strong }: { label: string; value: string; strong?: boolean }) {
  return (
    <tr class={strong === true ? 'total' : undefined}>
      <th scope="row" colSpan={3}>
        {label}
      </th>
      <td class="number">{value}</td>
    </tr>
  );
}

/** What had come in when it was issued, and what was open. */
function Paid({ paper: { content } }: { readonly paper: Invoice }) {
  const { lang, currency, payments, openMinor } = content;
  const words = invoiceWords(lang);
  const sum = (minor: number): string => formatMoney(minor, currency, lang);
  return (
    <ul class="plain">
      {payments.map(({ kind, way, day, minor }) => (
        <li>
          {words.moved(kind, way, formatDate(day, lang))}: {sum(minor)}
        </li>
      ))}
      <li>
        <b>
          {openMinor < 0 ? words.toPayBack : words.open}: {sum(Math.abs(openMinor))}
        </b>
      </li>
    </ul>
  );
}
