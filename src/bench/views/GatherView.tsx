/** The list to gather and to buy by, with boxes to tick; prints as it stands. */
import type { Frame } from '../models/frame.ts';
import type { Gathering, Needed } from '../models/gather.ts';

type Props = { readonly gathering: Gathering; readonly frame: Frame };

export function GatherView({ gathering, frame }: Props) {
  const { words, format } = frame;
  const { gather: said } = words;
  const { parts, wires, orders, leftOut } = gathering;
  return (
    <>
      <p class="quiet">{said.forOrders(orders.length)}</p>
      {leftOut.length > 0 && (
        <p class="warning">
          {said.leftOut} <Numbers all={leftOut} />
        </p>
      )}
      {parts.length > 0 && (
        <div
          class="scroll"
          tabIndex={0}
          role="region"
          aria-label={said.title}
          data-ticks={`gather-${orders.join('-')}`}
        >
          <table class="gather">
            <thead>
              <tr>
                <td></td>
                <th scope="col">{said.columns.what}</th>
                <th scope="col" class="number">
                  {said.columns.need}
                </th>
                <th scope="col" class="number">
                  {said.columns.have}
                </th>
                <th scope="col" class="number">
                  {said.columns.buy}
                </th>
                <th scope="col">{said.columns.orders}</th>
              </tr>
            </thead>
            <tbody>
              {parts.map((part) => (
                <Part part={part} frame={frame} />
              ))}
              {wires.map(({ id, name, number, lengthMm, orders: by }) => (
                <tr>
                  <td>
                    <input type="checkbox" name={`wire-${id}`} aria-label={name} />
                  </td>
                  <th scope="row">
                    {name} <PartNumber number={number} />
                  </th>
                  <td class="number">{said.metres(lengthMm / 1000, format)}</td>
                  <td class="number quiet">{said.uncounted}</td>
                  <td></td>
                  <td>
                    <Numbers all={by} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </>
  );
}

function PartNumber({ number }: { number: string | null }) {
  return number === null ? null : <span class="quiet">{number}</span>;
}

function Part({
  part: { id, name, number, count, stock, missing, orders },
  frame,
}: {
  part: Needed;
  frame: Frame;
}) {
  const { words, format } = frame;
  return (
    <tr>
      <td>
        <input type="checkbox" name={`part-${id}`} aria-label={name} />
      </td>
      <th scope="row">
        {name} <PartNumber number={number} />
      </th>
      <td class="number">{format.number(count)}</td>
      <td class={stock === null ? 'number quiet' : 'number'}>
        {stock === null ? words.gather.uncounted : format.number(stock)}
      </td>
      <td class="number">
        {missing !== null && missing > 0 && <strong class="warn">{format.number(missing)}</strong>}
      </td>
      <td>
        <Numbers all={orders} />
      </td>
    </tr>
  );
}

function Numbers({ all }: { readonly all: readonly string[] }) {
  return (
    <>
      {all.map((number, at) => (
        <>
          {at > 0 && ', '}
          <a class="order-number" href={`/bench/orders/${number}/`}>
            {number}
          </a>
        </>
      ))}
    </>
  );
}
