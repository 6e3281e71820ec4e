/** What to buy, and the list to pick by from tray to tray, with boxes to tick; prints as it stands. */
import { underBase } from '#ui/site/base.ts';
import { shoppingWords } from '#words/words.ts';
import type { Frame } from '../models/frame.ts';
import type { GatherFor, Gathering, Needed, NeededWire, Share } from '../models/gather.ts';

type Props = { readonly gathering: Gathering; readonly wanted: GatherFor; readonly frame: Frame };

export function GatherView({ gathering, wanted, frame }: Props) {
  const { gather: said } = frame.words;
  const { parts, orders, leftOut } = gathering;
  return (
    <>
      <p class="quiet">{said.forOrders(orders.length)}</p>
      {'of' in wanted && (
        <p class="off-paper">
          {wanted.of === 'agreed' ? (
            <a href={underBase('/bench/gather/')}>{said.allOpen}</a>
          ) : (
            <a href={underBase('/bench/gather/?of=agreed')}>{said.onlyAgreed}</a>
          )}
        </p>
      )}
      {leftOut.length > 0 && (
        <p class="warning">
          {said.leftOut} <Numbers all={leftOut} />
        </p>
      )}
      <ToBuy parts={parts} frame={frame} />
      {parts.length > 0 && <PickList gathering={gathering} frame={frame} />}
    </>
  );
}

function ToBuy({ parts, frame: { words, format, lang } }: { parts: readonly Needed[]; frame: Frame }) {
  const missing = parts.filter((part) => (part.missing ?? 0) > 0);
  if (missing.length === 0) return null;
  return (
    <section aria-labelledby="buy">
      <h2 id="buy">{words.gather.buy}</h2>
      <ul>
        {missing.map((part) => (
          <li>
            <strong class="warn">{format.number(part.missing ?? 0)}</strong> × {part.name}{' '}
            <PartNumber number={part.number} />
          </li>
        ))}
      </ul>
      <p class="off-paper">
        <a href={underBase('/bench/shopping/')}>{shoppingWords(lang).toList}</a>
      </p>
    </section>
  );
}

function PickList({ gathering, frame }: { gathering: Gathering; frame: Frame }) {
  const { gather: said } = frame.words;
  const { parts, wires, orders } = gathering;
  return (
    <section aria-labelledby="pick">
      <h2 id="pick">{said.pick}</h2>
      <p class="quiet off-paper">{said.pickHint}</p>
      <div
        class="scroll"
        tabIndex={0}
        role="group"
        aria-labelledby="pick"
        data-ticks={`gather-${orders.join('-')}`}
      >
        <table class="gather">
          <thead>
            <tr>
              <td></td>
              <th scope="col">{said.columns.tray}</th>
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
            {wires.map((wire) => (
              <Wire wire={wire} frame={frame} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

function PartNumber({ number }: { number: string | null }) {
  return number === null ? null : <span class="quiet">{number}</span>;
}

/** Box, tray and name: how each row begins. */
function Head({ item, tick }: { item: Omit<NeededWire, 'lengthMm' | 'stockMm' | 'offcuts'>; tick: string }) {
  return (
    <>
      <td>
        <input type="checkbox" name={tick} aria-label={item.name} />
      </td>
      <td class="tray">{item.tray}</td>
      <th scope="row">
        {item.name} <PartNumber number={item.number} />
      </th>
    </>
  );
}

function Part({ part, frame }: { part: Needed; frame: Frame }) {
  const { words, format } = frame;
  const { id, count, stock, missing, orders } = part;
  return (
    <tr>
      <Head item={part} tick={`part-${id}`} />
      <td class="number">{format.number(count)}</td>
      <td class={stock === null ? 'number quiet' : 'number'}>
        {stock === null ? words.gather.uncounted : format.number(stock)}
      </td>
      <td class="number">
        {missing !== null && missing > 0 && <strong class="warn">{format.number(missing)}</strong>}
      </td>
      <td>
        <Shares all={orders} say={(amount) => format.number(amount)} />
      </td>
    </tr>
  );
}

function Wire({ wire, frame: { words, format } }: { wire: NeededWire; frame: Frame }) {
  const metres = (mm: number): string => words.gather.metres(mm / 1000, format);
  const { stockMm } = wire;
  return (
    <tr>
      <Head item={wire} tick={`wire-${wire.id}`} />
      <td class="number">{metres(wire.lengthMm)}</td>
      <td class={stockMm === null ? 'number quiet' : 'number'}>
        {stockMm === null ? words.gather.uncounted : metres(stockMm)}
      </td>
      <td class="number">
        {stockMm !== null && wire.lengthMm > stockMm && (
          <strong class="warn">{metres(wire.lengthMm - stockMm)}</strong>
        )}
      </td>
      <td>
        <Shares all={wire.orders} say={metres} />
        {wire.offcuts.map(({ order, cutMm, offcutMm }) => (
          <small class="quiet from-offcut">
            {words.gather.fromOffcut(format.number(cutMm), format.number(offcutMm), order)}
          </small>
        ))}
      </td>
    </tr>
  );
}

/** Whose it is, and how much of it where there are several. */
function Shares({ all, say }: { readonly all: readonly Share[]; readonly say: (amount: number) => string }) {
  return (
    <>
      {all.map(({ order, amount }, at) => (
        <>
          {at > 0 && ', '}
          <span class="order-number">
            {all.length > 1 && `${say(amount)} `}
            <a href={underBase(`/bench/orders/${order}/`)}>{order}</a>
          </span>
        </>
      ))}
    </>
  );
}

function Numbers({ all }: { readonly all: readonly string[] }) {
  return (
    <>
      {all.map((number, at) => (
        <>
          {at > 0 && ', '}
          <a class="order-number" href={underBase(`/bench/orders/${number}/`)}>
            {number}
          </a>
        </>
      ))}
    </>
  );
}
