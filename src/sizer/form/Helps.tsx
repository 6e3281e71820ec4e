/** What would bring the piece to the wanted size: for the buyer to ask, and the maker to decide. */
import type { Help } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import type { Format } from '#words/format.ts';
import { helpSentence } from '#words/sectionName.ts';
import type { SizingWords } from '#words/words.ts';

export type HelpsProps = {
  readonly words: SizingWords;
  readonly format: Format;
  readonly design: Design;
  readonly help: readonly Help[];
};

export function Helps({ words, format, design, help }: HelpsProps) {
  if (help.length === 0) return null;
  const sentences = help.map((one) => helpSentence(design, one, words, format));
  return (
    <div>
      <h4>{words.helpTitle}</h4>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p class="sizer-hint">{words.helpAsk}</p>
    </div>
  );
}
