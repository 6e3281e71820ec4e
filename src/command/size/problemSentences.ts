/** Why the command can't answer, in sentences. */
import { formatFor } from '#words/format.ts';
import type { Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { sentenceOf } from '#words/sentence.ts';
import { sizingWords, stringingWords, terminalWords } from '#words/words.ts';
import type { UsageProblem } from './fields.ts';
import type { PlaceProblem } from './place.ts';
import type { SubjectProblem } from './subject.ts';

/** For what is wrong before a shop is known: no money is written then. */
const plain = (lang: Lang): Format => formatFor(lang, 'in', 'GBP');

/** What is wrong with the command line. */
export function usageSentence(problem: UsageProblem, lang: Lang): string {
  const { usage } = terminalWords(lang);
  if (problem.code !== 'bad-measure') return sentenceOf(usage, problem, plain(lang));
  const unread = sentenceOf(sizingWords(lang).unread, problem.problem, plain(lang));
  return usage['bad-measure'](problem, unread);
}

export const subjectSentence = (problem: SubjectProblem, lang: Lang): string =>
  sentenceOf(terminalWords(lang).subject, problem, plain(lang));

export function placeSentence(problem: PlaceProblem, format: Format): string {
  const { place } = terminalWords(format.lang);
  switch (problem.code) {
    case 'place-not-for':
      return place['place-not-for'](problem);
    case 'place-not-known':
      return place['place-not-known'](problem);
    case 'place-out-of-reach':
      return place['place-out-of-reach'](format, problem.dropMm);
    case 'figure':
      return sentenceOf(stringingWords(format.lang).figureProblems, problem.problem, format);
  }
}
