/** The copies of the book that lie beside it. */
import { formatDateTime } from '#words/format.ts';
import type { Copy } from '../book/copies.ts';
import type { Frame } from '../models/frame.ts';

type Props = {
  readonly frame: Frame;
  readonly copies: readonly Copy[];
  /** Names of those in which the last erasing could not be done. */
  readonly unreached: readonly string[];
};

export function CopiesView({ frame: { words, lang }, copies, unreached }: Props) {
  if (copies.length === 0) return null;
  const { keep } = words;
  const there = unreached.filter((name) => copies.some((copy) => copy.name === name));
  return (
    <section aria-labelledby="copies">
      <h2 id="copies">{keep.copies}</h2>
      {there.length > 0 && (
        <p class="warning" role="alert">
          {keep.unreached(there.join(', '))}
        </p>
      )}
      <p>{keep.copiesHint}</p>
      <ul>
        {copies.map(({ name, at }) => (
          <li>
            {name}, {formatDateTime(at, lang)}
            <details>
              <summary>{keep.deleteCopy}</summary>
              <form method="post" action="/bench/keep/forget/">
                <input type="hidden" name="name" value={name} />
                <label>
                  <input type="checkbox" name="sure" value="yes" required /> {keep.deleteSure}
                </label>
                <button type="submit">{keep.deleteCopy}</button>
              </form>
            </details>
          </li>
        ))}
      </ul>
    </section>
  );
}
