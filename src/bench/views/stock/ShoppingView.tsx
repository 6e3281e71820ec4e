/** The shopping list by supplier; what came of it is entered from the same list. */
import { underBase } from '#ui/site/base.ts';
import { formatMoney } from '#words/format.ts';
import { shoppingWords, stockWords } from '#words/words.ts';
import { boughtIn, cameField } from '../../intake/stockForm.ts';
import { stockPath } from '../../models/stock/paths.ts';
import type { MakeRow, ShoppingSheet } from '../../models/stock/shoppingSheet.ts';
import { unitHolds, type Shopping, type ToBuy } from '../../stock/shopping.ts';
import type { StockNow } from '../../stock/stockNow.ts';
import type { Frame } from '../../models/frame.ts';

type Props = { readonly sheet: ShoppingSheet; readonly stock: StockNow; readonly frame: Frame };

export function ShoppingView({ sheet, stock, frame }: Props) {
  const { lang, format, shop } = frame;
  const said = shoppingWords(lang);
  const { shopping, attempt, done, leftOut } = sheet;
  const money = (minor: number): string => formatMoney(minor, shop.rules.currency, lang);
  return (
    <>
      <p>{said.lead(shop.stock.sparePercent)}</p>
      {done && (
        <p class="good" role="status">
          {said.done}
        </p>
      )}
      {attempt !== null && (
        <p class="warning" role="alert">
          {stockWords(lang).problem(attempt.problem, format)}
        </p>
      )}
      <Wanted sheet={sheet} frame={frame} />
      {leftOut.length > 0 && (
        <p class="warning">
          {said.leftOut}{' '}
          {leftOut.map((number, at) => (
            <>
              {at > 0 && ', '}
              <a class="order-number" href={underBase(`/bench/orders/${number}/`)}>
                {number}
              </a>
            </>
          ))}
        </p>
      )}
      <p class={shopping.suppliers.length === 0 ? undefined : 'quiet off-paper'}>
        {shopping.suppliers.length === 0 ? said.nothing : said.receivedHint}
      </p>
      {shopping.suppliers.map((supplier, at) => (
        <Supplier supplier={supplier} id={`supplier-${at}`} sheet={sheet} stock={stock} frame={frame} />
      ))}
      {shopping.suppliers.length > 1 && (
        <p>
          {said.total}: <strong>{money(shopping.sumMinor)}</strong>
        </p>
      )}
      <Uncounted shopping={shopping} frame={frame} />
    </>
  );
}

function Wanted({ sheet, frame }: Omit<Props, 'stock'>) {
  const said = shoppingWords(frame.lang);
  const { of, marks, makes } = sheet;
  return (
    <form class="off-paper" method="get" action={underBase('/bench/shopping/')}>
      <label>
        {said.of}{' '}
        <select name="of">
          {(['open', 'agreed'] as const).map((one) => (
            <option value={one} selected={one === of}>
              {said.ofs[one]}
            </option>
          ))}
        </select>
      </label>
      <label>
        <input type="checkbox" name="marks" value="yes" checked={marks} /> {said.marks}
      </label>
      <fieldset>
        <legend>{said.make}</legend>
        {makes.map((make, at) => (
          <Make make={make} id={`make-${at}`} sheet={sheet} frame={frame} />
        ))}
      </fieldset>
      <p class="row">
        <button class="main" type="submit">
          {said.look}
        </button>
        <button type="button" data-print>
          {said.print}
        </button>
      </p>
    </form>
  );
}

