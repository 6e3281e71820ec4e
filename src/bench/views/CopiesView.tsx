/** The copies of the book that lie beside it. */
import { underBase } from '#ui/site/base.ts';
import { formatDateTime } from '#words/format.ts';
import type { Copy } from '../book/copies.ts';
import type { Frame } from '../models/frame.ts';
import { SureForm } from './SureForm.tsx';

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
              <SureForm
                action={underBase('/bench/keep/forget/')}
                sure={keep.deleteSure}
                button={keep.deleteCopy}
              >
                <input type="hidden" name="name" value={name} />
              </SureForm>
            </details>
          </li>
        ))}
      </ul>
    </section>
  );
}
