/** The count sheet: boxes for a pencil on paper, fields on the screen. */
import { underBase } from '#ui/site/base.ts';
import { stockWords } from '#words/words.ts';
import { countField } from '../../intake/stockForm.ts';
import { unitsOf } from '../../stock/amount.ts';
import type { CountRow, CountSheet } from '../../models/stock/countSheet.ts';
import type { Frame } from '../../models/frame.ts';

type Props = { readonly sheet: CountSheet; readonly frame: Frame };

export function CountView({ sheet, frame }: Props) {
  const words = stockWords(frame.lang);
  const said = words.count;
  const { trays, tray, rows, again, done } = sheet;
  const here = `/bench/stock/count/${tray === null ? '' : `?tray=${encodeURIComponent(tray)}`}`;
  return (
    <>
      <p class="off-paper">{said.lead}</p>
      {again && (
        <p class="warning" role="alert">
          {said.look}
        </p>
      )}
      {done !== null && (
        <p class="good" role="status">
          {done === 0 ? said.empty : said.done(done)}
        </p>
      )}
      <form class="filter off-paper" method="get" action={underBase('/bench/stock/count/')}>
        <label>
          {said.only}
          <select name="tray">
            <option value="">{said.all}</option>
            {trays.map((one) => (
              <option value={one} selected={one === tray}>
                {one}
              </option>
            ))}
          </select>
        </label>
        <button type="submit">{words.look}</button>
        <button type="button" data-print>
          {said.print}
        </button>
      </form>
      <form method="post" action={underBase(here as `/${string}`)}>
        <div class="scroll" tabIndex={0} role="group" aria-label={said.title}>
          <table class="orders counting">
            <thead>
              <tr>
                <th scope="col">{said.columns.tray}</th>
                <th scope="col">{said.columns.what}</th>
                <th scope="col">{said.columns.found}</th>
                <th scope="col" class="number">
                  {said.columns.there}
                </th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <Row row={row} frame={frame} />
              ))}
            </tbody>
          </table>
        </div>
        <p class="off-paper">
          <button class="main" type="submit">
            {said.button}
          </button>
        </p>
      </form>
    </>
  );
}

function Row({ row, frame: { lang, format } }: { readonly row: CountRow; readonly frame: Frame }) {
  const words = stockWords(lang);
  const { thing, there, lastId, typed, unit, problem } = row;
  const { key, name, number, tray, wire } = thing;
  const wrong = `wrong-${key}`;
  return (
    <tr>
      <td data-label={words.count.columns.tray}>{tray}</td>
      <th scope="row">
        {name} {number !== null && <span class="quiet">{number}</span>}
        {problem !== null && (
          <span class="bad" id={wrong}>
            {words.problem(problem, format)}
          </span>
        )}
      </th>
      <td data-label={words.count.columns.found}>
        <span class="row">
          <input type="hidden" name={countField.seen(key)} value={lastId} />
          <input
            name={countField.amount(key)}
            value={typed}
            inputMode="decimal"
            autocomplete="off"
            maxLength={12}
            size={6}
            aria-label={words.count.seen(name)}
            {...(problem !== null && { 'aria-invalid': 'true', 'aria-describedby': wrong })}
          />
          <select
            class="off-paper"
            name={countField.unit(key)}
            aria-label={`${words.count.columns.unit}: ${name}`}
          >
            {unitsOf(thing).map((one) => (
              <option value={one} selected={one === unit}>
                {words.units[one]}
              </option>
            ))}
          </select>
        </span>
      </td>
      <td class="number" data-label={words.count.columns.there}>
        {there === null ? '' : words.amount(there, wire, format)}
      </td>
    </tr>
  );
}
