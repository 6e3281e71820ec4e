/** The answer as text for a person at a terminal. */
import type { Lie } from '#core/body/lie.ts';
import type { Choice } from '#core/design/choice.ts';
import type { Candidate, Help, Sizing } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import { strandLengthsMm } from '#core/sizing/strandLengths.ts';
import type { Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { chainSentence } from '#words/chainSentence.ts';
import { helpSentence, sectionName, sectionNames } from '#words/sectionName.ts';
import {
  type SizingWords,
  type TerminalWords,
  goodsWords,
  sizingWords,
  terminalWords,
} from '#words/words.ts';
import { cardLines } from './card.ts';
import { nameOf } from './names.ts';
import type { Options } from './options.ts';
import { liesOf } from './place.ts';
import type { Reached } from './place.ts';
import { swappedCautions } from './swappedCautions.ts';
import type { Subject } from './subject.ts';

type Voice = { readonly f: Format; readonly sizing: SizingWords; readonly terminal: TerminalWords };

function changeLines(design: Design, { changes }: Candidate, { f, sizing, terminal }: Voice): string[] {
  if (changes.length === 0) return [sizing.unchanged];
  const many = design.strands.length > 1;
  return changes.flatMap((change, index) => [
    ...(many && change.strand !== changes[index - 1]?.strand ? [terminal.strand(f, change.strand + 1)] : []),
    terminal.change(f, sectionName(design, change), change.from, change.to),
    ...change.parts.map(({ component, count }) => {
      const what = count > 0 ? sizing.added : sizing.leftOut;
      return `  ${what}: ${sizing.part(f, Math.abs(count), nameOf(design)(component))}`;
    }),
  ]);
}

/** Finished length: of each strand where they hang one below the other. */
function lengthRows(design: Design, candidate: Candidate, { sizing, terminal, f }: Voice) {
  if (design.lie !== 'nested')
    return [[sizing.finishedLength, f.length(candidate.finishedLengthMm)] as const];
  return strandLengthsMm(design, candidate).map((mm, index) => {
    const label = `${sizing.finishedLength}, ${terminal.strand(f, index + 1)}`;
    return [label, f.length(mm)] as const;
  });
}

/** Label and figure, the figures in one column. */
function figures(design: Design, candidate: Candidate, voice: Voice): string[] {
  const { sizing, f } = voice;
  const rows = [
    ...lengthRows(design, candidate, voice),
    [sizing.insideGirth, f.length(candidate.insideGirthMm)],
    [sizing.price, f.money(candidate.priceMinor)],
    [sizing.weight, sizing.grams(f, candidate.massG)],
  ] as const;
  const width = Math.max(...rows.map(([label]) => label.length));
  const chain = chainSentence(design, candidate, sizing, f);
  return [
    ...rows.map(([label, value]) => `${label.padEnd(width)}  ${value}`),
    ...(chain === null ? [] : [chain]),
  ];
}

function lieLines(lies: readonly Lie[] | null, { f, terminal }: Voice): string[] {
  const all = lies ?? [];
  return all.flatMap((lie, index) => {
    const which = all.length > 1 ? [terminal.strand(f, index + 1)] : [];
    if (lie.status === 'too-short') return [...which, terminal.tooShort];
    const { dropMm, dropBand, pendantDropMm } = lie;
    const strand = terminal.lies(f, dropMm, dropBand.leastMm, dropBand.mostMm);
    const pendant = pendantDropMm === null ? [] : [terminal.pendantLies(f, pendantDropMm)];
    return [...which, strand, ...pendant];
  });
}

function helpLines(design: Design, help: readonly Help[], { f, sizing }: Voice): string[] {
  if (help.length === 0) return [];
  return [`${sizing.helpTitle}:`, ...help.map((one) => `  ${helpSentence(design, one, sizing, f)}`)];
}

type Sized = Exclude<Sizing, { status: 'refused' }>;

/** How the piece meets what was asked: it fits, two are near, or it can't be. */
function verdictLines(design: Design, found: Sized, voice: Voice): string[] {
  const { f, sizing, terminal } = voice;
  if (found.status === 'fits')
    return [sizing.fits(f, found.targetMm, found.toleranceMm, design.lie === 'nested')];
  if (found.status === 'outside') {
    const ends = found.side === 'below' ? found.limits.leastBinds : found.limits.mostBinds;
    const names = sectionNames(design, ends, sizing, f);
    return [
      sizing.outside(f, found.side, found.choice.measure.of, found.limits),
      ...(names.length > 0 ? [`${sizing.outsideWhy(found.side)} (${f.list(names)})`] : []),
      ...helpLines(design, found.help, voice),
    ];
  }
  const options = [found.below, found.above].flatMap((one) =>
    one === null ? [] : [`  ${sizing.nearOption(f, found.targetMm, one.errorMm)}`],
  );
  return [
    sizing.near(f, found.targetMm, found.toleranceMm),
    ...options,
    terminal.pickWith,
    ...helpLines(design, found.help, voice),
  ];
}

/** What was swapped, and how the price stands to the listed one. */
function swapLines(
  { design, swaps, listedMinor }: Subject,
  { priceMinor }: Candidate,
  { f, terminal }: Voice,
) {
  if (swaps.length === 0) return [];
  const name = (id: string | null) => (id === null ? null : nameOf(design)(id));
  return [
    ...swaps.map(({ part, from, to }) => terminal.swap(part, name(from), name(to))),
    terminal.swapPrice(f, listedMinor, priceMinor - listedMinor),
  ];
}

function cautionLines(subject: Subject, lang: Lang): string[] {
  const { cautions } = goodsWords(lang);
  return swappedCautions(subject).map((caution) => `${cautions[caution].title}. ${cautions[caution].text}`);
}

function askedLine({ asked }: TerminalWords, choice: Choice, options: Options, f: Format): string {
  const { of, mm } = choice.measure;
  const text = options.wanted.by === 'measure' ? options.wanted.given.text : f.length(mm);
  return asked(of, text, of === 'length' ? null : choice.sit, choice.hand);
}

function reachedLines(reached: Reached | null, { f, terminal }: Voice): string[] {
  if (reached?.ok !== true) return [];
  const { dropMm, band, aim, lengthMm } = reached;
  const spread = band === null ? [] : [terminal.landmarkBand(f, band.leastMm, band.mostMm)];
  return [terminal.reached(f, dropMm, aim, lengthMm), ...spread];
}

/** The whole answer in blocks, an empty line between. */
export function reportOf(
  subject: Subject,
  options: Options,
  choice: Choice,
  found: Sized,
  reached: Reached | null,
  format: Format,
): string {
  const { design } = subject;
  const { lang } = options;
  const voice: Voice = { f: format, sizing: sizingWords(lang), terminal: terminalWords(lang) };
  const { terminal, sizing, f } = voice;
  const piece = found.status === 'outside' ? found.nearest : found.chosen;
  const at = reachedLines(reached, voice);
  const hand = found.status === 'outside' ? [] : [sizing.handReasons[found.hand.reason](found.hand.hand)];
  const blocks = [
    [terminal.heading(subject.name, design.kind), askedLine(terminal, choice, options, f), ...at],
    [...verdictLines(design, found, voice), terminal.range(f, found.limits, found.fitted)],
    [...(found.status === 'outside' ? [terminal.nearest] : []), ...figures(design, piece, voice)],
    swapLines(subject, piece, voice),
    cautionLines(subject, lang),
    changeLines(design, piece, voice),
    hand,
    lieLines(liesOf(design, piece, options.wearer), voice),
    options.wearer.ageYears === null ? [] : [terminal.child],
    options.card ? cardLines(subject, piece, choice.hand, f) : [],
  ];
  return blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}
