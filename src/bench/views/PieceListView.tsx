/** Finding a piece, however old, to string it again. */
import { underBase } from '#ui/site/base.ts';
import { contentFormWords, pageWords, searchWords, type ContentFormWords } from '#words/words.ts';
import type { PieceMark } from '../models/content/published.ts';
import type { Frame } from '../models/frame.ts';
import type { PieceList, PieceRow } from '../models/pieceList.ts';
import { PiecePicture } from './PiecePicture.tsx';

type Props = {
  readonly list: PieceList;
  readonly text: string;
  readonly frame: Frame;
  /** What buyers don't see yet, by id. */
  readonly notPublished?: ReadonlyMap<string, PieceMark>;
};

const ALL_PUBLISHED: ReadonlyMap<string, PieceMark> = new Map();

export function PieceListView({ list, text, frame, notPublished = ALL_PUBLISHED }: Props) {
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
      {rows.length > 0 && <Rows rows={rows} title={said.title} frame={frame} notPublished={notPublished} />}
      {near.length > 0 && (
        <section>
          <h2>{search.near}</h2>
          <Rows rows={near} title={search.near} frame={frame} notPublished={notPublished} />
        </section>
      )}
    </>
  );
}

type RowsProps = Required<Omit<Props, 'list' | 'text'>> & {
  readonly rows: readonly PieceRow[];
  readonly title: string;
};

function Rows({ rows, title, frame, notPublished }: RowsProps) {
  const own = contentFormWords(frame.lang).pieces;
  /** A card is made of what is published; a piece that isn't has its words and its board. */
  const pageOf = (id: string): `/${string}` =>
    notPublished.get(id) === 'new' ? `/bench/pieces/${id}/words/` : `/bench/pieces/${id}/`;
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
                    <a class="plain" href={underBase(pageOf(id))}>
                      {name}
                    </a>
                    <small class="quiet"> {summary}</small>
                    <Mark of={notPublished.get(id)} said={own.marks} />
                    <small class="ways">
                      <a href={underBase(`/bench/pieces/${id}/words/`)} aria-label={`${own.words}: ${name}`}>
                        {own.words}
                      </a>
                      <a href={underBase(`/bench/pieces/${id}/board/`)} aria-label={`${own.board}: ${name}`}>
                        {own.board}
                      </a>
                    </small>
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

type MarkProps = { readonly of: PieceMark | undefined; readonly said: ContentFormWords['pieces']['marks'] };

function Mark({ of, said }: MarkProps) {
  return of === undefined ? null : <span class="mark">{said[of]}</span>;
}
