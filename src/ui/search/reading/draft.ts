/** A reading while it is being made, and what may be added to it. */
import type { Concept, Pair, Vocabulary } from './vocabulary.ts';
import { fill } from './fill.ts';
import type { Ask, Part, Place, Said } from './reading.ts';
import type { Sort } from '../query.ts';

export type Draft = {
  readonly vocabulary: Vocabulary;
  readonly parts: Part[];
  /** Cheap or dear by name: of no account where a price is given too. */
  readonly ends: Part[];
  readonly said: Said[];
  /** Words that tell no piece from another. */
  readonly idle: string[];
  sort: Sort | null;
  hopeless: boolean;
};

type Pairs = Extract<Ask, { readonly by: 'pairs' }>;

/** Groups of which a piece has one value: two of them are alternatives, never both. */
const ONE_VALUE = ['kind', 'closing', 'status', 'year', 'strands', 'length'];

export const newDraft = (vocabulary: Vocabulary): Draft => ({
  vocabulary,
  parts: [],
  ends: [],
  said: [],
  idle: [],
  sort: null,
  hopeless: false,
});

/** Something was asked for that no piece can be. */
export function giveUp(draft: Draft, code: 'unknown' | 'elsewhere', word: string): void {
  draft.hopeless = true;
  draft.said.push({ code, text: fill(draft.vocabulary.said[code], { word }) });
}

const samePairs = (one: Concept['any'], other: Concept['any']): boolean =>
  one === other || one.map((pair) => pair.join(':')).join() === other.map((pair) => pair.join(':')).join();

/** What is said of something that a piece shall not have: the words for that, where there are any. */
function negated({ vocabulary }: Draft, any: Concept['any'], label: string): string {
  const without = vocabulary.concepts.find((concept) => concept.not && samePairs(concept.any, any));
  return without?.label ?? fill(vocabulary.said.not, { what: label });
}

/** Asks for a concept, beside what is asked already or as its alternative. */
export function askFor(
  draft: Draft,
  concept: Concept,
  at: Place,
  { not, or }: { readonly not: boolean; readonly or: boolean },
): void {
  const { parts } = draft;
  const { group, any } = concept;
  if (concept.sort !== null) draft.sort = concept.sort;
  if (concept.caution !== null) draft.said.push({ code: 'caution', text: concept.caution });
  if (concept.fits !== null) {
    // Of a length that it shall not have, no more is known than of one that it may have.
    if (!not) parts.push({ ask: { by: 'fits', ...concept.fits }, at: [at], label: concept.label });
    return;
  }
  if (concept.cost !== null) {
    askForCost(draft, concept, at, not);
    return;
  }
  const ask: Pairs = { by: 'pairs', group, any, not: concept.not !== not };
  const label = not && !concept.not ? negated(draft, any, concept.label) : concept.label;
  // "Allergic to nickel": who names it once as what shouldn't be there doesn't want it.
  const against = parts.findIndex(
    ({ ask: other }) => other.by === 'pairs' && other.not !== ask.not && samePairs(other.any, any),
  );
  const other = parts[against];
  if (other !== undefined) {
    const both = [...other.at, at];
    parts[against] =
      other.ask.by === 'pairs' && other.ask.not ? { ...other, at: both } : { ask, at: both, label };
    return;
  }
  const place = parts.findIndex(
    ({ ask: other }) =>
      other.by === 'pairs' &&
      other.group === group &&
      other.not === ask.not &&
      (samePairs(other.any, any) || (!ask.not && (or || ONE_VALUE.includes(group)))),
  );
  const part = parts[place];
  if (part?.ask.by !== 'pairs') {
    parts.push({ ask, at: [at], label });
    return;
  }
  const known = part.ask.any;
  const added = any.filter(([name, value]) => !known.some(([n, v]) => n === name && v === value));
  parts[place] = {
    ask: { ...part.ask, any: [...known, ...added] },
    at: [...part.at, at],
    label: added.length === 0 ? part.label : `${part.label ?? ''}, ${label}`,
  };
}

/** "Silver clasp": what was asked for last is what the clasp shall be of. @returns false where that can't be said of one */
export function askOfClasp({ parts, vocabulary }: Draft, to: number): boolean {
  const last = parts.at(-1);
  if (last?.ask.by !== 'pairs') return false;
  const any = last.ask.any.flatMap(([name, value]): Pair[] =>
    name === 'material' ? [['clasp', value]] : [],
  );
  if (any.length === 0) return last.ask.group === 'closing';
  const at: Place[] = last.at.map(([from, end], index) => [from, index === last.at.length - 1 ? to : end]);
  const label = fill(vocabulary.said.clasp, { what: last.label ?? '' });
  parts[parts.length - 1] = { ask: { ...last.ask, group: 'clasp', any }, at, label };
  return true;
}

/** Less than any price's smallest step, so that a border belongs to one side of it. */
const BESIDE = 0.001;

/** Cheap or dear, or on the border's other side. */
function askForCost({ ends, vocabulary }: Draft, { cost, label }: Concept, at: Place, not: boolean): void {
  if (cost === null) return;
  const { least, most } = cost;
  const other = most === null ? { least: 0, most: least - BESIDE } : { least: most + BESIDE, most: Infinity };
  const asked = not ? other : { least, most: most ?? Infinity };
  ends.push({
    ask: { by: 'cost', ...asked },
    at: [at],
    label: not ? fill(vocabulary.said.not, { what: label }) : label,
  });
}

/** "Magnet free": what was asked for last is what a piece shall be free of. */
export function negateLast(draft: Draft, to: number): void {
  const { parts } = draft;
  const last = parts.at(-1);
  if (last?.ask.by !== 'pairs') return;
  const label = negated(draft, last.ask.any, last.label ?? '');
  const at: Place[] = last.at.map(([from, end], index) => [from, index === last.at.length - 1 ? to : end]);
  parts[parts.length - 1] = { ask: { ...last.ask, not: true }, at, label };
}

/** Beads of a size. @param value as the index has it: whole millimetres, or a seed bead's number */
export function askForBeads({ parts, vocabulary }: Draft, value: string, size: string, at: Place): void {
  const ask: Pairs = { by: 'pairs', group: 'bead', any: [['bead', value]], not: false };
  parts.push({ ask, at: [at], label: fill(vocabulary.said.bead, { size }) });
}

/** Pieces first made in a year. */
export function askForYear({ parts, vocabulary }: Draft, year: string, at: Place): void {
  const ask: Pairs = { by: 'pairs', group: 'year', any: [['year', year]], not: false };
  parts.push({ ask, at: [at], label: fill(vocabulary.said.year, { year }) });
}
