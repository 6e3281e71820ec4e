/** What is known of the whole book: from its last check. */
import { underBase } from '#ui/site/base.ts';
import { formatDateTime } from '#words/format.ts';
import type { Findings } from '../book/wholeCheck.ts';
import type { CheckState } from '../context/bench.ts';
import type { Frame } from '../models/frame.ts';
import { OrderLinks } from './OrderLinks.tsx';

type Props = { readonly frame: Frame; readonly check: CheckState };

export function CheckView({ frame, check }: Props) {
  const { keep } = frame.words;
  return (
    <section aria-labelledby="check">
      <h2 id="check">{keep.check}</h2>
      <p>{keep.checkHint}</p>
      <Outcome frame={frame} check={check} />
      <form method="post" action={underBase('/bench/keep/check/')}>
        <button type="submit">{keep.checkButton}</button>
      </form>
    </section>
  );
}

function Outcome({ frame: { words, lang }, check }: Props) {
  const { keep } = words;
  if (check.state === 'none') return <p>{keep.checkNone}</p>;
  if (check.state === 'running') return <p>{keep.checkRunning}</p>;
  const when = formatDateTime(check.at, lang);
  if (check.state === 'failed') return <p class="warning">{keep.checkFailed(when)}</p>;
  const { snapshots, ...lists } = check.findings;
  if (snapshots === 0 && Object.values(lists).every((list) => list.length === 0)) {
    return <p class="good">{keep.checkSound(when)}</p>;
  }
  return (
    <div class="warning" role="alert">
      <p>{keep.checkFound(when)}</p>
      <Found words={words} findings={check.findings} />
    </div>
  );
}

function Found({ words: { keep }, findings }: { words: Frame['words']; findings: Findings }) {
  const { structure, orders, kept, invoices, stock, snapshots } = findings;
  return (
    <ul>
      {structure.length > 0 && <li>{keep.checkStructure}</li>}
      {orders.length > 0 && (
        <li>
          {keep.checkOrders} <OrderLinks numbers={orders} />
        </li>
      )}
      {kept.length > 0 && (
        <li>
          {keep.checkKept} <OrderLinks numbers={kept} />
        </li>
      )}
      {invoices.length > 0 && <li>{keep.checkInvoices(invoices.join(', '))}</li>}
      {stock.length > 0 && <li>{keep.checkStock(stock.join(', '))}</li>}
      {snapshots > 0 && <li>{keep.checkSnapshots(snapshots)}</li>}
    </ul>
  );
}
