/** The form of an order by hand as its page shows it, step by step. */
import type { InsteadPart } from '#core/design/choice.ts';
import { componentNameIn, textsOf, type Catalogue } from '#catalogue/model/catalogue.ts';
import type { Component } from '#core/design/component.ts';
import { tally } from '#core/design/tally.ts';
import { stringing } from '#core/instructions/stringing.ts';
import { COUNTRIES } from '#core/post/countries.ts';
import { servedCountries } from '#core/post/served.ts';
import { countriesByName } from '#words/format.ts';
import type { PlainRemark } from '#words/plainRemark.ts';
import { newParts } from '../check/restring.ts';
import type { HandField } from '../intake/handForm.ts';
import type { HandOrder, HandProblems } from '../intake/handOrder.ts';
import type { Frame } from './frame.ts';

/**
 * What the page has to say first. `fresh`: nothing yet. `read`: look over what
 * was read. `sized`, `wrong`: what was asked for was done, or couldn't be.
 * `look`: she hasn't seen what it comes to. `taken`: the number is another's.
 */
export type HandStage = 'fresh' | 'read' | 'sized' | 'wrong' | 'look' | 'look-again' | 'taken';

/** How a piece may be had otherwise than to measure as listed. */
export type HandOffers = {
  /** True where one lies finished. */
  readonly ready: boolean;
  /** What may be chosen instead of each part, after the listed one; none for a part of which nothing is offered. */
  readonly parts: Readonly<Record<InsteadPart, readonly { readonly id: string; readonly name: string }[]>>;
};

export type HandSheet = {
  readonly order: HandOrder;
  readonly stage: HandStage;
  /** Those that the step asks for. */
  readonly problems: HandProblems;
  readonly pieces: readonly { readonly id: string; readonly name: string; readonly past: boolean }[];
  /** Of the piece that is chosen; null before one is, and where it is restrung. */
  readonly offers: HandOffers | null;
  readonly countries: ReturnType<typeof countriesByName>;
  readonly remarks: readonly PlainRemark[];
  /** What restringing takes; null where nothing is restrung, or nothing is sized yet. */
  readonly restring: {
    readonly wireMm: number;
    readonly parts: readonly { readonly name: string; readonly count: number }[];
  } | null;
  /** Number that the book has for another order; null where there is none such. */
  readonly takenNumber: string | null;
};

const SIZE_FIELDS: readonly HandField[] = ['piece', 'made', 'clasp', 'pendant', 'of', 'size', 'quantity'];

export function handSheet(
  order: HandOrder,
  stage: HandStage,
  catalogue: Catalogue,
  { lang }: Frame,
  more: { readonly remarks?: readonly PlainRemark[]; readonly takenNumber?: string } = {},
): HandSheet {
  const shown: Readonly<Record<HandStage, HandProblems>> = {
    ...{ fresh: {}, read: {}, look: {}, 'look-again': {}, taken: {} },
    sized: onlyOf(order.problems, SIZE_FIELDS),
    wrong: order.problems,
  };
  const { post } = catalogue.shop;
  const pieces = catalogue.pieces
    .map((piece) => ({ id: piece.id, name: textsOf(piece, lang).name, past: piece.status === 'past' }))
    .toSorted((a, b) => a.name.localeCompare(b.name, lang));
  return {
    order,
    stage,
    problems: shown[stage],
    pieces,
    offers: order.fields.restring === '' ? offersOf(order.fields.piece, catalogue, lang) : null,
    countries: countriesByName(post === null ? COUNTRIES : servedCountries(post.rules), lang),
    remarks: more.remarks ?? [],
    restring: restringOf(order, catalogue, lang),
    takenNumber: more.takenNumber ?? null,
  };
}

function offersOf(id: string, catalogue: Catalogue, lang: Frame['lang']): HandOffers | null {
  const piece = catalogue.pieces.find((one) => one.id === id);
  if (piece === undefined) return null;
  const { design, alternatives, status } = piece;
  const among = (listed: string | undefined, others: readonly Component[]) =>
    listed === undefined || others.length === 0
      ? []
      : [listed, ...others.map((one) => one.id)].map((one) => ({
          id: one,
          name: componentNameIn(catalogue, one, lang),
        }));
  return {
    ready: status === 'available',
    parts: {
      clasp: among(
        design.ends.clasp,
        alternatives.clasps.map(({ clasp }) => clasp),
      ),
      pendant: among(design.hanging?.pendant, alternatives.pendants),
    },
  };
}

function onlyOf(problems: HandProblems, names: readonly HandField[]): HandProblems {
  return Object.fromEntries(Object.entries(problems).filter(([name]) => names.some((one) => one === name)));
}

function restringOf(
  { fields, sized }: HandOrder,
  catalogue: Catalogue,
  lang: Frame['lang'],
): HandSheet['restring'] {
  const candidate = sized?.candidate ?? null;
  if (fields.restring === '' || sized === null || candidate === null) return null;
  const { copy, choice } = sized;
  const fresh = newParts(copy.design);
  const { strands } = stringing(copy.design, copy.rules, candidate, choice.hand);
  return {
    wireMm: choice.quantity * strands.reduce((sum, { cut }) => sum + cut.totalMm, 0),
    parts: [...tally(copy.design, candidate.counts)]
      .filter(([id]) => fresh.has(id))
      .map(([id, count]) => ({
        name: componentNameIn(catalogue, id, lang),
        count: count * choice.quantity,
      })),
  };
}
