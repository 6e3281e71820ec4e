/** What the core says of the piece as it lies there: figures, and what is to be looked at. */
import type { Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import { tally } from '#core/design/tally.ts';
import { usualCounts } from '#core/design/usualCounts.ts';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import type { ValidationError } from '#core/design/validationError.ts';
import { stringing, type Stringing } from '#core/instructions/stringing.ts';
import { costsOf } from '#core/sizing/price/costs.ts';
import { rulePrice } from '#core/sizing/price/price.ts';
import { strungCount } from '#core/sizing/price/minutes.ts';
import { describe } from '#core/sizing/usual.ts';
import type { Place } from './place.ts';

/** Where to look: a run or section, or a part of the piece that isn't on a strand. `part` -1: all of the section. */
export type Where = Place | 'closing' | 'wire' | 'pendant' | 'piece';

export type Figures = {
  readonly lengthMm: number;
  readonly girthMm: number;
  readonly massG: number;
  readonly beads: number;
  readonly minutes: number;
  readonly cutMm: number;
  readonly slackMm: number;
  readonly materialsMinor: number;
  readonly ruleMinor: number;
  /** Pull that the wire bears over what it is asked to, as a factor. */
  readonly strengthFactor: number;
};

/** `stop`: it can't be strung so. The rest may stay. */
export type Finding =
  | { readonly code: 'design'; readonly stop: true; readonly where: Where; readonly error: ValidationError }
  | {
      readonly code: 'tail';
      readonly stop: true;
      readonly where: Where;
      readonly component: string;
      readonly holeMm: number;
      readonly needMm: number;
    }
  | {
      readonly code: 'stock';
      readonly stop: false;
      readonly where: Where;
      readonly component: string;
      readonly have: number;
      readonly need: number;
    }
  | { readonly code: 'price'; readonly stop: false; readonly where: Where; readonly ruleMinor: number }
  | {
      readonly code: 'crimp' | 'cover' | 'guard' | 'facing' | 'leans' | 'balance' | 'weak';
      readonly stop: false;
      readonly where: Where;
      readonly card: Stringing;
    };

export type Answers = {
  /** null where nothing can be computed yet. */
  readonly figures: Figures | null;
  readonly findings: readonly Finding[];
};

/** Where a path of the core's leads. */
export function whereOf(at: string): Where {
  const [head, strand, , section, field, part] = at.split('.');
  if (head === 'ends') return 'closing';
  if (head === 'hanging') return 'pendant';
  if (head === 'wire') return 'wire';
  if (head !== 'strands' || strand === undefined || section === undefined) return 'piece';
  return {
    strand: Number(strand),
    section: Number(section),
    part: field === 'motif' && part !== undefined ? Number(part) : -1,
  };
}

/** The last run of a strand with that component: a tail is in its way from the ends in. */
function lastWith({ strands }: Design, strand: number, component: string): Where {
  const sections = strands[strand]?.sections ?? [];
  for (let section = sections.length - 1; section >= 0; section -= 1) {
    const part = sections[section]!.motif.findLastIndex((one) => one.component === component);
    if (part >= 0) return { strand, section, part };
  }
  return 'piece';
}

function tailFindings(design: Design, card: Stringing): Finding[] {
  const told = new Set<string>();
  return card.strands.flatMap(({ tails }, strand) =>
    [tails.clasp, tails.ring].flatMap(({ blockedBy, needMm }): Finding[] => {
      if (blockedBy === null || told.has(blockedBy.component)) return [];
      told.add(blockedBy.component);
      const { component, holeMm } = blockedBy;
      return [
        { code: 'tail', stop: true, where: lastWith(design, strand, component), component, holeMm, needMm },
      ];
    }),
  );
}

function stockFindings(design: Design): Finding[] {
  return [...tally(design, usualCounts(design))].flatMap(([component, need]): Finding[] => {
    const have = design.components[component]?.stock ?? null;
    if (have === null || have >= need) return [];
    return [{ code: 'stock', stop: false, where: firstWith(design, component), component, have, need }];
  });
}

function firstWith({ strands }: Design, component: string): Where {
  for (const [strand, { sections }] of strands.entries()) {
    for (const [section, { motif }] of sections.entries()) {
      const part = motif.findIndex((one) => one.component === component);
      if (part >= 0) return { strand, section, part };
    }
  }
  return 'closing';
}

function cardFindings(card: Stringing): Finding[] {
  const { ends, pendant, balance, strength } = card;
  const found = (
    code: Exclude<Finding['code'], 'design' | 'tail' | 'stock' | 'price'>,
    where: Where,
  ): Finding => ({
    ...{ code, stop: false, where, card },
  });
  return [
    ...(ends.crimp.fit === 'fits' ? [] : [found('crimp', 'closing')]),
    ...(ends.cover === null || ends.cover.fit === 'fits' ? [] : [found('cover', 'closing')]),
    ...(ends.guard === null || ends.guard.passes ? [] : [found('guard', 'closing')]),
    ...(pendant?.facing?.faces === 'sideways' ? [found('facing', 'pendant')] : []),
    ...(pendant === null || pendant.centred ? [] : [found('leans', 'pendant')]),
    ...(balance.notable ? [found('balance', 'piece')] : []),
    ...(strength.enough ? [] : [found('weak', 'wire')]),
  ];
}

/** @param listedMinor her price; null where there is none yet */
export function answersOf(design: Design, rules: Rules, listedMinor: number | null): Answers {
  const errors = validateDesign(design);
  if (errors.length > 0) {
    const findings = errors.map((error): Finding => {
      return { code: 'design', stop: true, where: whereOf(error.at), error };
    });
    return { figures: null, findings };
  }
  const counts = usualCounts(design);
  const ruleMinor = rulePrice(design, counts, rules);
  const piece = describe(design, rules, listedMinor ?? ruleMinor, counts);
  const card = stringing(design, rules, piece, 'right');
  const { beadsMinor, findingsMinor, wireMinor, minutes } = costsOf(design, counts, rules);
  const sum = (of: (strand: Stringing['strands'][number]) => number): number =>
    card.strands.reduce((all, strand) => all + of(strand), 0);
  const cheap = listedMinor !== null && listedMinor < ruleMinor;
  return {
    figures: {
      lengthMm: piece.finishedLengthMm,
      girthMm: piece.insideGirthMm,
      massG: piece.massG,
      beads: strungCount(design, counts),
      minutes,
      cutMm: sum(({ cut }) => cut.totalMm),
      slackMm: Math.max(...card.strands.map(({ slackMm }) => slackMm)),
      materialsMinor: beadsMinor + findingsMinor + wireMinor,
      ruleMinor,
      strengthFactor: card.strength.factor,
    },
    findings: [
      ...tailFindings(design, card),
      ...stockFindings(design),
      ...cardFindings(card),
      ...(cheap ? [{ code: 'price', stop: false, where: 'piece', ruleMinor } as const] : []),
    ],
  };
}
