/** From a finished piece back to its counts: what `--found` and `--found-girth` answer. */
import { explainPiece } from '#core/sizing/explain.ts';
import type { Explained } from '#core/sizing/explain.ts';
import type { Fitted } from '#core/sizing/target.ts';
import type { Format } from '#words/format.ts';
import { sentenceOf } from '#words/sentence.ts';
import { sizingWords } from '#words/sizing.ts';
import { terminalWords } from '#words/terminal.ts';
import { rounded } from './answer.ts';
import { EXIT } from './exit.ts';
import type { Exit } from './exit.ts';
import type { Subject } from './subject.ts';

/** How far a maker's measuring is off, standard deviation, mm (common practice, no source). */
const MEASURING_SD_MM: Readonly<Record<Fitted, number>> = { length: 0.5, girth: 1.5 };

type Told = Extract<Explained, { readonly status: 'explained' }>['explanations'];

function jsonOf({ id, name, design }: Subject, of: Fitted, mm: number, told: Told): string {
  const explanations = told.map(({ counts, measuresMm, offMm, share }) => {
    const sections = (design.strands[0]?.sections ?? []).map((section, index) => {
      return { section: section.id, count: counts[index] ?? 0 };
    });
    return { sections, measuresMm: rounded(measuresMm), offMm: rounded(offMm), share: rounded(share) };
  });
  const found = { of, mm: rounded(mm), sdMm: MEASURING_SD_MM[of] };
  const head = { format: 'claspwise/size-found', version: 1, piece: { id, name, kind: design.kind } };
  return JSON.stringify({ ...head, found, explanations }, null, 2);
}

function textOf({ name, design }: Subject, told: Told, f: Format): string {
  const { found } = terminalWords(f.lang);
  const lines = told.map(({ counts, measuresMm, share }) => {
    const sections = (design.strands[0]?.sections ?? []).map(
      ({ id }, index) => `${id} ${counts[index] ?? 0}`,
    );
    return `  ${found.row(Math.round(share * 100), sections.join(', '), f.length(measuresMm))}`;
  });
  return [found.heading(name), ...lines].join('\n');
}

/** Answer for the first strand of a piece. Nothing is thrown. */
export function answerFound(
  subject: Subject,
  { of, mm, json }: { readonly of: Fitted; readonly mm: number; readonly json: boolean },
  terminal: { readonly out: (text: string) => void; readonly err: (text: string) => void },
  f: Format,
): Exit {
  const explained = explainPiece(subject.design, 0, { of, mm, sdMm: MEASURING_SD_MM[of], reckoned: null });
  if (explained.status === 'refused') {
    terminal.err(sentenceOf(sizingWords(f.lang).problems, explained.problem, f));
    return EXIT.refused;
  }
  const told = explained.explanations;
  terminal.out(json ? jsonOf(subject, of, mm, told) : textOf(subject, told, f));
  return EXIT.fits;
}
