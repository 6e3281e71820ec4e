/** A strand whose parts stand each by itself, so that those at hand can be shown lit and the others dimmed. */
import type { Spot } from '../layout/spot.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import type { Ink } from '../paint/ink/ink.ts';
import { element } from '../svg/text.ts';
import type { Span } from './spans.ts';

/** What of a strand is at hand; nothing at all: the whole of it is. */
export type Lit = {
  /** An end with its finding, wire loop, crimp and cover. */
  readonly end: 'clasp' | 'ring' | null;
  /** Beads, by their numbers in the list. */
  readonly beads: Span | null;
  /** What hangs. */
  readonly hung: boolean;
};

export const ALL_LIT: Lit = { end: null, beads: null, hung: false };

export const isAllLit = ({ end, beads, hung }: Lit): boolean => end === null && beads === null && !hung;

/** What a row of the drawing is made of. */
export type ApartRow = {
  readonly ink: Ink;
  readonly spots: readonly Spot[];
  /** The number of each bead by its place in the strand; crimps and covers have none. */
  readonly numbers: ReadonlyMap<number, number>;
  /** Painted already, '' where the row has none of it. */
  readonly closing: { readonly clasp: string; readonly ring: string };
  readonly hanging: string;
};

/**
 * The parts of a row, each in a group that says which it is: `data-bead` its number, `data-part` an end or what
 * hangs. Class `lit` on what is at hand; where something is, all others are to be dimmed by the page's style.
 */
export function paintApart({ ink, spots, numbers, closing, hanging }: ApartRow, lit: Lit): string {
  const inside = (number: number): boolean =>
    lit.beads !== null && number >= lit.beads.first && number <= lit.beads.last;
  const atEnd = (end: 'clasp' | 'ring'): string => {
    const side = end === 'clasp' ? 'left' : 'right';
    const own = spots.filter((spot) => numbers.get(spot.index) === undefined && spot.side === side);
    return group({ 'data-part': end }, lit.end === end, closing[end] + paintSpots(ink, own));
  };
  // A cap's petals reach over what it holds, so caps come last.
  const beads = spots
    .filter(({ index }) => numbers.has(index))
    .toSorted((one, other) => Number(isCap(one)) - Number(isCap(other)))
    .map((spot) => {
      const number = numbers.get(spot.index) ?? 0;
      return group({ 'data-bead': number }, inside(number), paintSpots(ink, [spot]));
    });
  return atEnd('clasp') + atEnd('ring') + beads.join('') + group({ 'data-part': 'hung' }, lit.hung, hanging);
}

const isCap = ({ component }: Spot): boolean => component.shape === 'cap';

const group = (data: Readonly<Record<string, string | number>>, isLit: boolean, content: string): string =>
  content === '' ? '' : element('g', { ...data, class: isLit ? 'lit' : undefined }, content);
