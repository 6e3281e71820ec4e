/** One thing of the stock: figures, a form, offcuts, and what came and went. */
import { underBase } from '#ui/site/base.ts';
import { CARD_BOX } from '#draw/drawings/card.ts';
import { formatDateTime, formatMoney } from '#words/format.ts';
import { contentFormWords, stockWords } from '#words/words.ts';
import { kindsOf } from '../../intake/stockForm.ts';
import { unitsOf } from '../../stock/amount.ts';
import { stockPath, trayPath } from '../../models/stock/paths.ts';
import type { ThingLine, ThingSheet } from '../../models/stock/thingSheet.ts';
import type { Frame } from '../../models/frame.ts';
import { choiceOf } from '../../models/content/fieldNames.ts';

type Props = { readonly sheet: ThingSheet; readonly frame: Frame };

/** Pixels across. */
const WIDTH = 160;

export function ThingView({ sheet, frame }: Props) {
  const words = stockWords(frame.lang);
  const said = words.thing;
  const { thing, onHand, counted, attempt, done } = sheet;
  const height = Math.round((WIDTH * CARD_BOX.height) / CARD_BOX.width);
  return (
    <>
      <p class="row off-paper">
        <a href={underBase('/bench/stock/')}>{said.toList}</a>
        <a href={underBase(trayPath(thing))}>{said.toTray}</a>
      </p>
      {attempt !== null && (
        <p class="warning" role="alert">
          {words.problem(attempt.problem, frame.format)}
        </p>
      )}
      {done && (
        <p class="good" role="status">
          {said.done}
        </p>
      )}
      {onHand !== null && onHand < 0 && <p class="warning">{words.countAgainHint}</p>}
      {!counted && onHand === null && <p>{said.notCounted}</p>}
      {!counted && onHand !== null && <p>{said.inFile(onHand, frame.format)}</p>}
      <div class="columns">
        <div>
          {!thing.wire && (
            <img
              class="piece"
              src={underBase(`/bench/part-pictures/${thing.id}.svg`)}
              width={WIDTH}
              height={height}
              alt=""
            />
          )}
          <Facts sheet={sheet} frame={frame} />
        </div>
        <EnterForm sheet={sheet} frame={frame} />
      </div>
      <Offcuts sheet={sheet} frame={frame} />
      <Lines sheet={sheet} frame={frame} />
    </>
  );
}

function Facts({ sheet, frame }: Props) {
  const { lang, format, shop } = frame;
  const words = stockWords(lang);
  const said = words.thing;
  const { thing, onHand, reserved, free, reservedBy, counted, low } = sheet;
  const { keep, sold, wire } = thing;
  const figure = (amount: number): string => words.withUnit(amount, wire, format);
  return (
    <dl class="facts">
      {counted && (
        <>
          <div class={(onHand ?? 0) < 0 ? 'bad' : undefined}>
            <dt>{said.there}</dt>
            <dd>{figure(onHand ?? 0)}</dd>
          </div>
          <div>
            <dt>{said.reserved}</dt>
            <dd>
              {figure(reserved)}
              {reservedBy.map(({ number, amount }) => (
                <>
                  {'; '}
                  {words.amount(amount, wire, format)}{' '}
                  <a class="order-number" href={underBase(`/bench/orders/${number}/`)}>
                    {said.order(number)}
                  </a>
                </>
              ))}
            </dd>
          </div>
          <div class={low || (free ?? 0) < 0 ? 'bad' : undefined}>
            <dt>{said.free}</dt>
            <dd>{figure(free ?? 0)}</dd>
          </div>
        </>
      )}
      <div>
        <dt>{said.mark}</dt>
        <dd>{keep === null ? said.noMark : figure(keep)}</dd>
      </div>
      {sold !== null && (
        <div>
          <dt>{said.bought}</dt>
          <dd>
            {said.boughtAs(
              choiceOf(contentFormWords(lang).options, 'component', ['sold', 'by'], sold.by),
              figure(sold.holds),
              sold.estimated,
              formatMoney(sold.priceMinor, shop.rules.currency, lang),
            )}
          </dd>
        </div>
      )}
      {sold !== null && sold.supplier !== null && (
        <div>
          <dt>{said.supplier}</dt>
          <dd>
            {sold.supplier} {sold.number}
          </dd>
        </div>
      )}
    </dl>
  );
}

