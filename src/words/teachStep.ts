/**
 * A step as a tutorial tells it: a text with places in braces for what the
 * size decides, `Cut {length} of {wire}.` The maker may write the text anew;
 * what hands need to know has to be in hers too.
 */
import type { Step, StepCode } from '#core/instructions/step.ts';

/** Places that a step's text may have, and those that it must have. */
type Places = { readonly needed: readonly string[]; readonly offered: readonly string[] };

const NONE: Places = { needed: [], offered: [] };

export const TEACH_PLACES: Readonly<Record<StepCode, Places>> = {
  'wear-eye-protection': NONE,
  'try-clasp': { needed: [], offered: ['clasp', 'halves'] },
  'join-chain': { needed: ['length', 'held'], offered: [] },
  'join-ring': { needed: ['ring', 'things'], offered: [] },
  'check-facing': { needed: ['facing'], offered: [] },
  'lay-out': { needed: ['side'], offered: [] },
  'cut-wire': { needed: ['length'], offered: ['wire'] },
  'thread-end': { needed: ['things'], offered: [] },
  'lead-back': { needed: ['through', 'loop', 'out'], offered: [] },
  'check-loop': { needed: [], offered: ['free'] },
  crimp: { needed: [], offered: [] },
  'close-cover': { needed: [], offered: ['cover'] },
  'cut-tail': { needed: ['where'], offered: [] },
  'string-beads': { needed: ['beads', 'over'], offered: [] },
  'hang-pendant': { needed: ['pendant', 'by'], offered: [] },
  'draw-up': { needed: ['slack', 'room'], offered: [] },
  measure: { needed: ['length'], offered: ['chain'] },
  'check-pattern': { needed: ['count'], offered: [] },
  'check-closed': { needed: ['closed'], offered: [] },
};

/** Every step that a tutorial may tell, in the order in which they are first met. */
export const TEACH_STEPS = Object.keys(TEACH_PLACES) as StepCode[];

/** What stands in each place of a step's text: phrases, some of them empty where the step has nothing to say there. */
export type TeachPhrases = Readonly<Record<string, string>>;

/** Own words of the maker by step; steps that she left as they are are missing. */
export type OwnSteps = Readonly<Partial<Record<StepCode, string>>>;

const PLACE = /\{([a-z]+)\}/g;

/** Places that a text has, in its order. */
export const placesIn = (text: string): readonly string[] =>
  [...text.matchAll(PLACE)].map(([, place = '']) => place);

/** The text with its places filled; gaps that empty phrases leave are closed. */
export function fillPlaces(text: string, phrases: TeachPhrases): string {
  return text
    .replaceAll(PLACE, (whole, place: string) => phrases[place] ?? whole)
    .replaceAll(/ {2,}/g, ' ')
    .replaceAll(/ ([.,;:])/g, '$1')
    .trim();
}

/** The sentence of a step: her words, else the usual ones. */
export function teachSentence(
  step: Step,
  own: OwnSteps,
  usual: (step: Step) => string,
  phrases: (step: Step) => TeachPhrases,
): string {
  return fillPlaces(own[step.code] ?? usual(step), phrases(step));
}
