/**
 * What a piece names, and where. Read alike from an entry that its schema took
 * and from one that it refused, as far as that goes.
 */
import { beadLine, isId } from '../fields/field.ts';
import type { FieldPath } from '../read/problem.ts';

export type Named = { readonly id: string; readonly path: FieldPath };

/** Places in an entry; `*` for each of a list. */
type Places = readonly (readonly string[])[];

const LISTED: Places = [
  ...['clasp', 'ring', 'crimp', 'cover', 'guard'].map((part) => ['closing', part]),
  ['pendant', 'hangs'],
  ['pendant', 'rings', '*'],
  ['sections', '*', 'beads', '*'],
  ['strands', '*', 'sections', '*', 'beads', '*'],
];
const INSTEAD: Places = [
  ['instead', 'clasps', '*', 'clasp'],
  ['instead', 'clasps', '*', 'ring'],
  ['instead', 'pendants', '*'],
];
const SECTIONS: Places = [
  ['sections', '*'],
  ['strands', '*', 'sections', '*'],
];

type Found = { readonly value: unknown; readonly path: FieldPath };

/** Whatever stands at a place, as far as the entry goes. */
function at(value: unknown, [step, ...rest]: readonly string[], path: FieldPath = []): Found[] {
  if (step === undefined) return value === undefined || value === null ? [] : [{ value, path }];
  if (step === '*') {
    const list = Array.isArray(value) ? (value as readonly unknown[]) : [value];
    return list.flatMap((one, index) => at(one, rest, [...path, index]));
  }
  if (typeof value !== 'object' || value === null) return [];
  return at((value as Readonly<Record<string, unknown>>)[step], rest, [...path, step]);
}

/** A short name as it stands, or the component of a line of beads, written or taken in. */
function idOf(value: unknown): string | null {
  if (typeof value === 'object' && value !== null && 'component' in value) return String(value.component);
  const bead = beadLine.safeParse(value);
  return bead.success ? bead.data.component : null;
}

function named(piece: unknown, places: Places): Named[] {
  return places.flatMap((place) =>
    at(piece, place).flatMap(({ value, path }) => {
      const id = path.at(-2) === 'beads' ? idOf(value) : String(value);
      return id !== null && isId(id) ? [{ id, path }] : [];
    }),
  );
}

/** Every component that a piece is listed with. */
export const namedComponents = (piece: unknown): readonly Named[] => named(piece, LISTED);

/** Every component that may be chosen instead. */
export const namedInstead = (piece: unknown): readonly Named[] => named(piece, INSTEAD);

/** Its wire; none where that can't be read. */
export const namedWire = (piece: unknown): readonly Named[] => named(piece, [['wire']]);

/** Its sections, whatever stands in them. */
export const sectionsIn = (piece: unknown): readonly Found[] => SECTIONS.flatMap((place) => at(piece, place));
