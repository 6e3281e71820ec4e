/** What is to be sized: a piece of the catalogue, or a design from standard input. */
import { near } from '#catalogue/read/near.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { readRules } from '#catalogue/load/readShop.ts';
import { report } from '#catalogue/read/problem.ts';
import { designIn, namedComponents, partNamesIn, textsOf } from '#catalogue/model/catalogue.ts';
import type { Catalogue, Piece, Shop } from '#catalogue/model/catalogue.ts';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import type { Component } from '#core/design/component.ts';
import { rulePrice } from '#core/sizing/price/price.ts';
import type { Rules } from '#core/design/rules.ts';
import { usual } from '#core/sizing/usual.ts';
import type { Design } from '#core/design/design.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { Lang } from '#words/lang.ts';
import type { Options } from './options.ts';
import { swapped } from './swap.ts';
import type { Swap, SwapProblem } from './swap.ts';

export type Subject = {
  readonly id: string;
  readonly name: string;
  /** With the clasp, ring or pendant that was asked for. */
  readonly design: Design;
  /** What the listed price is for. */
  readonly listed: Design;
  readonly swaps: readonly Swap[];
  readonly rules: Rules;
  readonly listedMinor: number;
  /** The unit the shop shows before anyone chooses. */
  readonly unit: ShownUnit;
};

export type SubjectProblem =
  /** The catalogue's own report, file, line and mending. */
  | { readonly code: 'catalogue'; readonly report: string }
  | {
      readonly code: 'no-such-piece';
      readonly piece: string;
      readonly near: string;
      readonly pieces: readonly string[];
    }
  | {
      readonly code: 'rules-currency';
      readonly file: string;
      readonly written: string;
      readonly shop: string;
    }
  | { readonly code: 'not-json'; readonly message: string }
  | { readonly code: 'input-too-long'; readonly most: number }
  | SwapProblem;

export type SubjectResult =
  { readonly ok: true; readonly subject: Subject } | { readonly ok: false; readonly problem: SubjectProblem };

/** Characters of a design on standard input: hundreds of times the largest real one. */
export const MOST_INPUT = 4_000_000;

const refuse = (problem: SubjectProblem): SubjectResult => ({ ok: false, problem });

type Asked = Pick<Options, 'lang' | 'rules' | 'swap'>;
type Stock = Readonly<Record<string, Component>>;

/** Everything the shop can swap in, named in a language. */
const stockOf = (catalogue: Catalogue, lang: Lang): Stock =>
  namedComponents(catalogue.components, partNamesIn(catalogue, lang));

/** The subject with the parts swapped in. */
function withSwaps(subject: Subject, { swap }: Asked, stock: Stock): SubjectResult {
  const found = swapped(subject.listed, swap, stock);
  return 'problem' in found ? refuse(found.problem) : { ok: true, subject: { ...subject, ...found } };
}

function ofPiece(piece: Piece, shop: Shop, lang: Lang): Subject {
  const { rules, unit } = shop;
  const { id, listedMinor } = piece;
  const design = designIn(piece, lang);
  return { id, name: textsOf(piece, lang).name, design, listed: design, swaps: [], rules, listedMinor, unit };
}

/** The rules of a file instead of the shop's; without a file the shop's stay. */
function underRules(subject: Subject, { rules: file, lang }: Asked): SubjectResult {
  if (file === null) return { ok: true, subject };
  const { rules, unit, problems } = readRules(file);
  if (rules === null) return refuse({ code: 'catalogue', report: report(problems, lang) });
  const { currency } = subject.rules;
  if (rules.currency !== currency) {
    return refuse({ code: 'rules-currency', file, written: rules.currency, shop: currency });
  }
  return { ok: true, subject: { ...subject, rules, unit: unit ?? subject.unit } };
}

/** A piece of the catalogue by its id. */
export function pieceFrom(folder: string, id: string, asked: Asked): SubjectResult {
  const { lang } = asked;
  const { catalogue, problems } = readCatalogue(folder);
  if (catalogue === null || problems.length > 0)
    return refuse({ code: 'catalogue', report: report(problems, lang) });
  const piece = catalogue.pieces.find((one) => one.id === id);
  if (piece === undefined) {
    const pieces = catalogue.pieces.map((one) => one.id).sort();
    return refuse({ code: 'no-such-piece', piece: id, near: near(id, pieces), pieces });
  }
  const ruled = underRules(ofPiece(piece, catalogue.shop, lang), asked);
  return ruled.ok ? withSwaps(ruled.subject, asked, stockOf(catalogue, lang)) : ruled;
}

/**
 * What a design of no catalogue needs besides: rules, a file's or the shop's,
 * and the shop's components where a part is swapped. Without need no content
 * folder is opened.
 */
function aroundDesign(folder: string, { rules: file, swap, lang }: Asked) {
  const own = file === null ? null : readRules(file);
  const needed = own === null || Object.values(swap).some((id) => id !== null);
  const { catalogue, problems } = needed ? readCatalogue(folder) : { catalogue: null, problems: [] };
  const { rules, unit } = own ?? catalogue?.shop ?? { rules: null, unit: null };
  const stock: Stock = catalogue === null ? {} : stockOf(catalogue, lang);
  return { rules, unit, stock, problems: own?.problems ?? problems };
}

function parse(text: string): { readonly value: unknown } | { readonly message: string } {
  try {
    return { value: JSON.parse(text) };
  } catch (error) {
    return { message: error instanceof Error ? error.message : String(error) };
  }
}

/** A whole design as JSON. Its costs are in the rules' currency, and its price is by rule, for nobody listed one. */
export function designFrom(text: string, folder: string, asked: Asked): SubjectResult {
  if (text.length > MOST_INPUT) return refuse({ code: 'input-too-long', most: MOST_INPUT });
  const parsed = parse(text);
  if ('message' in parsed) return refuse({ code: 'not-json', message: parsed.message });
  // `validateDesign` is total: it takes whatever was parsed for what it is.
  const design = parsed.value as Design;
  const problems = validateDesign(design);
  if (problems.length > 0) return refuse({ code: 'design', problems });
  const { rules, unit, stock, problems: written } = aroundDesign(folder, asked);
  if (rules === null) return refuse({ code: 'catalogue', report: report(written, asked.lang) });
  const listedMinor = rulePrice(design, usual(design), rules);
  const { id } = design;
  const named = { id, name: id, design, listed: design, swaps: [] };
  const subject = { ...named, rules, listedMinor, unit: unit ?? 'in' };
  return withSwaps(subject, asked, { ...stock, ...design.components });
}
