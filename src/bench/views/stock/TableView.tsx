/** Where a table of stock is brought in: pasted or dropped, looked at, entered. */
import { underBase } from '#ui/site/base.ts';
import type { StockProblem, TableProblem } from '#words/stockCodes.ts';
import { stockTableWords, stockWords } from '#words/words.ts';
import { stockPath } from '../../models/stock/paths.ts';
import type { TableSheet } from '../../models/stock/tableSheet.ts';
import { TABLE_KINDS } from '../../stock/table.ts';
import type { Frame } from '../../models/frame.ts';

type Props = { readonly sheet: TableSheet; readonly frame: Frame };

const isOfTable = (one: TableProblem | StockProblem): one is TableProblem =>
  /^(table|heading)-/.test(one.code);

export function TableView({ sheet, frame }: Props) {
  const { lang, format } = frame;
  const said = stockTableWords(lang);
  const words = stockWords(lang);
  const { text, kind, problem, rows, done } = sheet;
  return (
    <>
      <p>{said.lead}</p>
      {done !== null && (
        <p class="good" role="status">
          {said.done(done)}
        </p>
      )}
      {problem !== null && (
        <p class="warning" role="alert">
          {isOfTable(problem) ? said.problem(problem, format) : words.problem(problem, format)}
        </p>
      )}
      {rows !== null && <Looked sheet={sheet} rows={rows} frame={frame} />}
      <form method="post" action={underBase('/bench/stock/in/')} encType="multipart/form-data" data-drop>
        {rows !== null && <p>{said.mend}</p>}
        <label>
          {said.text}
          <textarea name="text" rows={8} spellcheck={false} dir="auto">
            {text}
          </textarea>
        </label>
        <p class="quiet">{said.columns}</p>
        <label>
          {said.file}
          <input type="file" name="file" accept=".csv,.tsv,.txt,text/csv" />
        </label>
        <label>
          {said.kind}{' '}
          <select name="kind">
            {TABLE_KINDS.map((one) => (
              <option value={one} selected={one === kind}>
                {words.kinds[one].toLowerCase()}
              </option>
            ))}
          </select>
        </label>
        <button type="submit" class={rows === null ? 'main' : undefined} name="do" value="look">
          {rows === null ? said.look : said.again}
        </button>
      </form>
    </>
  );
}

type LookedProps = Props & { readonly rows: NonNullable<TableSheet['rows']> };

function Looked({ sheet, rows, frame }: LookedProps) {
  const { lang, format } = frame;
  const said = stockTableWords(lang);
  const { good, bad, skipped } = rows;
  return (
    <>
      {bad.length > 0 && (
        <section aria-labelledby="bad" class="warning">
          <h2 id="bad">{said.bad(bad.length)}</h2>
          <ul>
            {bad.map(({ line, text, problem }) => (
              <li>
                <b>
                  {said.line(line)}
                  {text !== '' && (
                    <>
                      , <bdi>{text}</bdi>
                    </>
                  )}
                </b>
                : <bdi>{said.row(problem, format)}</bdi>
              </li>
            ))}
          </ul>
        </section>
      )}
      {skipped > 0 && <p class="quiet">{said.skipped(skipped)}</p>}
      {good.length > 0 && <Good sheet={sheet} rows={rows} frame={frame} />}
    </>
  );
}

function Good({ sheet, rows: { good, bad }, frame }: LookedProps) {
  const { lang, format } = frame;
  const said = stockTableWords(lang);
  const words = stockWords(lang);
  const { heads } = said;
  return (
    <section aria-labelledby="good">
      <h2 id="good">{said.good(good.length)}</h2>
      <div class="scroll" tabIndex={0} role="group" aria-labelledby="good">
        <table class="orders">
          <thead>
            <tr>
              <th scope="col" class="number">
                {heads.line}
              </th>
              <th scope="col">{heads.what}</th>
              <th scope="col">{heads.kind}</th>
              <th scope="col" class="number">
                {heads.amount}
              </th>
              <th scope="col" class="number">
                {heads.after}
              </th>
              <th scope="col">{heads.note}</th>
            </tr>
          </thead>
          <tbody>
            {good.map(({ line, thing, entry, after }) => (
              <tr>
                <td class="number" data-label={heads.line}>
                  {line}
                </td>
                <th scope="row">
                  <a href={underBase(stockPath(thing))}>{thing.name}</a>
                </th>
                <td data-label={heads.kind}>{words.kinds[entry.kind]}</td>
                <td class="number" data-label={heads.amount}>
                  {words.amount(entry.amount, thing.wire, format)}
                  {entry.entered !== String(entry.amount) && <small class="quiet"> {entry.entered}</small>}
                </td>
                <td class="number" data-label={heads.after}>
                  {words.amount(after, thing.wire, format)}
                </td>
                <td data-label={heads.note}>
                  <bdi>{entry.note}</bdi>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <form method="post" action={underBase('/bench/stock/in/')} encType="multipart/form-data">
        <textarea name="text" hidden readOnly>
          {sheet.text}
        </textarea>
        <input type="hidden" name="kind" value={sheet.kind} />
        <input type="hidden" name="seen" value={sheet.seen} />
        <button class="main" type="submit" name="do" value={bad.length === 0 ? 'all' : 'good'}>
          {bad.length === 0 ? said.enterAll(good.length) : said.enterGood(good.length)}
        </button>
      </form>
    </section>
  );
}
