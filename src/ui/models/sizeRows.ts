/** The table of sizes of a piece, worked out at build by the functions that the island uses. */
import type { Piece } from '#catalogue/model/catalogue.ts';
import type { Measure } from '#core/design/choice.ts';
import type { Rules } from '#core/design/rules.ts';
import { size } from '#core/sizing/size.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import type { PieceKind } from '#core/design/design.ts';
import { INCH_MM } from '#core/units/unit.ts';
import type { Lang } from '#words/lang.ts';

/** What a kind of piece is asked by in the table. */
export const ASKED_BY: Readonly<Record<PieceKind, Measure['of']>> = {
  necklace: 'length',
  bracelet: 'wrist',
  anklet: 'ankle',
  collar: 'neck',
};

export type SizeRow = {
  /** As the buyer measures: girth of the body, or finished length. */
  readonly askedMm: number;
  readonly candidate: Candidate;
  readonly within: boolean;
};

export type SizeTable = {
  readonly of: Measure['of'];
  /** Ease of the table's sit, mm; 0 for a finished length. */
  readonly easeMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
  readonly rows: readonly SizeRow[];
};

type Sized = Exclude<Sizing, { readonly status: 'refused' }>;

/** One size of the piece, easy sit; a right hand, which no figure of the table hangs on. */
function sized(piece: Piece, rules: Rules, mm: number): Sized | null {
  const measure: Measure = { of: ASKED_BY[piece.design.kind], mm };
  const choice = { measure, sit: 'easy', hand: 'right', pick: 'best', quantity: 1 } as const;
  const sizing = size(piece.design, rules, piece.listedMinor, choice);
  return sizing.status === 'refused' ? null : sizing;
}

/** Middle of what people are, mm: only where the search for the limits starts. */
const START_MM: Readonly<Record<PieceKind, number>> = {
  necklace: 450,
  bracelet: 165,
  anklet: 230,
  collar: 340,
};

type Worked = { readonly rules: Rules; readonly tables: Map<Lang, SizeTable | null> };

/** What was worked out last for a piece: every page of its tutorial asks for the tables of all languages. */
const worked = new WeakMap<Piece, Worked>();

/**
 * Sizes of a piece at round measures of the language's unit, each as it comes out.
 * @returns null where the design can't be sized at all
 */
export function sizeTable(piece: Piece, rules: Rules, lang: Lang): SizeTable | null {
  const last = worked.get(piece);
  const { tables } = last?.rules === rules ? last : { tables: new Map<Lang, SizeTable | null>() };
  const known = tables.get(lang);
  if (known !== undefined) return known;
  const table = workOut(piece, rules, lang);
  worked.set(piece, { rules, tables: tables.set(lang, table) });
  return table;
}

function workOut(piece: Piece, rules: Rules, lang: Lang): SizeTable | null {
  const { kind } = piece.design;
  const first = sized(piece, rules, START_MM[kind]);
  if (first === null) return null;
  const { leastAskedMm, mostAskedMm } = first.limits;
  const rows = roundSizes(kind, leastAskedMm, mostAskedMm, lang).flatMap((askedMm) => {
    const at = sized(piece, rules, askedMm);
    if (at === null || at.status === 'outside') return [];
    return [{ askedMm, candidate: at.chosen, within: at.status === 'fits' }];
  });
  const easeMm = kind === 'necklace' ? 0 : rules.easeMm[kind].easy;
  return { of: ASKED_BY[kind], easeMm, leastMm: leastAskedMm, mostMm: mostAskedMm, rows };
}

/** More rows than this are not read; the step doubles until they fit. */
const MOST_ROWS = 12;

/** Step of the table in mm: what a shop of that country would have on its list (common practice, no source). */
const STEPS: Readonly<Record<Lang, Readonly<Record<PieceKind, number>>>> = {
  en: {
    necklace: INCH_MM,
    collar: INCH_MM / 2,
    bracelet: INCH_MM / 4,
    anklet: INCH_MM / 4,
  },
  de: { necklace: 20, collar: 10, bracelet: 5, anklet: 5 },
};

/**
 * Multiples of the step from `leastMm` to `mostMm`, both included.
 * @returns at most 12, ascending; empty where none lies between
 */
export function roundSizes(kind: PieceKind, leastMm: number, mostMm: number, lang: Lang): number[] {
  let step = STEPS[lang][kind];
  while ((mostMm - leastMm) / step >= MOST_ROWS) step *= 2;
  const first = Math.ceil(leastMm / step - 1e-9);
  const last = Math.floor(mostMm / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * step);
}
