/** What would bring the piece to the wanted size: for the buyer to ask, and the maker to decide. */
import type { Help } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import type { NamedHelp } from '#words/en/sizing.ts';
import type { Format } from '#words/format.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { SizingWords } from '#words/sizing.ts';

export type HelpsProps = {
  readonly words: SizingWords;
  readonly format: Format;
  readonly design: Design;
  readonly help: readonly Help[];
};

export function Helps({ words, format, design, help }: HelpsProps) {
  if (help.length === 0) return null;
  const sentences = help.map((one) => sentenceOf(words.help, named(design, one), format));
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

function named(design: Design, help: Help): NamedHelp {
  if (help.code === 'widen-section') return { ...help, name: sectionName(design, help.section) };
  return { ...help, name: design.components[help.component]?.name ?? help.component };
}

/** A section as the maker named it. */
export function sectionName(design: Design, id: string): string {
  return design.strands.flatMap((strand) => strand.sections).find((section) => section.id === id)?.name ?? id;
}
