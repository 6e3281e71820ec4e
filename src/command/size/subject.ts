/** What is to be sized: a piece of the catalogue, or a design from standard input. */
import { near } from '#catalogue/read/near.ts';
import { readCatalogue } from '#catalogue/read/readCatalogue.ts';
import { readRules } from '#catalogue/read/readShop.ts';
import { report } from '#catalogue/read/problem.ts';
import { designIn, textsOf } from '#catalogue/catalogue.ts';
import type { Piece, Shop } from '#catalogue/catalogue.ts';
import { checkDesign } from '#core/components/check.ts';
import { rulePrice } from '#core/price/price.ts';
import type { DesignProblem } from '#core/sizing/sizing.ts';
import type { Rules } from '#core/sizing/rules.ts';
import { usual } from '#core/sizing/usual.ts';
import type { Design } from '#core/strand/design.ts';
import type { Lang } from '#words/lang.ts';

export type Subject = {
  readonly id: string;
  readonly name: string;
  readonly design: Design;
  readonly rules: Rules;
  readonly listedMinor: number;
  /** The unit the shop shows before anyone chooses. */
  readonly unit: 'in' | 'cm';
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
  | { readonly code: 'design'; readonly problems: readonly DesignProblem[] };

export type Found =
  { readonly ok: true; readonly subject: Subject } | { readonly ok: false; readonly problem: SubjectProblem };

/** Characters of a design on standard input: hundreds of times the largest real one. */
export const MOST_INPUT = 4_000_000;

const refuse = (problem: SubjectProblem): Found => ({ ok: false, problem });

function ofPiece(piece: Piece, shop: Shop, lang: Lang): Subject {
  const { rules, unit } = shop;
  const { id, listedMinor } = piece;
  return { id, name: textsOf(piece, lang).name, design: designIn(piece, lang), rules, listedMinor, unit };
}

/** The rules of a file instead of the shop's; without a file the shop's stay. */
function underRules(subject: Subject, file: string | null, lang: Lang): Found {
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
export function pieceFrom(folder: string, id: string, rulesFile: string | null, lang: Lang): Found {
  const { catalogue, problems } = readCatalogue(folder);
  if (catalogue === null || problems.length > 0)
    return refuse({ code: 'catalogue', report: report(problems, lang) });
  const piece = catalogue.pieces.find((one) => one.id === id);
  if (piece === undefined) {
    const pieces = catalogue.pieces.map((one) => one.id).sort();
    return refuse({ code: 'no-such-piece', piece: id, near: near(id, pieces), pieces });
  }
  return underRules(ofPiece(piece, catalogue.shop, lang), rulesFile, lang);
}

/** Rules for a design of no catalogue: a file's, for which no content folder is opened, or the shop's. */
function rulesFor(folder: string, rulesFile: string | null) {
  if (rulesFile !== null) return readRules(rulesFile);
  const { catalogue, problems } = readCatalogue(folder);
  return { rules: catalogue?.shop.rules ?? null, unit: catalogue?.shop.unit ?? null, problems };
}

function parse(text: string): { readonly value: unknown } | { readonly message: string } {
  try {
    return { value: JSON.parse(text) };
  } catch (error) {
    return { message: error instanceof Error ? error.message : String(error) };
  }
}

/** A whole design as JSON. Its costs are in the rules' currency, and its price is by rule, for nobody listed one. */
export function designFrom(text: string, folder: string, rulesFile: string | null, lang: Lang): Found {
  if (text.length > MOST_INPUT) return refuse({ code: 'input-too-long', most: MOST_INPUT });
  const parsed = parse(text);
  if ('message' in parsed) return refuse({ code: 'not-json', message: parsed.message });
  // `checkDesign` is total: it takes whatever was parsed for what it is.
  const design = parsed.value as Design;
  const problems = checkDesign(design);
  if (problems.length > 0) return refuse({ code: 'design', problems });
  const { rules, unit, problems: written } = rulesFor(folder, rulesFile);
  if (rules === null) return refuse({ code: 'catalogue', report: report(written, lang) });
  const listedMinor = rulePrice(design, usual(design), rules);
  const { id } = design;
  return { ok: true, subject: { id, name: id, design, rules, listedMinor, unit: unit ?? 'in' } };
}
