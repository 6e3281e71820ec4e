/** A piece in one size as a tutorial: what is laid ready, what is done, and how it looks after each step. */
import { designIn, teachTextsOf, type Piece, type TeachTexts } from '#catalogue/model/catalogue.ts';
import { cautionsOf, type Caution } from '#catalogue/facts/cautions.ts';
import type { Hand } from '#core/design/choice.ts';
import type { Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import { groupsOf, type Group } from '#core/instructions/groups.ts';
import { materialsOf, type Materials } from '#core/instructions/materials.ts';
import { phasesOf, type Phase } from '#core/instructions/phases.ts';
import { stagesOf, type Stage } from '#core/instructions/stages.ts';
import { stringing, type Stringing } from '#core/instructions/stringing.ts';
import { toolsOf, type NeededTool } from '#core/instructions/tools.ts';
import { minutesOf } from '#core/sizing/price/minutes.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { size } from '#core/sizing/size.ts';
import { describe, usual } from '#core/sizing/usual.ts';
import { LANGS, type Lang } from '#words/lang.ts';
import { ASKED_BY, sizeTable } from './sizeRows.ts';

/** The hand that a learner is taken to close it with; the other one's board is laid the other way round. */
export const TAUGHT_HAND: Hand = 'right';

export type Tutorial = {
  /** With wire and components named in the reader's language. */
  readonly design: Design;
  readonly candidate: Candidate;
  readonly card: Stringing;
  /** A list for each strand. */
  readonly groups: readonly (readonly Group[])[];
  readonly phases: readonly (readonly Phase[])[];
  /** By the step's place among all of them. */
  readonly stages: readonly (Stage | null)[];
  readonly tools: readonly NeededTool[];
  readonly materials: Materials;
  readonly cautions: readonly Caution[];
  readonly own: TeachTexts;
  /** By the shop's rule, which is for practised hands. */
  readonly minutes: number;
};

/** @param candidate the piece in the size that is taught */
export function tutorialOf(
  piece: Piece,
  rules: Rules,
  candidate: Candidate,
  hand: Hand,
  lang: Lang,
): Tutorial {
  const design = designIn(piece, lang);
  const card = stringing(design, rules, candidate, hand);
  return {
    design,
    candidate,
    card,
    groups: card.strands.map(({ rows }) => groupsOf(rows)),
    phases: phasesOf(card.steps, card.strands.length),
    stages: stagesOf(card.steps),
    tools: toolsOf(card.steps),
    materials: materialsOf(design, candidate.counts, card.strands),
    // Small parts are told of the work already, before all of these.
    cautions: cautionsOf(design).filter((caution) => caution !== 'small-parts'),
    own: teachTextsOf(piece, lang),
    minutes: minutesOf(design, candidate.counts, rules),
  };
}

export type TutorialPage = {
  readonly piece: Piece;
  /** What names the size in the address; null for the piece as shown. */
  readonly sizeKey: string | null;
  /** As a learner measures, mm. */
  readonly askedMm: number | null;
};

/** A size in an address: whole millimetres of what it is asked by. */
const keyOf = (mm: number): string => String(Math.round(mm));

/** The shop's tables in some languages: sizes as a learner measures, mm, by their part of the address, the first of each. */
function sizesIn(piece: Piece, rules: Rules, langs: readonly Lang[]): ReadonlyMap<string, number> {
  const sizes = new Map<string, number>();
  for (const { askedMm } of langs.flatMap((lang) => sizeTable(piece, rules, lang)?.rows ?? [])) {
    if (!sizes.has(keyOf(askedMm))) sizes.set(keyOf(askedMm), askedMm);
  }
  return sizes;
}

/**
 * The pages of all tutorials that the shop offers: each piece as shown, and in
 * the sizes of the shop's tables in every language, so that each page stands in
 * all of them.
 */
export function tutorialPages(pieces: readonly Piece[], rules: Rules): readonly TutorialPage[] {
  return pieces
    .filter(({ teach }) => teach?.offered === true)
    .flatMap((piece) => [
      { piece, sizeKey: null, askedMm: null },
      ...[...sizesIn(piece, rules, LANGS)].map(([sizeKey, askedMm]) => ({ piece, sizeKey, askedMm })),
    ]);
}

export type LinkedSize = { readonly key: string; readonly askedMm: number };

/** Sizes that a page links to, those of its own language's table, smallest first. */
export function linkedSizes(piece: Piece, rules: Rules, lang: Lang): readonly LinkedSize[] {
  const all = sizesIn(piece, rules, LANGS);
  return [...sizesIn(piece, rules, [lang])].map(([key, own]) => ({ key, askedMm: all.get(key) ?? own }));
}

/** The piece in a size at an easy sit, as the shop's table has it; as listed where none is given. Null where it can't be made so. */
export function taughtPiece(piece: Piece, rules: Rules, askedMm: number | null): Candidate | null {
  const { design, listedMinor } = piece;
  if (askedMm === null) return describe(design, rules, listedMinor, usual(design));
  const measure = { of: ASKED_BY[design.kind], mm: askedMm };
  const choice = { measure, sit: 'easy', hand: TAUGHT_HAND, pick: 'best', quantity: 1 } as const;
  const sizing = size(design, rules, listedMinor, choice);
  return sizing.status === 'refused' || sizing.status === 'outside' ? null : sizing.chosen;
}
