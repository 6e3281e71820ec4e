/** The lengths kept to compare with the present one. */
import type { BodyWords } from '#words/words.ts';

export type ComparedProps = {
  readonly words: BodyWords;
  /** Each with its name, as it stands in the drawing. */
  readonly lengths: readonly { readonly mm: number; readonly text: string }[];
  readonly onTake: (mm: number) => void;
  readonly onForget: (mm: number) => void;
};

export function Compared({ words, lengths, onTake, onForget }: ComparedProps) {
  if (lengths.length === 0) return null;
  return (
    <div>
      <h4>{words.compared}</h4>
      <ul role="list" class="chart-compared">
        {lengths.map(({ mm, text }) => (
          <li key={mm}>
            <span>{text}</span>
            <button
              type="button"
              class="button plain"
              aria-label={words.takeLength(text)}
              onClick={() => onTake(mm)}
            >
              {words.take}
            </button>
            <button
              type="button"
              class="button plain"
              aria-label={words.forget(text)}
              onClick={() => onForget(mm)}
            >
              {words.forgetShort}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
