/** How the piece meets the wish, and which beads are added or left out for it. */
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import type { Format } from '#words/format.ts';
import { chainSentence } from '#words/chainSentence.ts';
import type { SizedWords } from '#words/words.ts';
import { netChange, type PartChange } from '../model/changes.ts';
import type { Sized } from '../model/outcome.ts';

export type ChangesProps = {
  readonly words: SizedWords;
  readonly format: Format;
  readonly design: Design;
  readonly candidate: Candidate;
  /** Null for the piece as it is in the shop: then there is nothing to say. */
  readonly sizing: Sized | null;
};

export function Changes({ words, format, design, candidate, sizing }: ChangesProps) {
  if (sizing === null) return null;
  const change = netChange(design, candidate);
  const left = leftOver(words, format, candidate, sizing);
  const chain = chainSentence(design, candidate, words, format);
  const none = change.added.length + change.leftOut.length === 0;
  const kept = [change.centreKept && words.centreKept, change.bothSides && words.bothSides];
  return (
    <div class="sizer-result">
      {sizing.status === 'fits' && (
        <p>{words.fits(format, sizing.targetMm, sizing.toleranceMm, design.lie === 'nested')}</p>
      )}
      {left !== null && <p>{left}</p>}
      {chain !== null && <p>{chain}</p>}
      {none ? (
        <p>{words.unchanged}</p>
      ) : (
        <>
          <dl class="sizer-changes">
            <Parts label={words.added} parts={change.added} words={words} format={format} />
            <Parts label={words.leftOut} parts={change.leftOut} words={words} format={format} />
          </dl>
          <p>{kept.filter((sentence) => sentence !== false).join(' ')}</p>
        </>
      )}
    </div>
  );
}

/** Where it goes round the body: what it leaves over, if that reads otherwise than what the sit adds. */
function leftOver(
  words: SizedWords,
  format: Format,
  { insideGirthMm }: Candidate,
  { fitted, choice, targetMm }: Sized,
): string | null {
  if (fitted !== 'girth') return null;
  const overMm = insideGirthMm - choice.measure.mm;
  const sitMm = targetMm - choice.measure.mm;
  return format.short(overMm) === format.short(sitMm) ? null : words.leftOver(format, overMm, sitMm);
}

type PartsProps = {
  readonly label: string;
  readonly parts: readonly PartChange[];
  readonly words: SizedWords;
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