function EnterForm({ sheet, frame }: Props) {
  const words = stockWords(frame.lang);
  const said = words.thing;
  const { thing, lastId, attempt } = sheet;
  const kinds = kindsOf(thing);
  const mine = kinds.some((kind) => kind === attempt?.form.get('kind')) ? attempt : null;
  const typed = (name: string): string => mine?.form.get(name) ?? '';
  return (
    <section aria-labelledby="enter" class="off-paper">
      <h2 id="enter">{said.enter}</h2>
      <form class="stacked" method="post" action={underBase(stockPath(thing))}>
        <input type="hidden" name="seen" value={lastId} />
        <label>
          {said.what}
          <select name="kind">
            {kinds.map((kind) => (
              <option value={kind} selected={kind === typed('kind')}>
                {words.kinds[kind]}
              </option>
            ))}
          </select>
        </label>
        <div class="row">
          <label>
            {thing.wire ? said.howMuch : said.many}
            <input
              name="amount"
              value={typed('amount')}
              inputMode="decimal"
              autocomplete="off"
              maxLength={12}
              size={8}
              required
            />
          </label>
          <label>
            {said.unit}
            <select name="unit">
              {unitsOf(thing).map((unit) => (
                <option value={unit} selected={unit === typed('unit')}>
                  {words.units[unit]}
                </option>
              ))}
            </select>
          </label>
        </div>
        <label>
          {said.note}
          <input name="note" value={typed('note')} maxLength={200} autocomplete="off" dir="auto" />
        </label>
        <p class="quiet">{said.noteHint}</p>
        <button class="main" type="submit">
          {said.button}
        </button>
        <p class="quiet">{thing.wire ? said.reel : said.estimate}</p>
      </form>
    </section>
  );
}

function Offcuts({ sheet: { thing, offcuts }, frame }: Props) {
  const said = stockWords(frame.lang).thing;
  if (offcuts.length === 0) return null;
  return (
    <section aria-labelledby="offcuts">
      <h2 id="offcuts">{said.offcuts}</h2>
      <p>{said.offcutsLead}</p>
      <ul>
        {offcuts.map((mm) => {
          const length = `${frame.format.number(mm)} mm`;
          return (
            <li>
              <form class="row" method="post" action={underBase(stockPath(thing))}>
                <span>{length}</span>
                <input type="hidden" name="kind" value="offcut-gone" />
                <input type="hidden" name="mm" value={mm} />
                <button type="submit" aria-label={said.offcutGone(length)}>
                  {said.offcutGoneShort}
                </button>
              </form>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function Lines({ sheet, frame }: Props) {
  const said = stockWords(frame.lang).thing;
  const { lines } = sheet;
  const { columns } = said;
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby="lines">
      <h2 id="lines">{said.lines}</h2>
      <div class="scroll" tabIndex={0} role="group" aria-labelledby="lines">
        <table class="orders">
          <thead>
            <tr>
              <th scope="col">{columns.when}</th>
              <th scope="col">{columns.what}</th>
              <th scope="col" class="number">
                {columns.amount}
              </th>
              <th scope="col" class="number">
                {columns.after}
              </th>
              <th scope="col">{columns.note}</th>
              <td class="off-paper"></td>
            </tr>
          </thead>
          <tbody>
            {lines.map((one) => (
              <Line one={one} sheet={sheet} frame={frame} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

/** With its sign, as it changed what was there. */
const signed = (text: string, amount: number): string => (amount > 0 ? `+${text}` : text);

function Line({ one, sheet: { thing }, frame }: Props & { readonly one: ThingLine }) {
  const { lang, format } = frame;
  const words = stockWords(lang);
  const said = words.thing;
  const { line, after, strikable } = one;
  const { amount, kind, at, who, note, number, entered, counted, offcut, struckBy } = line;
  const figure = (value: number): string => words.amount(value, thing.wire, format);
  const details = [
    counted === null ? '' : said.counted(figure(counted)),
    offcut === null ? '' : said.offcut(`${format.number(offcut)} mm`),
    entered === '' || entered === String(Math.abs(amount)) || entered === String(counted) ? '' : entered,
    note,
    struckBy === null ? '' : said.takenBack,
  ].filter((text) => text !== '');
  const what = `${words.kinds[kind]} ${signed(figure(amount), amount)}`;
  return (
    <tr class={struckBy === null ? undefined : 'quiet'}>
      <td data-label={said.columns.when}>
        {formatDateTime(at, lang)} <small class="quiet">{words.who(who)}</small>
      </td>
      <th scope="row">{words.kinds[kind]}</th>
      <td class="number" data-label={said.columns.amount}>
        {signed(figure(amount), amount)}
      </td>
      <td class="number" data-label={said.columns.after}>
        {figure(after)}
      </td>
      <td data-label={said.columns.note}>
        {number !== null && (
          <a class="order-number" href={underBase(`/bench/orders/${number}/`)}>
            {said.order(number)}
          </a>
        )}{' '}
        <bdi>{details.join('; ')}</bdi>
      </td>
      <td class="off-paper">
        {strikable && (
          <form class="inline" method="post" action={underBase(stockPath(thing))}>
            <input type="hidden" name="kind" value="strike" />
            <input type="hidden" name="line" value={line.id} />
            <button type="submit" aria-label={said.strikeLine(what)}>
              {said.strike}
            </button>
          </form>
        )}
      </td>
    </tr>
  );
}
