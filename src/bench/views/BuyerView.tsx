/** One buyer: her sizes, her hand, what she ordered, each to be made or strung again with one click. */
import { underBase } from '#ui/site/base.ts';
import { formatDate } from '#words/format.ts';
import { orderWords, type HandWords } from '#words/words.ts';
import type { Buyer, BuyerOrder } from '../models/buyers.ts';
import type { Frame } from '../models/frame.ts';
import { FactList, type Fact } from './FactList.tsx';

type Props = { readonly buyer: Buyer; readonly frame: Frame; readonly words: HandWords };

export function BuyerView({ buyer, frame, words }: Props) {
  const { buyers: said } = words;
  const { otherNames, email, sizes, hand } = buyer;
  const facts: Fact[] = [
    { label: said.columns.email, value: email === '' ? said.noEmail : email },
    ...(otherNames.length === 0 ? [] : [{ label: said.names, value: frame.format.list(otherNames) }]),
    { label: said.hand, value: said.hands[hand] },
  ];
  return (
    <>
      <FactList facts={facts} />
      <section aria-labelledby="sizes">
        <h2 id="sizes">{said.sizes}</h2>
        <p class="quiet">{said.sizesHint}</p>
        <ul>
          {sizes.map((size) => (
            <li>
              <bdi>
                {said.when(orderWords(frame.lang).size(frame.format, size), formatDate(size.at, frame.lang))}
              </bdi>
            </li>
          ))}
        </ul>
      </section>
      <Orders buyer={buyer} frame={frame} words={words} />
      <Erase buyer={buyer} said={said} />
    </>
  );
}

const COLUMNS = ['number', 'piece', 'size', 'hand', 'received', 'state', 'do'] as const;

function Orders({ buyer: { orders }, frame, words }: Props) {
  const { buyers: said } = words;
  return (
    <section aria-labelledby="ordered">
      <h2 id="ordered">{said.orders}</h2>
      <div class="scroll" tabIndex={0} role="group" aria-labelledby="ordered">
        <table class="orders">
          <thead>
            <tr>
              {COLUMNS.map((name) => (
                <th scope="col">{said.orderColumns[name]}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {orders.map((order) => (
              <Row order={order} frame={frame} words={words} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

type RowProps = { readonly order: BuyerOrder; readonly frame: Frame; readonly words: HandWords };

function Row({ order: { entry, pieceName }, frame, words }: RowProps) {
  const { document, receivedAt, state } = entry;
  const { number, quantity, hand } = document;
  const { orderColumns: label, hands, againFor, restringFor } = words.buyers;
  return (
    <tr>
      <th scope="row" data-label={label.number}>
        <a class="order-number" href={underBase(`/bench/orders/${number}/`)}>
          {number}
        </a>
      </th>
      <td data-label={label.piece}>
        {quantity > 1 ? `${quantity} × ` : ''}
        {pieceName}
      </td>
      <td data-label={label.size}>
        <bdi>{orderWords(frame.lang).size(frame.format, document)}</bdi>
      </td>
      <td data-label={label.hand}>{hands[hand]}</td>
      <td data-label={label.received}>{formatDate(receivedAt, frame.lang)}</td>
      <td data-label={label.state}>
        <span class={`mark state-${state}`}>{frame.words.states[state]}</span>
      </td>
      <td data-label={label.do}>
        <span class="row">
          <a
            class="button"
            href={underBase(`/bench/orders/new/?again=${number}`)}
            aria-label={againFor(number)}
          >
            {words.again}
          </a>
          <a
            class="button"
            href={underBase(`/bench/orders/new/?restring=${number}`)}
            aria-label={restringFor(number)}
          >
            {words.restring}
          </a>
        </span>
      </td>
    </tr>
  );
}

function Erase({ buyer: { orders }, said }: { readonly buyer: Buyer; readonly said: HandWords['buyers'] }) {
  const [newest] = orders;
  if (newest === undefined) return null;
  return (
    <details class="danger">
      <summary>{said.erase}</summary>
      <p>{said.eraseHint(orders.length)}</p>
      <form method="post" action={underBase(`/bench/buyers/${newest.entry.document.number}/erase/`)}>
        <button type="submit">{said.reallyErase}</button>
      </form>
    </details>
  );
}
