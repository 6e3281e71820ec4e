/** What the buyer reads before and while she gives her size; what then comes of it is in `sized.ts`. English is the contract for the other languages. */
import type { HandAdvice } from '#core/sizing/hand/hand.ts';
import type { Hand, Measure, Sit } from '#core/design/choice.ts';
import type { Limits } from '#core/sizing/sizing.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { Format } from '../format.ts';
import { FOR_BODY, ROUND } from './bodyNames.ts';
import { LIKELY } from '../likelyMeasure.ts';

type Of = Measure['of'];

const HAND: Readonly<Record<Hand, string>> = { left: 'left', right: 'right' };

const CLOSE = {
  snug: 'Lies close and hardly slides.',
  easy: 'Moves a little; a fingertip fits under it.',
  loose: 'Slides freely and drapes.',
};

/** How each sit feels, by kind of piece. */
const SIT_MEANS: Readonly<Record<PieceKind, Readonly<Record<Sit, string>>>> = {
  bracelet: CLOSE,
  anklet: CLOSE,
  collar: {
    snug: 'Rests on the skin all round.',
    easy: 'Two fingers fit under it.',
    loose: 'Drops to the foot of the neck.',
  },
  necklace: {
    snug: 'Lies at the foot of the neck.',
    easy: 'Lies a little below the collar bones.',
    loose: 'Hangs on the chest.',
  },
};

const handReasons: Readonly<Record<HandAdvice['reason'], (hand: Hand) => string>> = {
  'has-front-and-side': (hand) =>
    `The clasp goes where your ${HAND[hand]} hand works it, with the front of the piece to the front.`,
  'turns-about': () =>
    'Either hand: turned end for end, this piece still shows its face, so wear it whichever way round suits you.',
  'no-front': () =>
    'Either hand: this piece looks the same from both sides, so wear it whichever way round suits you.',
  'clasp-has-no-side': () => 'Either hand: this clasp works the same from both sides.',
};

export const sizing = {
  title: 'Made to your size',
  handReasons,
  sitMeans: SIT_MEANS,
  sitLegend: 'How should it sit?',
  sits: { snug: 'Snug', easy: 'Easy', loose: 'Loose' } satisfies Record<Sit, string>,
  sitAdds: (f: Format, mm: number, kind: PieceKind): string =>
    kind === 'necklace'
      ? `Made for ${f.short(mm)} more than the foot of the neck.`
      : `Made for ${f.short(mm)} more than your measure.`,
  byLegend: 'What do you go by?',
  by: { wrist: 'Wrist', ankle: 'Ankle', neck: 'Neck', length: 'Finished length' } satisfies Record<
    Of,
    string
  >,
  fieldLabels: {
    wrist: 'Round your wrist',
    ankle: 'Round your ankle',
    neck: 'Round your neck',
    length: 'Finished length, clasp included',
  } satisfies Record<Of, string>,
  /** Ways to write a measure that such a one could be. */
  fieldHint: (unit: ShownUnit, of: Of): string => {
    const { inches, cm } = LIKELY[of];
    return unit === 'in'
      ? `Inches, as you would write them: ${inches}½, ${inches} 1/2 or ${inches}.5`
      : `Centimetres: ${cm}.5. Or with its unit: ${cm}5 mm`;
  },
  unitLegend: 'Unit',
  units: { in: 'inches', cm: 'cm' } satisfies Record<ShownUnit, string>,
  slider: 'Slide to try sizes',
  handLegend: 'Which hand works the clasp?',
  hands: { left: 'Left hand', right: 'Right hand' } satisfies Record<Hand, string>,
  parts: { clasp: 'Clasp', pendant: 'Pendant' },
  partListed: (name: string): string => `As it is: ${name}`,
  noPendant: 'none',
  /** `differenceMinor`: what it adds to the price. */
  partOffered: (f: Format, name: string, differenceMinor: number): string => {
    if (differenceMinor === 0) return `${name} (same price)`;
    return `${name} (${f.money(Math.abs(differenceMinor))} ${differenceMinor > 0 ? 'more' : 'less'})`;
  },
  readyTitle: 'One lies here finished',
  readyIs: (f: Format, lengths: readonly string[], girthMm: number, priceMinor: number): string =>
    `It measures ${f.list(lengths)}, ${f.length(girthMm)} round the inside, and costs ${f.money(priceMinor)}.`,
  readySuits: (f: Format, kind: PieceKind, { snug, easy, loose }: Readonly<Record<Sit, number>>): string =>
    `It sits easy on a ${ROUND[kind]} of ${f.length(easy)}, snug on ${f.length(snug)}, loose on ${f.length(loose)}.`,
  readyHangs: 'Under “Worn” you see where it hangs on you.',
  readyLies: (f: Format, lengths: readonly string[]): string => `Lies here finished, ${f.list(lengths)} long`,
  readyOrder: 'Have it as it lies there',
  readyOrSize: 'Or give your size above, and one is made for you.',
  readyElse: 'Not your size? Give yours',
  resultTitle: 'What you would get',
  listedTitle: 'As it is in the shop',
  finishedLength: 'Finished length',
  finishedLengths: 'Finished lengths, the shortest strand first',
  /** Of nested strands a length is that of one of them. */
  lengthOfShortest: 'Finished length of the shortest strand, clasp included',
  insideGirth: 'Inside girth',
  girthOfShortest: 'Inside girth, shortest strand',
  price: 'Price',
  weight: 'Weight',
  count: 'Beads and findings',
  grams: (f: Format, massG: number): string => `${f.number(massG, massG < 10 ? 1 : 0)}\u00a0g`,
  madeFrom: (f: Format, limits: Limits, of: Of): string =>
    `Can be made ${FOR_BODY[of]} ${f.length(limits.leastAskedMm)} to ${f.length(limits.mostAskedMm)}.`,
  order: 'Order this piece',
  orderFirst: 'First give a size that it can be made in.',
  orderFailed: 'The order form could not be fetched: is there a network? Try again, or write to the shop.',
  partFailed: 'That part of the page could not be fetched: is there a network?',
  loading: 'Working it out…',
  views: { whole: 'Picture', straight: 'Laid straight', closed: 'Closed', worn: 'Worn' },
  viewsLegend: 'Picture',
};
