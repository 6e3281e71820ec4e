/** The stock from tray to tray, with what runs low, and what files say otherwise. */
import { underBase } from '#ui/site/base.ts';
import { stockWords, type StockWords } from '#words/words.ts';
import { stockPath } from '../../models/stock/paths.ts';
import { STOCK_SHOWS, type StockList, type StockRow } from '../../models/stock/stockList.ts';
import type { StockNow } from '../../stock/stockNow.ts';
import type { Frame } from '../../models/frame.ts';

type Props = { readonly list: StockList; readonly stock: StockNow; readonly frame: Frame };

export function StockListView({ list, stock, frame }: Props) {
  const words = stockWords(frame.lang);
  return (
    <>
      <p>{words.lead}</p>
      {list.clockBack && <p class="warning">{words.clockBack}</p>}
      {!list.anyCounted && <p>{words.nothing}</p>}
      <Begin list={list} words={words} frame={frame} />
      <ByHand list={list} stock={stock} words={words} frame={frame} />
      {list.files.toWrite.length > 0 && (
        <p class="row">
          <span>{words.toPublish(list.files.toWrite.length)}</span>
          <a href={underBase('/bench/publish/')}>{words.publish}</a>
        </p>
      )}
      <form class="filter off-paper" method="get" action={underBase('/bench/stock/')} role="search">
        <label>
          {words.find}
          <input type="search" name="q" value={list.text} maxLength={100} placeholder={words.findHint} />
        </label>
        <label>
          {words.show}
          <select name="show">
            {STOCK_SHOWS.map((one) => (
              <option value={one} selected={one === list.show}>
                {words.shows[one]}
              </option>
            ))}
          </select>
        </label>
        <button type="submit">{words.look}</button>
      </form>
      {list.rows.length === 0 ? <p>{words.none}</p> : <Rows list={list} words={words} frame={frame} />}
      <p class="quiet">{words.before}</p>
    </>
  );
}

type PartProps = { readonly list: StockList; readonly words: StockWords; readonly frame: Frame };

function Begin({ list: { files }, words, frame }: PartProps) {
  if (files.toBegin.length === 0) return null;
  return (
    <section aria-labelledby="begin" class="off-paper">
      <h2 id="begin">{words.begin.title}</h2>
      <p>{words.begin.lead(files.toBegin.length)}</p>
      <ul>
        {files.toBegin.map(({ name, inFile }) => (
          <li>
            {name}: {frame.format.number(inFile ?? 0)}
          </li>
        ))}
      </ul>
      <form method="post" action={underBase('/bench/stock/')}>
        <button type="submit" name="do" value="begin">
          {words.begin.button}
        </button>
      </form>
    </section>
  );
}

function ByHand({ list: { files }, stock, words, frame: { format } }: PartProps & { stock: StockNow }) {
  if (files.byHand.length === 0) return null;
  return (
    <section aria-labelledby="by-hand" class="warning off-paper">
      <h2 id="by-hand">{words.differs.title}</h2>
      <p>{words.differs.lead}</p>
      <ul>
        {files.byHand.map(({ thing, free }) => (
          <li>
            {thing.name}: {words.differs.says(thing.inFile, free, format)}
            <form class="row" method="post" action={underBase('/bench/stock/')}>
              <input type="hidden" name="thing" value={thing.key} />
              <input type="hidden" name="said" value={thing.inFile ?? ''} />
              <input type="hidden" name="seen" value={stock.balance(thing.key)?.lastId ?? 0} />
              {thing.inFile !== null && (
                <button type="submit" name="do" value="count">
                  {words.differs.count(thing.inFile, format)}
                </button>
              )}
              <button type="submit" name="do" value="ours">
                {words.differs.ours(free, format)}
              </button>
            </form>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Rows({ list, words, frame }: PartProps) {
  const { columns } = words;
  return (
    <div class="scroll" tabIndex={0} role="group" aria-label={words.title}>
      <table class="orders">
        <thead>
          <tr>
            <th scope="col">{columns.tray}</th>
            <th scope="col">{columns.what}</th>
            <th scope="col" class="number">
              {columns.there}
            </th>
            <th scope="col" class="number">
              {columns.reserved}
            </th>
            <th scope="col" class="number">
              {columns.free}
            </th>
            <th scope="col" class="number">
              {columns.mark}
            </th>
          </tr>
        </thead>
        <tbody>
          {list.rows.map((row) => (
            <Row row={row} words={words} frame={frame} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Row({ row, words, frame: { format } }: { row: StockRow; words: StockWords; frame: Frame }) {
  const { thing, onHand, reserved, free, low, short, counted } = row;
  const { columns } = words;
  const figure = (amount: number): string => words.amount(amount, thing.wire, format);
  return (
    <tr>
      <td data-label={columns.tray}>{thing.tray}</td>
      <th scope="row">
        <a href={underBase(stockPath(thing))}>{thing.name}</a>{' '}
        {thing.number !== null && <span class="quiet">{thing.number}</span>}
        {onHand !== null && onHand < 0 && <span class="mark warn">{words.countAgain}</span>}
        {short && onHand !== null && onHand >= 0 && <span class="mark warn">{words.short}</span>}
        {low && !short && <span class="mark warn">{words.low}</span>}
      </th>
      {onHand === null || !counted ? (
        <td class="quiet" colSpan={3} data-label={columns.there}>
          {onHand === null ? words.uncounted : `${columns.file}: ${figure(onHand)}`}
        </td>
      ) : (
        <>
          <td class="number" data-label={columns.there}>
            {figure(onHand)}
          </td>
          <td class="number" data-label={columns.reserved}>
            {reserved === 0 ? '' : figure(reserved)}
          </td>
          <td class="number" data-label={columns.free}>
            {figure(free ?? 0)}
          </td>
        </>
      )}
      <td class="number quiet" data-label={columns.mark}>
        {thing.keep === null ? '' : figure(thing.keep)}
      </td>
    </tr>
  );
}
