/** What the buyer would get, in figures and words. */
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import type { Design } from '#core/strand/design.ts';
import type { Format } from '#words/format.ts';
import type { SizingWords } from '#words/sizing.ts';
import { netChange, type PartChange } from '../model/changes.ts';

export type ResultProps = {
  readonly words: SizingWords;
  readonly format: Format;
  readonly design: Design;
  readonly candidate: Candidate;
  /** Null: the piece as listed. */
  readonly sizing: Extract<Sizing, { status: 'fits' | 'near' | 'outside' }> | null;
};

export function Result({ words, format, design, candidate, sizing }: ResultProps) {
  const parts = candidate.sequences.reduce((sum, sequence) => sum + sequence.length, 0);
  return (
    <div class="sizer-result">
      <h3>{sizing === null ? words.listedTitle : words.resultTitle}</h3>
      <dl class="sizer-figures">
        <Figure label={words.finishedLength} value={format.length(candidate.finishedLengthMm)} />
        <Figure label={words.insideGirth} value={format.length(candidate.insideGirthMm)} />
        <Figure label={words.price} value={format.money(candidate.priceMinor)} />
        <Figure label={words.count} value={format.number(parts)} />
        <Figure label={words.weight} value={words.grams(format, candidate.massG)} />
      </dl>
      {sizing !== null && <Changes words={words} format={format} design={design} candidate={candidate} />}
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

function Changes({ words, format, design, candidate }: Omit<ResultProps, 'sizing'>) {
  const change = netChange(design, candidate);
  const list = (parts: readonly PartChange[]) =>
    parts.map(({ name, count }) => words.part(format, count, name));
  const none = change.added.length + change.leftOut.length === 0;
  const sentences = [
    none && words.unchanged,
    change.added.length > 0 && words.added(format, list(change.added)),
    change.leftOut.length > 0 && words.leftOut(format, list(change.leftOut)),
    !none && change.centreKept && words.centreKept,
    !none && change.bothSides && words.bothSides,
  ];
  return <p>{sentences.filter((sentence) => sentence !== false).join(' ')}</p>;
}
