/** Finding a piece, however old, to string it again. */
import { pageWords } from '#words/words.ts';
import type { Frame } from '../models/frame.ts';
import type { PieceRow } from '../models/pieceList.ts';
import { PiecePicture } from './PiecePicture.tsx';

type Props = { readonly rows: readonly PieceRow[]; readonly text: string; readonly frame: Frame };

export function PieceListView({ rows, text, frame }: Props) {
  const { words, format, lang } = frame;
  const { pieces: said } = words;
  const { kinds, statuses } = pageWords(lang);
  const columns = ['piece', 'kind', 'length', 'made', 'status'] as const;
  return (
    <>
      <form class="filter" method="get" action="/bench/pieces/" role="search">
        <label>
          {words.book.find}
          <input type="search" name="q" value={text} maxLength={100} placeholder={said.findHint} />
        </label>
        <button type="submit">{words.book.apply}</button>
      </form>
      <p class="quiet" aria-live="polite">
        {said.count(rows.length)}
      </p>
      {rows.length > 0 && (
        <div class="scroll" tabIndex={0} role="region" aria-label={said.title}>
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
                        <a class="plain" href={`/bench/pieces/${id}/`}>
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
      )}
    </>
  );
}
