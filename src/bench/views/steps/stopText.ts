/** What a stop of the walk says, and what each of its ticks is called. */
import type { Step } from '#core/instructions/step.ts';
import { sectionName } from '#words/sectionName.ts';
import { namesIn, plainNamesIn } from '#ui/models/partNames.ts';
import { atBoardWords, benchCardWords, stringingWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import type { Run } from '../../models/steps/runs.ts';
import type { WalkSheet } from '../../models/steps/sheet.ts';
import { isForHerself, type Tick, type WalkStop } from '../../models/steps/walk.ts';

export type StopText = {
  /** The step's sentence. */
  readonly say: string;
  /** Where in the work it is: stage, strand, and whose it is, where there are several. */
  readonly where: readonly string[];
  /** One for each tick; '' where the sentence says all. */
  readonly ticks: readonly string[];
};

/** The words of one stop. */
export function stopText(sheet: WalkSheet, { stage, ticks }: WalkStop, frame: Frame): StopText {
  const words = atBoardWords(frame.lang);
  const sentences = ticks.map((tick) => sentenceOf(sheet, tick, frame));
  const [first = ''] = sentences;
  const isAlike = sentences.every((one) => one === first);
  const pieces = new Set(ticks.map(({ piece }) => piece));
  const onePiece = pieces.size === 1;
  const [lead] = ticks;
  const ofPiece = onePiece && lead !== undefined && !isForHerself(lead.step) ? lead : null;
  return {
    say: !isAlike ? words.cutAll : isLaidAside(sheet, lead) ? `${first} ${words.clip}` : first,
    where: [
      words.stages[stage],
      ...(ofPiece === null
        ? []
        : [
            strandOf(sheet, ofPiece, frame),
            markOf(sheet, ofPiece.piece, frame),
            sizeOf(sheet, ofPiece.piece),
          ]),
    ].filter((one) => one !== ''),
    ticks: ticks.map((tick, at) =>
      [
        onePiece ? '' : markOf(sheet, tick.piece, frame),
        isAlike ? '' : (sentences[at] ?? ''),
        tick.run === null ? '' : runText(sheet, tick, tick.run, frame),
      ]
        .filter((one) => one !== '')
        .join(': '),
    ),
  };
}

/** Whether this is a strand's last beads in a batch, where its other end waits for the other pieces. */
function isLaidAside(sheet: WalkSheet, tick: Tick | undefined): boolean {
  if (tick === undefined || sheet.pieces.length === 1 || tick.step.code !== 'string-beads') return false;
  const { args, strand } = tick.step;
  return args.last === cardOf(sheet, tick.piece)?.card.strands[strand ?? 0]?.count;
}

/** In what size a piece was asked for, among several orders; '' where there is but one, whose size stands above. */
function sizeOf({ pieces, details, sizes }: WalkSheet, piece: number): string {
  if (details.length < 2) return '';
  const number = pieces[piece]?.number;
  return sizes[details.findIndex(({ entry }) => entry.document.number === number)] ?? '';
}

/** Which of several pieces; '' where there is but one. */
export function markOf({ pieces, details }: WalkSheet, piece: number, { lang }: Frame): string {
  const one = pieces[piece];
  if (one === undefined || pieces.length === 1) return '';
  const nth = one.nth === null ? '' : atBoardWords(lang).nth(one.nth.nth, one.nth.of);
  return [details.length > 1 ? (one.number ?? '') : '', nth].filter((text) => text !== '').join(', ');
}

function cardOf({ cards, pieces }: WalkSheet, piece: number) {
  return cards[pieces[piece]?.card ?? 0];
}

function strandOf(sheet: WalkSheet, { piece, step }: Tick, { lang }: Frame): string {
  const strands = cardOf(sheet, piece)?.strands.length ?? 1;
  return strands === 1 || step.strand === null ? '' : atBoardWords(lang).strand(step.strand + 1, strands);
}

function sentenceOf(sheet: WalkSheet, { piece, step }: Tick, frame: Frame): string {
  const card = cardOf(sheet, piece);
  if (card === undefined) return '';
  const { lang, format } = frame;
  const nameOf = namesIn(card.copy.design, sheet.partNames);
  const plainOf = plainNamesIn(card.copy.design, nameOf, benchCardWords(lang).plain);
  // As the card does: of rings there may be several, of all else there is one.
  const name = (one: Step) => (one.code === 'join-ring' ? nameOf : plainOf);
  return stringingWords(lang).step(step, format, name(step));
}

function runText(sheet: WalkSheet, { piece, step }: Tick, run: Run, { lang, format }: Frame): string {
  const card = cardOf(sheet, piece);
  if (card === undefined) return '';
  const words = atBoardWords(lang);
  const nameOf = namesIn(card.copy.design, sheet.partNames);
  const parts = run.parts
    .map(({ component, count }) => {
      const name = component === null ? '' : nameOf(component);
      return count > 1 ? `${format.number(count)} × ${name}` : name;
    })
    .join(' · ');
  const section =
    run.section === null
      ? ''
      : sectionName(card.copy.design, { strand: step.strand ?? 0, section: run.section });
  const about = [
    words.beads(run.first, run.last),
    section,
    run.repeat === null ? '' : words.repeat(run.repeat.nth, run.repeat.of),
  ].filter((one) => one !== '');
  return `${parts} (${about.join(', ')})`;
}
