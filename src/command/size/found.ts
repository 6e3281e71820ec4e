/** From a finished piece back to its counts: what `--found` and `--found-girth` answer. */
import { explainPiece } from '#core/sizing/explain.ts';
import { MEASURING_SD_MM } from '#core/sizing/measuring.ts';
import type { SizingProblem } from '#core/sizing/sizing.ts';
import type { Fitted } from '#core/design/choice.ts';
import type { Format } from '#words/format.ts';
import { sentenceOf } from '#words/sentence.ts';
import { sizingWords, terminalWords } from '#words/words.ts';
import { rounded } from './answer.ts';
import { EXIT } from './exit.ts';
import type { Exit } from './exit.ts';
import { foundText } from './foundText.ts';
import { isFar } from './measured.ts';
import type { StrandFound } from './measured.ts';
import type { Subject } from './subject.ts';

type Asked = { readonly of: Fitted; readonly mms: readonly number[]; readonly json: boolean };

/**
 * A measure for each strand, in the design's order. One serves all strands side
 * by side, which share one clasp; nested strands each have a length of their
 * own. null where the measures given don't go round.
 */
function measuresFor({ design }: Subject, mms: readonly number[]): readonly number[] | null {
  const { strands, lie } = design;
  if (mms.length === strands.length) return mms;
  const [mm] = mms;
  if (mms.length !== 1 || mm === undefined || lie === 'nested') return null;
  return strands.map(() => mm);
}

function explainAll({ design }: Subject, of: Fitted, mms: readonly number[]): StrandFound[] | SizingProblem {
  const results: StrandFound[] = [];
  for (const [index, strand] of design.strands.entries()) {
    const mm = mms[index] ?? 0;
    const explained = explainPiece(design, index, { of, mm, sdMm: MEASURING_SD_MM[of], estimates: null });
    if (explained.status === 'refused') return explained.problem;
    results.push({ strand, mm, explanations: explained.explanations });
  }
  return results;
}

function jsonOf({ id, name, design }: Subject, of: Fitted, results: readonly StrandFound[]): string {
  const strands = results.map(({ strand, mm, explanations }) => ({
    strand: strand.id,
    mm: rounded(mm),
    explanations: explanations.map(({ counts, measuresMm, offMm, share }) => {
      const sections = strand.sections.map((section, index) => {
        return { section: section.id, count: counts[index] ?? 0 };
      });
      return { sections, measuresMm: rounded(measuresMm), offMm: rounded(offMm), share: rounded(share) };
    }),
  }));
  const head = { format: 'claspwise/size-found', version: 1, piece: { id, name, kind: design.kind } };
  return JSON.stringify({ ...head, found: { of, sdMm: MEASURING_SD_MM[of] }, strands }, null, 2);
}

/** Answer for every strand of a piece. Nothing is thrown. */
export function answerFound(
  subject: Subject,
  { of, mms, json }: Asked,
  terminal: { readonly out: (text: string) => void; readonly err: (text: string) => void },
  f: Format,
): Exit {
  const measures = measuresFor(subject, mms);
  if (measures === null) {
    const { lie, strands } = subject.design;
    terminal.err(
      terminalWords(f.lang).found.measures({
        option: of === 'length' ? 'found' : 'found-girth',
        given: mms.length,
        strands: strands.length,
        nested: lie === 'nested',
      }),
    );
    return EXIT.refused;
  }
  const results = explainAll(subject, of, measures);
  if (!Array.isArray(results)) {
    terminal.err(sentenceOf(sizingWords(f.lang).problems, results, f));
    return EXIT.refused;
  }
  terminal.out(json ? jsonOf(subject, of, results) : foundText(subject, of, results, f));
  return results.some((one) => isFar(of, one)) ? EXIT.near : EXIT.fits;
}
