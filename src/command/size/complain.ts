/** Why the command can't answer, in sentences. */
import { formatFor } from '#words/format.ts';
import type { Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { sentenceOf } from '#words/sentence.ts';
import { sizingWords } from '#words/sizing.ts';
import { stringingWords } from '#words/stringing.ts';
import { terminalWords } from '#words/terminal.ts';
import type { UsageProblem } from './fields.ts';
import type { PlaceProblem } from './place.ts';
import type { SubjectProblem } from './subject.ts';

/** What is wrong with the command line. No shop is known yet, so no money is written. */
export function usageSentence(problem: UsageProblem, lang: Lang): string {
  const { usage } = terminalWords(lang);
  switch (problem.code) {
    case 'unknown-option':
      return usage['unknown-option'](problem);
    case 'no-value':
      return usage['no-value'](problem);
    case 'not-a-flag':
      return usage['not-a-flag'](problem);
    case 'no-piece':
      return usage['no-piece']();
    case 'too-many-pieces':
      return usage['too-many-pieces'](problem);
    case 'no-measure':
      return usage['no-measure']();
    case 'not-beside':
      return usage['not-beside'](problem);
    case 'only-beside':
      return usage['only-beside'](problem);
    case 'too-many-measures':
      return usage['too-many-measures'](problem);
    case 'not-one-of':
      return usage['not-one-of'](problem);
    case 'bad-number':
      return usage['bad-number'](problem);
    case 'bad-measure': {
      const unread = sentenceOf(sizingWords(lang).unread, problem.problem, formatFor(lang, 'in', 'GBP'));
      return usage['bad-measure'](problem, unread);
    }
  }
}

export function subjectSentence(problem: SubjectProblem, lang: Lang): string {
  const { subject } = terminalWords(lang);
  switch (problem.code) {
    case 'catalogue':
      return subject.catalogue(problem);
    case 'no-such-piece':
      return subject['no-such-piece'](problem);
    case 'no-such-part':
      return subject['no-such-part'](problem);
    case 'wrong-part':
      return subject['wrong-part'](problem);
    case 'clasp-needs-ring':
      return subject['clasp-needs-ring'](problem);
    case 'rules-currency':
      return subject['rules-currency'](problem);
    case 'not-json':
      return subject['not-json'](problem);
    case 'input-too-long':
      return subject['input-too-long'](problem);
    case 'design':
      return subject.design(problem);
  }
}

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
