/** Finding a piece, however old, to string it again. */
import { underBase } from '#ui/site/base.ts';
import { pageWords, searchWords } from '#words/words.ts';
import type { Frame } from '../models/frame.ts';
import type { PieceList, PieceRow } from '../models/pieceList.ts';
import { PiecePicture } from './PiecePicture.tsx';

type Props = { readonly list: PieceList; readonly text: string; readonly frame: Frame };

export function PieceListView({ list, text, frame }: Props) {
  const { words, lang } = frame;
  const { pieces: said } = words;
  const search = searchWords(lang).said;
  const { rows, near, marks } = list;
  return (
    <>
      <form class="filter" method="get" action={underBase('/bench/pieces/')} role="search">
        <label>
          {words.book.find}
          <input type="search" name="q" value={text} maxLength={100} placeholder={said.findHint} />
        </label>
        <button type="submit">{words.book.apply}</button>
      </form>
      {marks.length > 0 && (
        <p class="quiet">
          {search.understood}:{' '}
          {marks.map(({ label, without }, place) => (
            <>
              {place > 0 && ', '}
              {label}{' '}
              <a
                href={underBase(`/bench/pieces/?${new URLSearchParams({ q: without }).toString()}`)}
                aria-label={search.remove.replace('{what}', label)}
              >
                ×
              </a>
            </>
          ))}
        </p>
      )}
      <div class="quiet" aria-live="polite">
        <p>{said.count(rows.length)}</p>
        {list.said.map((sentence) => (
          <p>{sentence}</p>
        ))}
      </div>
      {rows.length > 0 && <Rows rows={rows} title={said.title} frame={frame} />}
      {near.length > 0 && (
        <section>
          <h2>{search.near}</h2>
          <Rows rows={near} title={search.near} frame={frame} />
        </section>
      )}
    </>
  );
}

type RowsProps = { readonly rows: readonly PieceRow[]; readonly title: string; readonly frame: Frame };

function Rows({ rows, title, frame }: RowsProps) {
  const { words, format, lang } = frame;
  const { pieces: said } = words;
  const { kinds, statuses } = pageWords(lang);
  const columns = ['piece', 'kind', 'length', 'made', 'status'] as const;
  return (
    <div class="scroll" tabIndex={0} role="region" aria-label={title}>
      <table class="orders">
        <thead>
          <tr>
            {columns.map((column) => (
              <th scope="col">{said.columns[column]}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, name, summary, kind, status, made, lengthMm }) => (
            <tr>
              <th scope="row" data-label={said.columns.piece}>
                <span class="pictured">
                  <PiecePicture piece={id} width={72} />
                  <span>
                    <a class="plain" href={underBase(`/bench/pieces/${id}/`)}>
                      {name}
                    </a>
                    <small class="quiet"> {summary}</small>
                  </span>
                </span>
              </th>
              <td data-label={said.columns.kind}>{kinds[kind]}</td>
              <td data-label={said.columns.length}>{format.length(lengthMm)}</td>
              <td data-label={said.columns.made}>{made.slice(0, 4)}</td>
              <td data-label={said.columns.status}>{statuses[status]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
