/** What an amount in a query means: a price, a size, a bead's size, a year. */
import type { ShownUnit } from '#core/units/unit.ts';
import { currencyName, formatLength } from '#words/format.ts';
import { SPAN_MM, type FITS_OF } from '../marks.ts';
import type { Vocabulary } from './vocabulary.ts';
import type { Amount } from './amounts.ts';
import { askForBeads, askForYear, giveUp, type Draft } from './draft.ts';
import { fill } from './fill.ts';
import { moneyLabel } from './money.ts';
import type { Part, Place } from './reading.ts';
import { measured } from './sizes.ts';

type Of = (typeof FITS_OF)[number];
export type Compare = 'under' | 'over' | 'between' | 'about';

/** An amount with what stands beside it. */
export type Meant = {
  readonly amount: Amount;
  readonly text: string;
  readonly compare: Compare | null;
  /** With the words that compare. */
  readonly at: Place;
};

/** What the whole query says of its measures. */
export type Measuring = {
  /** Where the tape goes, with its place in the text. */
  readonly body: { readonly of: Of; readonly at: Place } | null;
  /** It speaks of a size. */
  readonly sized: boolean;
  /** Of a bare number. */
  readonly unit: ShownUnit;
};

/** Smaller than that part of the smallest size that pieces are marked with, it is no size. */
const LEAST_OF_SPAN = 0.9;
/** "About £50" reaches so far to both sides. */
const ABOUT = 0.2;
/** Years that a bare number may mean. */
const YEARS = [1990, 2099] as const;
/** What a kind is sized by, in the order of the vocabulary's kinds. */
const SIZED_BY: readonly Of[] = ['length', 'wrist', 'ankle', 'neck'];

const isYear = ({ of, least, most }: Amount): boolean =>
  of === 'number' && least === most && Number.isInteger(least) && least >= YEARS[0] && least <= YEARS[1];

/** Adds what an amount asks for, or gives up on a number that can't be anything. */
export function addAmount(draft: Draft, meant: Meant, how: Measuring): void {
  const { amount, text, compare, at } = meant;
  if (amount.of === 'money') addPrice(draft, meant);
  else if (isYear(amount)) askForYear(draft, String(amount.least), at);
  else if (amount.of === 'number' && compare !== null && !how.sized && how.body === null)
    addPrice(draft, meant);
  else if (!addSize(draft, meant, how)) giveUp(draft, 'unknown', text);
}

function addPrice({ parts, said, vocabulary }: Draft, { amount, compare, at }: Meant): void {
  const { least, most, sign } = amount;
  const { currency, lang } = vocabulary;
  if (sign !== null && sign !== currency) {
    const values = { currency: currencyName(currency, lang) };
    said.push({ code: 'currency', text: fill(vocabulary.said.currency, values) });
  }
  const reach = {
    over: [least, Infinity],
    about: [least * (1 - ABOUT), most * (1 + ABOUT)],
    under: [0, most],
    between: [least, most],
  } as const;
  const [from, to] = reach[compare ?? (least === most ? 'under' : 'between')];
  const label = moneyLabel(from, to, vocabulary);
  parts.push({ ask: { by: 'cost', least: from, most: to }, at: [at], label });
}

function addSize(draft: Draft, { amount, compare, at }: Meant, { body, unit }: Measuring): boolean {
  const { parts, vocabulary } = draft;
  const { lang, said: words } = vocabulary;
  const kinds = kindsAsked(parts, vocabulary);
  const found = measured(amount, body?.of ?? (kinds.length === 1 ? (kinds[0] ?? null) : null), unit);
  if (found === null) return false;
  if (found.of === 'bead') {
    const mm = Math.round(found.mostMm);
    askForBeads(draft, String(mm), formatLength(mm, 'mm', lang), at);
    return true;
  }
  const shown = (mm: number): string => formatLength(mm, found.unit, lang);
  const [low, high] = SPAN_MM[found.of];
  // Nobody has such a wrist, or the tape slipped: nothing is made to it.
  if (found.mostMm < low * LEAST_OF_SPAN || found.leastMm > high) return false;
  const [least, most] = [shown(found.leastMm), shown(found.mostMm)];
  const reach = {
    under: [low, found.mostMm, fill(words.under, { most })],
    over: [found.leastMm, high, fill(words.over, { least })],
    between: [found.leastMm, found.mostMm, fill(words.between, { least, most })],
    one: [found.mostMm, found.mostMm, most],
  } as const;
  const limited = compare === 'under' || compare === 'over' ? compare : null;
  const [leastMm, mostMm, size] = reach[limited ?? (found.leastMm < found.mostMm ? 'between' : 'one')];
  const label = fill(words.fits[found.of], { size });
  const places = body === null ? [at] : [at, body.at];
  parts.push({ ask: { by: 'fits', of: found.of, leastMm, mostMm }, at: places, label });
  return true;
}

/** What the kinds that are asked for are sized by. */
function kindsAsked(parts: readonly Part[], { concepts }: Vocabulary): Of[] {
  const kinds = concepts.filter(({ group }) => group === 'kind').map(({ any }) => any[0]?.[1]);
  return parts.flatMap(({ ask }) => {
    if (ask.by !== 'pairs' || ask.group !== 'kind' || ask.not) return [];
    return ask.any.flatMap(([, value]) => SIZED_BY[kinds.indexOf(value)] ?? []);
  });
}
