/** The `size` command from arguments to exit code, with the outside handed in. */
import type { Choice } from '#core/design/choice.ts';
import { size } from '#core/sizing/size.ts';
import { MEASURES_OF_KIND } from '#core/design/choice.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { formatFor } from '#words/format.ts';
import type { Format } from '#words/format.ts';
import { sentenceOf } from '#words/sentence.ts';
import { sizingWords, terminalWords } from '#words/words.ts';
import { answerOf } from './answer.ts';
import { placeSentence, subjectSentence, usageSentence } from './problemSentences.ts';
import { EXIT } from './exit.ts';
import type { Exit } from './exit.ts';
import { answerFound } from './found.ts';
import { readOptions } from './options.ts';
import type { Options } from './options.ts';
import { reach } from './place.ts';
import type { Reached } from './place.ts';
import { reportOf } from './report.ts';
import { designFrom, pieceFrom } from './subject.ts';
import type { Subject, SubjectProblem } from './subject.ts';

/** Read well, but can't be strung so. */
const REFUSED: readonly SubjectProblem['code'][] = ['design', 'wrong-part', 'clasp-needs-ring'];

/** What the command needs from outside: standard streams and the shop's own content folder. */
export type Terminal = {
  readonly stdin: () => string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly content: string;
};

/** The measure as it was written; null for a landmark. */
function writtenText(wanted: Options['wanted']): string | null {
  if (wanted.by === 'found') return wanted.given[0]?.text ?? null;
  if (wanted.by === 'measure') return wanted.given.text;
  return typeof wanted.place === 'object' ? wanted.place.text : null;
}

/** The unit to answer in: the one asked for, else the one the measure was written in, else the shop's. */
function unitOf(options: Options, subject: Subject): ShownUnit {
  if (options.unit !== null) return options.unit;
  const text = writtenText(options.wanted);
  if (text === null) return subject.unit;
  return /cm|mm|met/i.test(text) ? 'cm' : 'in';
}

function choiceOf({ wanted, sit, hand, pick, quantity }: Options, reached: Reached | null): Choice {
  const shared = { sit, hand, pick, quantity };
  if (wanted.by === 'measure') return { measure: { of: wanted.of, mm: wanted.given.mm }, ...shared };
  return { measure: { of: 'length', mm: reached?.ok === true ? reached.lengthMm : 0 }, ...shared };
}

function answer(subject: Subject, options: Options, terminal: Terminal, format: Format): Exit {
  const { wanted, wearer } = options;
  const reached = wanted.by === 'place' ? reach(subject.design, wanted.place, wanted.aim, wearer) : null;
  if (reached?.ok === false) {
    terminal.err(placeSentence(reached.problem, format));
    return EXIT.refused;
  }
  const choice = choiceOf(options, reached);
  const sizing = size(subject.design, subject.rules, subject.listedMinor, choice, subject.listed);
  if (options.json) {
    terminal.out(JSON.stringify(answerOf(subject, options, choice, sizing, reached), null, 2));
  }
  if (sizing.status === 'refused') {
    terminal.err(sentenceOf(sizingWords(options.lang).problems, sizing.problem, format));
    if (sizing.problem.code === 'measure-wrong-kind') {
      terminal.err(terminalWords(options.lang).sizedBy(MEASURES_OF_KIND[subject.design.kind]));
    }
    return EXIT.refused;
  }
  if (!options.json) terminal.out(reportOf(subject, options, choice, sizing, reached, format));
  return EXIT[sizing.status];
}

/** Run the command. What can't be answered is said on `err`; nothing is thrown for what was typed or written. */
export function run(argv: readonly string[], terminal: Terminal): Exit {
  const read = readOptions(argv);
  if (read.ok === 'help') {
    terminal.out(terminalWords(read.lang).help);
    return EXIT.fits;
  }
  if (!read.ok) {
    terminal.err(`${usageSentence(read.problem, read.lang)}\n${terminalWords(read.lang).seeHelp}`);
    return EXIT.usage;
  }
  const { options } = read;
  const folder = options.content ?? terminal.content;
  const found =
    options.piece === '-'
      ? designFrom(terminal.stdin(), folder, options)
      : pieceFrom(folder, options.piece, options);
  if (!found.ok) {
    terminal.err(subjectSentence(found.problem, options.lang));
    return REFUSED.includes(found.problem.code) ? EXIT.refused : EXIT.unread;
  }
  const { subject } = found;
  const format = formatFor(options.lang, unitOf(options, subject), subject.rules.currency);
  const { wanted, json } = options;
  if (wanted.by === 'found') {
    return answerFound(
      subject,
      { of: wanted.of, mms: wanted.given.map(({ mm }) => mm), json },
      terminal,
      format,
    );
  }
  return answer(subject, options, terminal, format);
}
