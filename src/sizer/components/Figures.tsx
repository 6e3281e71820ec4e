/** What the buyer would get, in figures. */
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Design } from '#core/strand/design.ts';
import { finishedLengthMm } from '#core/strand/parts.ts';
import type { Format } from '#words/format.ts';
import type { SizingWords } from '#words/sizing.ts';

export type FiguresProps = {
  readonly words: SizingWords;
  readonly format: Format;
  readonly design: Design;
  readonly candidate: Candidate;
  /** True for the piece as it is in the shop. */
  readonly listed: boolean;
};

export function Figures({ words, format, design, candidate, listed }: FiguresProps) {
  const parts = candidate.sequences.reduce((sum, sequence) => sum + sequence.length, 0);
  // Strands of one length are said once.
  const lengths = new Set(
    candidate.sequences.map((one) => format.length(finishedLengthMm(design, one, candidate.chainUsedMm))),
  );
  return (
    <div class="sizer-result">
      <h3>{listed ? words.listedTitle : words.resultTitle}</h3>
      <dl class="sizer-figures">
        <Figure label={words.finishedLength} value={[...lengths].join(' · ')} />
        <Figure label={words.insideGirth} value={format.length(candidate.insideGirthMm)} />
        <Figure label={words.price} value={format.money(candidate.priceMinor)} />
        <Figure label={words.count} value={format.number(parts)} />
        <Figure label={words.weight} value={words.grams(format, candidate.massG)} />
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
