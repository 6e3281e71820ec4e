/** What the buyer reads once she has given a size. English is the contract for the other languages. */
import type { Measure, Sit } from '#core/design/choice.ts';
import type { Help, Limits, SizingProblem } from '#core/sizing/sizing.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { LengthProblem } from '#core/units/length.ts';
import type { Format } from '../format.ts';
import type { Sentences } from '../sentence.ts';
import { ordinal } from '../englishOrdinal.ts';
import { BODY, FOR_BODY, ROUND } from './bodyNames.ts';

type Of = Measure['of'];

const problems: Sentences<SizingProblem> = {
  'measure-not-positive': () =>
    'A measure has to be more than nothing. Write what the tape says, for example 6½ in or 16.5 cm.',
  'measure-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} can’t be right: this measure lies between ${f.length(leastMm)} and ${f.length(mostMm)}. Check the number and the unit.`,
  'measure-wrong-kind': ({ of }) => `This piece isn’t sized by ${BODY[of]}.`,
  quantity: (): string => 'Order a whole number of pieces, one or more.',
  choice: () => 'The choice is incomplete. Choose size, sit and hand again.',
  'strands-apart': ({ leastMm, mostMm, short }, f) =>
    short.length > 0
      ? 'There aren’t enough beads left to bring all strands of this piece to one size. Please write to the shop.'
      : `The strands of this piece don’t come to one size: one is never below ${f.length(leastMm)}, another never above ${f.length(mostMm)}. Please write to the shop.`,
  stock: ({ have, need }, f) =>
    `There aren’t enough beads left for this piece: ${f.number(have)} of the ${f.number(need)} it needs at the least. Please write to the shop.`,
  'search-limit': () =>
    'There are more ways to bring this piece to size than can be looked through here. Please write to the shop.',
  design: () => 'The plan of this piece has a fault, so it can’t be sized here. Please write to the shop.',
};

const unread: Sentences<LengthProblem> = {
  empty: () => 'Write your measure to see the piece at your size.',
  'text-too-long': () => 'That is too long for a measure. Write one number, for example 6½ in or 16.5 cm.',
  'not-a-number': ({ text }) =>
    `“${text}” can’t be read as a measure. Write it in figures, for example 6½ in or 16.5 cm.`,
  'unknown-unit': ({ unit }) => `“${unit}” is no unit used here. Write in, cm or mm, or leave it out.`,
  'two-measures': ({ text }) => `“${text}” holds two measures. Write one, the larger if it varies.`,
  'not-positive': () =>
    'A measure has to be more than nothing. Write what the tape says, for example 6½ in or 16.5 cm.',
  'too-large': ({ mostMm }, f) => `That is over ${f.length(mostMm)}. Check the number and the unit.`,
};

/** A help with the name of its component, or of the beads that its section is made of. */
export type NamedHelp = Help extends infer One
  ? One extends Help
    ? One & { readonly name: string }
    : never
  : never;

const help: Sentences<NamedHelp> = {
  'add-component': ({ count, sides, name, offMm }, f) =>
    `With ${f.number(count)} more of “${name}”${sides === 2 ? ' on each side' : ''} it would come within ${f.fine(Math.abs(offMm))} of your size.`,
  'widen-section': ({ repeats, name, offMm }, f) =>
    `With a little ${repeats > 0 ? 'more' : 'less'} of ${name} than the maker usually strings, it would come within ${f.fine(Math.abs(offMm))} of your size.`,
  'more-stock': ({ count, name }, f) =>
    `If the maker can get ${f.number(count)} more of “${name}”, it is possible.`,
};