function Make(props: Omit<Props, 'stock'> & { readonly make: MakeRow; readonly id: string }) {
  const { make, id, sheet, frame } = props;
  const said = shoppingWords(frame.lang);
  const { piece, size, many, problem } = make;
  const wrong = problem === null ? {} : { 'aria-invalid': 'true' as const, 'aria-describedby': id };
  return (
    <div class="row stacked">
      <label>
        {said.piece}
        <select name="piece" {...(problem === 'no-piece' ? wrong : {})}>
          <option value="">{said.noPiece}</option>
          {sheet.pieces.map((one) => (
            <option value={one.id} selected={one.id === piece}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      <label>
        {said.many}
        <input
          name="many"
          value={many}
          inputMode="numeric"
          size={4}
          maxLength={4}
          autocomplete="off"
          {...(problem === 'many' ? wrong : {})}
        />
      </label>
      <label>
        {said.size}
        <input
          name="size"
          value={size}
          size={12}
          maxLength={40}
          placeholder={said.sizeHint}
          autocomplete="off"
          {...(problem === 'size' || problem === 'cannot-be-made' ? wrong : {})}
        />
      </label>
      {problem !== null && (
        <span class="bad" id={id} role="alert">
          {said.makeProblems[problem]}
        </span>
      )}
    </div>
  );
}

type SupplierProps = Props & { readonly supplier: Shopping['suppliers'][number]; readonly id: string };

function Supplier({ supplier, id, sheet, stock, frame }: SupplierProps) {
  const { lang, shop } = frame;
  const said = shoppingWords(lang);
  const { columns } = said;
  const { name, rows, sumMinor } = supplier;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{name ?? said.noSupplier}</h2>
      <form
        method="post"
        action={underBase(`/bench/shopping/${sheet.query === '' ? '' : `?${sheet.query}`}`)}
      >
        <div class="scroll" tabIndex={0} role="group" aria-labelledby={id}>
          <table class="orders">
            <thead>
              <tr>
                <th scope="col">{columns.what}</th>
                <th scope="col">{columns.number}</th>
                <th scope="col" class="number">
                  {columns.need}
                </th>
                <th scope="col" class="number">
                  {columns.have}
                </th>
                <th scope="col" class="number">
                  {columns.buy}
                </th>
                <th scope="col" class="number">
                  {columns.price}
                </th>
                <th scope="col" class="number">
                  {columns.sum}
                </th>
                <th scope="col" class="off-paper">
                  {columns.came}
                </th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <Row row={row} sheet={sheet} stock={stock} frame={frame} />
              ))}
            </tbody>
          </table>
        </div>
        <p>
          {said.sum}: <strong>{formatMoney(sumMinor, shop.rules.currency, lang)}</strong>
        </p>
        <p class="off-paper">
          <button type="submit">{said.received}</button>
        </p>
      </form>
    </section>
  );
}

function Row({ row, sheet, stock, frame }: Props & { readonly row: ToBuy }) {
  const { lang, format, shop } = frame;
  const said = shoppingWords(lang);
  const words = stockWords(lang);
  const { columns } = said;
  const { thing, need, have, keep, units, priceMinor } = row;
  const { key, name, wire, sold } = thing;
  const figure = (amount: number): string => words.amount(amount, wire, format);
  const money = (minor: number): string => formatMoney(minor, shop.rules.currency, lang);
  const unit = boughtIn(thing);
  const bought = said.unit(units, unit, format);
  const typed = sheet.attempt?.form.get(cameField.amount(key)) ?? String(units);
  return (
    <tr>
      <th scope="row">
        <a href={underBase(stockPath(thing))}>{name}</a>
      </th>
      <td data-label={columns.number}>{sold?.number ?? thing.number ?? ''}</td>
      <td class="number" data-label={columns.need}>
        {figure(need)}
        {keep > 0 && <small class="quiet"> {said.andMark(figure(keep))}</small>}
      </td>
      <td class="number" data-label={columns.have}>
        {figure(have)}
      </td>
      <td class="number" data-label={columns.buy}>
        <strong>{bought}</strong>
        {sold !== null && sold.by !== 'piece' && (
          <small class="quiet"> {said.holds(figure(units * unitHolds(thing)), sold.estimated)}</small>
        )}
      </td>
      <td class="number" data-label={columns.price}>
        {money(priceMinor)}
      </td>
      <td class="number" data-label={columns.sum}>
        {money(units * priceMinor)}
      </td>
      <td class="off-paper" data-label={columns.came}>
        <span>
          <input type="hidden" name={cameField.seen(key)} value={stock.balance(key)?.lastId ?? 0} />
          <input
            name={cameField.amount(key)}
            value={typed}
            inputMode="decimal"
            size={4}
            maxLength={8}
            autocomplete="off"
            aria-label={said.came(name, unit)}
          />
        </span>
      </td>
    </tr>
  );
}

function Uncounted({ shopping, frame }: { readonly shopping: Shopping; readonly frame: Frame }) {
  const { lang, format } = frame;
  const said = shoppingWords(lang);
  const words = stockWords(lang);
  if (shopping.uncounted.length === 0) return null;
  return (
    <section aria-labelledby="uncounted">
      <h2 id="uncounted">{said.uncounted}</h2>
      <p>{said.uncountedLead}</p>
      <ul>
        {shopping.uncounted.map(({ thing, need }) => (
          <li>
            {words.withUnit(need, thing.wire, format)}: <a href={underBase(stockPath(thing))}>{thing.name}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}
