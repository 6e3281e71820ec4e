/** What the buyer would get, in figures and words. */
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import type { Design } from '#core/strand/design.ts';
import { finishedLengthMm } from '#core/strand/parts.ts';
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
  const lengths = new Set(candidate.sequences.map((one) => format.length(finishedLengthMm(design, one))));
  return (
    <div class="sizer-result">
      <h3>{sizing === null ? words.listedTitle : words.resultTitle}</h3>
      <dl class="sizer-figures">
        <Figure label={words.finishedLength} value={[...lengths].join(' · ')} />
        <Figure label={words.insideGirth} value={format.length(candidate.insideGirthMm)} />
        <Figure label={words.price} value={format.money(candidate.priceMinor)} />
        <Figure label={words.count} value={format.number(parts)} />
        <Figure label={words.weight} value={words.grams(format, candidate.massG)} />
      </dl>
      {sizing?.status === 'fits' && <p>{words.fits(format, sizing.targetMm, sizing.toleranceMm)}</p>}
      {candidate.chainUsedMm > 0 && <p>{words.chainUsed(format, candidate.chainUsedMm)}</p>}
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
  if (change.added.length + change.leftOut.length === 0) return <p>{words.unchanged}</p>;
  const kept = [change.centreKept && words.centreKept, change.bothSides && words.bothSides];
  return (
    <>
      <dl class="sizer-changes">
        <Parts label={words.added} parts={change.added} words={words} format={format} />
        <Parts label={words.leftOut} parts={change.leftOut} words={words} format={format} />
      </dl>
      <p>{kept.filter((sentence) => sentence !== false).join(' ')}</p>
    </>
  );
}

type PartsProps = {
  readonly label: string;
  readonly parts: readonly PartChange[];
  readonly words: SizingWords;
  readonly format: Format;
};

function Parts({ label, parts, words, format }: PartsProps) {
  if (parts.length === 0) return null;
  return (
    <div>
      <dt>{label}</dt>
      {parts.map(({ name, count }) => (
        <dd key={name}>{words.part(format, count, name)}</dd>
      ))}
    </div>
  );
}