export const sized = {
  problems,
  unread,
  help,
  helpTitle: 'What would help',
  /** Something of one strand, where a piece has several; counted from 1. */
  onStrand: (f: Format, name: string, strand: number): string => `${name} (strand ${f.number(strand)})`,
  helpAsk: 'Ask the maker for it',
  helpAskHint: 'Opens an e-mail that says what you need. She decides, and answers you.',
  helpMail: {
    subject: (piece: string): string => `${piece} in my size`,
    body: (piece: string, size: string, helps: readonly string[]): string =>
      [
        'Hello,',
        '',
        `I should like ${piece} for ${size}. Your shop can’t quite make it so, and says what would help:`,
        ...helps.map((one) => `- ${one}`),
        '',
        'Could you make it that way?',
        '',
      ].join('\n'),
  },
  /** What she gave: a girth with how it should sit, or a length. */
  asked: (f: Format, of: Of, mm: number, sit: Sit): string =>
    of === 'length'
      ? `a finished length of ${f.length(mm)}`
      : `${of === 'ankle' ? 'an' : 'a'} ${BODY[of]} of ${f.length(mm)}, ${sit}`,
  outOfStock: (f: Format, names: readonly string[]): string =>
    `There is no more of ${f.list(names)} in the drawer.`,
  chainUsed: (f: Format, mm: number, wholeMm: number): string =>
    `Closed about ${f.short(mm)} down its extender chain of ${f.short(wholeMm)}, by the link that comes nearest.`,
  /** `link` of `links`, counted from the piece. */
  chainLink: (f: Format, link: number, links: number): string =>
    link === links
      ? `Closed in the last of the ${f.number(links)} links of its extender chain.`
      : `Closed in the ${ordinal(link)} of the ${f.number(links)} links of its extender chain; the rest of it hangs free.`,
  chainIdle: (f: Format, wholeMm: number): string =>
    `Closed without its extender chain, which lets it out by up to ${f.short(wholeMm)}.`,
  /** What is left over in the piece itself, of what the sit adds: whole beads seldom come out to the hair. */
  leftOver: (f: Format, overMm: number, sitMm: number): string =>
    overMm < 0
      ? `It measures ${f.short(-overMm)} less than your measure.`
      : `In this piece ${f.short(overMm)} is left over, of the ${f.short(sitMm)} that the sit asks for: beads come whole.`,
  unchanged: 'Bead for bead as it is in the shop.',
  added: 'Added',
  leftOut: 'Left out',
  part: (f: Format, count: number, name: string): string => `${f.number(count)} × ${name}`,
  centreKept: 'The centre stays as it is.',
  bothSides: 'The same on both sides.',
  /** `shortest`: the size is that of the shortest of several strands. */
  fits: (f: Format, targetMm: number, toleranceMm: number, shortest = false): string =>
    `${shortest ? 'The shortest strand comes within' : 'Within'} ${f.short(toleranceMm)} of the ${f.length(targetMm)} that you need.`,
  near: (f: Format, targetMm: number, toleranceMm: number): string =>
    `Whole beads can’t come within ${f.short(toleranceMm)} of the ${f.length(targetMm)} that you need. These are the nearest pieces; choose one.`,
  nearLegend: 'Nearest pieces',
  nearOption: (f: Format, targetMm: number, errorMm: number): string =>
    `${f.apart(targetMm, targetMm + errorMm)} ${errorMm < 0 ? 'smaller' : 'larger'} than the ${f.length(targetMm)}`,
  outside: (f: Format, side: 'below' | 'above', of: Of, limits: Limits): string => {
    const askedMm = side === 'below' ? limits.leastAskedMm : limits.mostAskedMm;
    const fittedMm = side === 'below' ? limits.leastMm : limits.mostMm;
    const reach = side === 'below' ? 'smallest' : 'largest';
    const goes = of === 'length' ? f.length(fittedMm) : `${FOR_BODY[of]} ${f.length(askedMm)}`;
    return `This piece can’t be made that ${side === 'below' ? 'small' : 'large'}. The ${reach} is ${goes}.`;
  },
  outsideWhy: (side: 'below' | 'above'): string =>
    `With ${side === 'below' ? 'fewer' : 'more'} beads it would stop being this piece.`,
  takeNearest: (f: Format, askedMm: number): string => `Show it at ${f.length(askedMm)}`,
  didYouMean: (written: string): string => `Did you mean ${written}?`,
  announce: (f: Format, lengthMm: number, girthMm: number, priceMinor: number): string =>
    `Finished length ${f.length(lengthMm)}, inside girth ${f.length(girthMm)}, ${f.money(priceMinor)}.`,
  pictureTitle: (name: string): string => `${name} at your size`,
  pictureDescription: (f: Format, lengthMm: number, parts: number): string =>
    `${f.number(parts)} beads and findings in order, ${f.length(lengthMm)} from end to end.`,
  measureScreen: 'Measure the screen again',
  lifeSize: 'Life size',
  firstInFront: 'Seen along the arm, the strands stand one behind another; the first is in front.',
  /** Of a closed piece: what it closes round, what it adds, and the clear width that this leaves, which is too little for inches. */
  wristLabels: (f: Format, kind: PieceKind, girthMm: number, easeMm: number, airMm: number) => ({
    girth: `${ROUND[kind]} ${f.length(girthMm)}`,
    ease: `${f.short(easeMm)} left over`,
    air: `${f.number(airMm)}\u00a0mm of air`,
  }),
};
