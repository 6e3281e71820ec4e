/** The answer as JSON: figures and codes, no sentences. `public/schema/size-answer.json` describes it. */
import type { Lie } from '#core/body/lie.ts';
import { costsOf } from '#core/sizing/price/costs.ts';
import type { Choice } from '#core/design/choice.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import { stringing } from '#core/instructions/stringing.ts';
import type { Stringing } from '#core/instructions/stringing.ts';
import { swappedCautions } from './swappedCautions.ts';
import type { Options } from './options.ts';
import { liesOf } from './place.ts';
import type { Reached } from './place.ts';
import type { Subject } from './subject.ts';

export const ANSWER_FORMAT = 'claspwise/size-answer';
/** 2: a section that ends the sizes is named with its strand. */
export const ANSWER_VERSION = 3;

/** Micrometres and micrograms: below what anyone measures, above rounding noise. */
export const rounded = (value: number): number => Math.round(value * 1000) / 1000;

/** Every number of a plain value rounded; infinities, which JSON doesn't know, as null. */
function plain(value: unknown): unknown {
  if (typeof value === 'number') return Number.isFinite(value) ? rounded(value) : null;
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, entry]) => [key, plain(entry)]));
}

function candidateAnswer({ sequences, ...figures }: Candidate) {
  const strands = sequences.map((sequence) => sequence.map(({ component }) => component.id));
  return { ...figures, sequences: strands };
}

function lieAnswer(lie: Lie) {
  if (lie.status === 'too-short') return lie;
  const { status, dropMm, dropBand, pendantDropMm, pendantDropBand, pullN, neckBaseMm, assumptions } = lie;
  return { status, dropMm, dropBand, pendantDropMm, pendantDropBand, pullN, neckBaseMm, assumptions };
}

function stringingAnswer({ strands, ends, pendant, balance, mass, strength, flexibility, steps }: Stringing) {
  return {
    strands: strands.map(({ id, count, finishedLengthMm, slackMm, cut, outMm, board, tails, rows }) => {
      return { id, count, finishedLengthMm, slackMm, cut, outMm, board, tails, rows };
    }),
    ...{ ends, pendant, balance, mass, strength, flexibility },
    steps: steps.map(({ code, strand, args }) => ({ code, strand, args })),
  };
}

/** The candidate that the answer is about; null where there is none. */
export function chosenOf(sizing: Sizing): Candidate | null {
  if (sizing.status === 'refused') return null;
  return sizing.status === 'outside' ? sizing.nearest : sizing.chosen;
}

function sizingAnswer(sizing: Sizing) {
  if (sizing.status === 'refused') return sizing;
  const { status, fitted, targetMm, toleranceMm, limits, help } = sizing;
  const shared = { status, fitted, targetMm, toleranceMm, limits, help };
  if (sizing.status === 'outside') {
    return { ...shared, side: sizing.side, nearest: candidateAnswer(sizing.nearest) };
  }
  const { chosen, below, above, hand } = sizing;
  return {
    ...shared,
    chosen: candidateAnswer(chosen),
    below: below === null ? null : candidateAnswer(below),
    above: above === null ? null : candidateAnswer(above),
    hand,
  };
}

/** What was swapped, what it has to be warned of, and how the price stands to the listed one; null where nothing was. */
function swappedAnswer(subject: Subject, chosen: Candidate | null) {
  const { swaps, listedMinor } = subject;
  if (swaps.length === 0) return null;
  return {
    parts: swaps,
    cautions: swappedCautions(subject),
    listedMinor,
    differenceMinor: chosen === null ? null : chosen.priceMinor - listedMinor,
  };
}

/** All of the answer, ready for `JSON.stringify`. */
export function answerOf(
  subject: Subject,
  options: Options,
  choice: Choice,
  sizing: Sizing,
  reached: Reached | null,
): unknown {
  const chosen = chosenOf(sizing);
  const { design, rules, id, name } = subject;
  const lies = chosen === null ? null : liesOf(design, chosen, options.wearer);
  return plain({
    format: ANSWER_FORMAT,
    version: ANSWER_VERSION,
    piece: { id, name, kind: design.kind },
    currency: rules.currency,
    asked: {
      ...choice.measure,
      text: options.wanted.by === 'measure' ? options.wanted.given.text : null,
      place: reached?.ok === true ? { dropMm: reached.dropMm, band: reached.band, aim: reached.aim } : null,
      ...{ sit: options.sit, hand: options.hand, pick: options.pick, quantity: options.quantity },
    },
    swapped: swappedAnswer(subject, chosen),
    sizing: sizingAnswer(sizing),
    lie: lies?.map(lieAnswer) ?? null,
    costs: chosen === null ? null : costsOf(design, chosen.counts, rules),
    stringing: chosen === null ? null : stringingAnswer(stringing(design, rules, chosen, options.hand)),
  });
}
