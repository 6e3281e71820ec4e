/** What the chart says under its picture: where the piece hangs, how sure that is, and a child's cautions. */
import type { AssumptionCode } from '#core/body/assumptions.ts';
import type { Lie } from '#core/body/lie.ts';
import type { BodyWords } from '#words/words.ts';
import type { Format } from '#words/format.ts';

export type ChartNotesProps = {
  readonly words: BodyWords;
  readonly format: Format;
  readonly lie: Lie;
  readonly child: boolean;
  readonly presumedNeckMm: number | null;
};

export function ChartNotes({ words, format, lie, child, presumedNeckMm }: ChartNotesProps) {
  return (
    <>
      <p role="status">{hangs(words, format, lie)}</p>
      {presumedNeckMm !== null && <p>{words.onNeck(format, presumedNeckMm)}</p>}
      {child && <ChildCautions words={words} />}
      <p>{words.estimate}</p>
      {lie.status !== 'too-short' && (
        <p class="sizer-hint">
          {words.restsOn(
            format,
            lie.assumptions.map((code: AssumptionCode) => words.assumptions[code]),
          )}{' '}
          {words.surveys}
        </p>
      )}
    </>
  );
}

function hangs(words: BodyWords, format: Format, lie: Lie): string {
  if (lie.status === 'too-short') return words.tooShort(format, lie.neckBaseMm);
  if (lie.pendantDropMm !== null && lie.pendantDropBand !== null) {
    const { leastMm, mostMm } = lie.pendantDropBand;
    return words.pendantHangs(format, lie.pendantDropMm, leastMm, mostMm);
  }
  return words.hangs(format, lie.dropMm, lie.dropBand.leastMm, lie.dropBand.mostMm);
}

function ChildCautions({ words }: { readonly words: BodyWords }) {
  return (
    <div class="chart-cautions">
      <h4>{words.childTitle}</h4>
      <ul>
        {words.childCautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </div>
  );
}
