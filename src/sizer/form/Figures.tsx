/** What the buyer would get, in figures. */
import type { Format } from '#words/format.ts';
import { strandLengths } from '#words/strandLengths.ts';
import type { AskingWords } from '#words/words.ts';
import type { PieceFigures } from '../model/figures.ts';

export type FiguresProps = {
  readonly words: AskingWords;
  readonly format: Format;
  readonly figures: PieceFigures;
  /** True for the piece as it is in the shop. */
  readonly listed: boolean;
};

export function Figures({ words, format, figures, listed }: FiguresProps) {
  const lengths = strandLengths(format, figures.lengthsMm);
  const differ = lengths.length > 1;
  return (
    <div class="sizer-result">
      <h3>{listed ? words.listedTitle : words.resultTitle}</h3>
      <dl class="sizer-figures">
        <Figure label={differ ? words.finishedLengths : words.finishedLength} value={lengths.join(' · ')} />
        <Figure
          label={differ ? words.girthOfShortest : words.insideGirth}
          value={format.length(figures.insideGirthMm)}
        />
        <Figure label={words.count} value={format.number(figures.parts)} />
        <Figure label={words.weight} value={words.grams(format, figures.massG)} />
      </dl>
    </div>
  );
}

function Figure({ label, value }: { readonly label: string; readonly value: string }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{value}</dd>
    </div>
  );
}
